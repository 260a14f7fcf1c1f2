package stirtide.planner.day;

import static stirtide.planner.day.state.EventRule.PlanRelevance.ANSWER;
import static stirtide.planner.day.state.EventRule.PlanRelevance.NONE;
import static stirtide.planner.day.state.EventRule.PlanRelevance.REPLAN;
import static stirtide.planner.day.state.Recheck.always;
import static stirtide.planner.day.state.Recheck.byCommand;

import java.util.List;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent.ActionTakenBack;
import stirtide.events.day.DayEvent.AlarmAcknowledged;
import stirtide.events.day.DayEvent.DayClosed;
import stirtide.events.day.DayEvent.DayOpened;
import stirtide.events.day.DayEvent.PlanDrawn;
import stirtide.events.day.DayEvent.PlanKept;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.EventRule;

/** What concerns the day as a whole: opening, closing, alarms that are acknowledged, actions taken back, plans. */
final class DayEvents {
    /** A rule for each event of this folder. */
    static final List<EventRule<?>> RULES = List.of(
            new EventRule<DayOpened>(
                    DayOpened.class,
                    REPLAN,
                    (day, e, stored) -> day.opened(e.setup()),
                    e -> "opened the day",
                    always()),
            // Evolver replays the day without the action instead; the event itself changes nothing.
            new EventRule<ActionTakenBack>(
                    ActionTakenBack.class, REPLAN, (day, e, stored) -> day, e -> "took an action back", always()),
            new EventRule<AlarmAcknowledged>(
                    AlarmAcknowledged.class,
                    NONE,
                    (day, e, stored) -> day.acknowledge(e.alarmId(), stored.actor()),
                    e -> "acknowledged an alarm",
                    always()),
            new EventRule<DayClosed>(
                    DayClosed.class,
                    NONE,
                    (day, e, stored) -> day.withClosed(true),
                    e -> "closed the day",
                    byCommand(e -> new DayCommand.CloseDay())),
            new EventRule<PlanDrawn>(PlanDrawn.class, ANSWER, DayEvents::drawn, e -> "a plan was drawn", always()),
            new EventRule<PlanKept>(
                    PlanKept.class, ANSWER, DayEvents::kept, e -> "no better plan was found", always()));

    private DayEvents() {}

    private static Day drawn(Day day, PlanDrawn event, StoredEvent stored) {
        boolean older = day.plan()
                .filter(shown -> shown.basedOnRevision() > event.plan().basedOnRevision())
                .isPresent();
        return older ? day : day.show(event.plan());
    }

    private static Day kept(Day day, PlanKept event, StoredEvent stored) {
        return day.plan()
                .filter(shown -> shown.basedOnRevision() == event.basedOnRevision())
                .map(shown -> day.show(shown.kept(event.rounds(), event.waitBound(), event.bowlBound(), event.proof())))
                .orElse(day);
    }
}
