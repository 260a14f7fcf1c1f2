package stirtide.planner.day;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.Collectors;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedService;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;

/** Alarms of the plan on show: clients who wait, notes, a chair that is needed twice. */
final class PlanAlarms {
    private PlanAlarms() {}

    static void add(AlarmCollector alarms, Day day, DayTime time, Plan plan) {
        for (var wait : plan.waits()) {
            var services = wait.services().stream().map(String::valueOf).collect(Collectors.joining(","));
            int chair = wait.services().stream()
                    .flatMap(number -> day.service(number).stream())
                    .map(service -> service.booking().chair())
                    .findFirst()
                    .orElse(0);
            alarms.add("WAIT:" + services, "LOW", "WAIT", "", chair, plan.asOf(), wait.sentence());
        }
        for (var note : plan.notes()) {
            int chair = day.service(note.service())
                    .map(one -> one.booking().chair())
                    .orElse(0);
            var id = "NOTE:" + note.kind() + ":" + note.service();
            alarms.add(id, "LOW", "NOTE", "", chair, plan.asOf(), note.sentence());
        }
        addChairs(alarms, time, plan);
    }

    /** Two services of the plan on one chair at one time; a salon may want that, so it is only said. */
    private static void addChairs(AlarmCollector alarms, DayTime time, Plan plan) {
        var services = plan.services();
        for (int i = 0; i < services.size(); i++)
            for (int j = i + 1; j < services.size(); j++) {
                var one = services.get(i);
                var other = services.get(j);
                var from = clash(one, other);
                if (from.isEmpty()) continue;
                alarms.add(
                        "CHAIR:" + one.service() + "," + other.service(),
                        "LOW",
                        "CHAIR_TWICE",
                        "",
                        one.chair(),
                        plan.asOf(),
                        "Services " + one.service() + " and " + other.service() + " both need chair " + one.chair()
                                + " at " + time.clock(from.get()) + ": move one of them.");
            }
    }

    private static Optional<Instant> clash(PlannedService one, PlannedService other) {
        var from = one.start().isAfter(other.start()) ? one.start() : other.start();
        var to = one.end().isBefore(other.end()) ? one.end() : other.end();
        return one.chair() == other.chair() && from.isBefore(to) ? Optional.of(from) : Optional.empty();
    }
}
