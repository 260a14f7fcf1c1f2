package stirtide.planner.day.booking;

import static stirtide.planner.day.state.EventRule.PlanRelevance.REPLAN;
import static stirtide.planner.day.state.Recheck.byCommand;

import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent.ServiceBooked;
import stirtide.events.day.DayEvent.ServiceCancelled;
import stirtide.events.day.DayEvent.ServiceMoved;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.allowance.LearnedAllowances;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.EventRule;
import stirtide.planner.day.state.ImpossibleEventException;
import stirtide.planner.day.state.ServiceState;

/** Services that are booked, moved and cancelled. */
public final class BookingEvents {
    /** A rule for each event of this folder. */
    public static final List<EventRule<?>> RULES = List.of(
            new EventRule<ServiceBooked>(
                    ServiceBooked.class,
                    REPLAN,
                    BookingEvents::booked,
                    e -> "booked service " + e.service(),
                    byCommand(e -> new DayCommand.BookService(e.booking()))),
            new EventRule<ServiceMoved>(
                    ServiceMoved.class,
                    REPLAN,
                    (day, e, stored) -> day.with(day.requireService(e.service()).moved(e.start(), e.chair())),
                    e -> "moved service " + e.service(),
                    byCommand(e ->
                            new DayCommand.MoveService(e.service(), e.start(), Optional.of(e.chair()), e.reason()))),
            new EventRule<ServiceCancelled>(
                    ServiceCancelled.class,
                    REPLAN,
                    (day, e, stored) ->
                            day.with(day.requireService(e.service()).withCancelledAt(Optional.of(stored.time()))),
                    e -> "cancelled service " + e.service(),
                    byCommand(e -> new DayCommand.CancelService(e.service(), e.reason()))));

    private BookingEvents() {}

    private static Day booked(Day day, ServiceBooked event, StoredEvent stored) {
        int booked = day.services().size();
        if (event.service() != booked + 1)
            throw new ImpossibleEventException("service " + event.service() + " does not follow service " + booked);
        var service = ServiceState.booked(event.service(), event.booking());
        return LearnedAllowances.learn(day.with(service), service);
    }
}
