package stirtide.planner.day;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.DayEvent;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.ServiceState;

/**
 * What the passing of time alone brings about: bowls that fall due or late, lives that end. Each is noted once per bowl
 * and instant, and what is noted is in the state, so a service that was down for hours catches up without losing or
 * repeating one.
 *
 * <p>A bowl that is late makes the plan be drawn anew. The new plan starts nothing in the past, so the bowl is late
 * again {@link #LATE_AFTER} after that at the earliest: time always moves on. Nothing falls due after the day's last
 * instant, so a day that is never closed causes no more events.
 */
public final class Ticker {
    /** A planned bowl not begun this long after its time is late. */
    public static final Duration LATE_AFTER = Duration.ofMinutes(3);
    /** A live bowl is announced this long before its life ends. */
    public static final Duration ENDING_BEFORE = Duration.ofMinutes(5);

    private static final Comparator<Timed> IN_ORDER = Comparator.comparing(Timed::at)
            .thenComparing(Timed::rank)
            .thenComparing(Timed::service)
            .thenComparing(Timed::bowl);

    private Ticker() {}

    private record Timed(Instant at, int rank, int service, String bowl, DayEvent event) {}

    /** Events whose time has come and that the day does not know yet, in order of time. */
    public static List<DayEvent> due(Day day, Instant now) {
        return ahead(day).stream()
                .filter(timed -> !timed.at().isAfter(now))
                .sorted(IN_ORDER)
                .map(Timed::event)
                .toList();
    }

    /** Earliest instant at which {@link #due} gives something; in the past when something is overdue already. */
    public static Optional<Instant> nextAt(Day day) {
        return ahead(day).stream().map(Timed::at).min(Comparator.naturalOrder());
    }

    private static List<Timed> ahead(Day day) {
        var ahead = new ArrayList<Timed>();
        if (day.setup().isEmpty() || day.closed()) return ahead;
        var dayEnd = DayTime.of(day.opened()).dayEnd();
        day.plan().ifPresent(plan -> {
            for (var bowl : plan.bowls()) {
                var start = plan.beginOf(bowl);
                if (start.isBefore(dayEnd)) addStart(ahead, day, bowl, start);
            }
        });
        day.liveBowls().forEach(bowl -> addLife(ahead, bowl));
        return ahead;
    }

    private static void addStart(List<Timed> ahead, Day day, PlannedBowl planned, Instant start) {
        var service = day.service(planned.service()).filter(ServiceState::standing);
        if (service.isEmpty() || day.bowl(planned.bowl()).isPresent()) return;
        var mark = service.get().dueMark(planned.bowl());
        if (!mark.dueAt().equals(Optional.of(start)))
            ahead.add(new Timed(
                    start, 0, planned.service(), planned.bowl(), new DayEvent.BowlDue(planned.bowl(), start)));
        if (!mark.lateAt().equals(Optional.of(start)))
            ahead.add(new Timed(
                    start.plus(LATE_AFTER),
                    1,
                    planned.service(),
                    planned.bowl(),
                    new DayEvent.BowlLate(planned.bowl(), start)));
    }

    private static void addLife(List<Timed> ahead, BowlState bowl) {
        var ends = bowl.lifeEnds();
        if (!bowl.endingNoted())
            ahead.add(new Timed(
                    ends.minus(ENDING_BEFORE),
                    2,
                    bowl.service(),
                    bowl.bowl(),
                    new DayEvent.LifeEnding(bowl.bowl(), ends)));
        if (!bowl.endedNoted())
            ahead.add(new Timed(ends, 3, bowl.service(), bowl.bowl(), new DayEvent.LifeEnded(bowl.bowl(), ends)));
    }
}
