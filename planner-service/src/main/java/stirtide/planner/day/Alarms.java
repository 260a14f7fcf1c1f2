package stirtide.planner.day;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import stirtide.events.view.AlarmCard;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;

/**
 * What needs attention now, worked out from the state of the day: nothing is stored but who has seen it. Each sentence
 * says what is the matter and what to do.
 */
public final class Alarms {
    private static final List<String> PRIORITIES = List.of("HIGH", "MEDIUM", "LOW");
    private static final Comparator<AlarmCard> HIGHEST_AND_OLDEST_FIRST = Comparator.comparing(
                    (AlarmCard alarm) -> PRIORITIES.indexOf(alarm.priority()))
            .thenComparing(AlarmCard::raisedAt)
            .thenComparing(AlarmCard::id);

    private Alarms() {}

    /** All alarms of an opened day at an instant: high first, then oldest, then by id. */
    public static List<AlarmCard> of(Day day, Instant now) {
        if (day.setup().isEmpty() || day.closed()) return List.of();
        var time = DayTime.of(day.opened());
        var alarms = new AlarmCollector(day.acknowledged());
        day.liveBowls().forEach(bowl -> BowlAlarms.add(alarms, day, time, bowl, now));
        for (var service : day.services()) ServiceAlarms.add(alarms, day, time, service, now);
        day.plan().ifPresent(plan -> PlanAlarms.add(alarms, day, time, plan));
        return alarms.cards().stream()
                .sorted(HIGHEST_AND_OLDEST_FIRST)
                .distinct()
                .toList();
    }
}
