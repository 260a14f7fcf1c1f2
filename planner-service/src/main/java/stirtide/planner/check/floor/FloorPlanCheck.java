package stirtide.planner.check.floor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stirtide.planner.planning.floor.BowlAssignment;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.floor.FloorPlan;
import stirtide.planner.planning.floor.FloorScore;
import stirtide.planner.planning.floor.FloorService;
import stirtide.planner.planning.floor.ServiceTimes;

/** Holds a plan of a floor day against every rule and works out its score anew. */
public final class FloorPlanCheck {
    private FloorPlanCheck() {}

    /**
     * Everything that is wrong with a plan, each as the name of the rule, a colon and what was found; empty if it is right.
     *
     * @param day the day
     * @param plan the plan to be judged
     */
    public static List<String> faults(FloorDay day, FloorPlan plan) {
        List<String> faults = new ArrayList<>();
        List<WorkedService> worked = worked(day, plan, faults);
        if (!faults.isEmpty()) {
            return faults;
        }
        for (WorkedService service : worked) {
            new ServiceRuleCheck(day, service, faults).check();
        }
        if (faults.isEmpty()) {
            new SharedUseCheck(day, worked, faults).check();
            FloorScore score = ScoreCheck.score(day, worked);
            if (!score.equals(plan.score())) {
                faults.add("value: says " + plan.score() + ", is " + score);
            }
        }
        return faults;
    }

    /**
     * What one service of a plan costs.
     *
     * @param day the day
     * @param bowls its bowls
     * @param times when it is worked
     */
    public static FloorScore score(FloorDay day, List<BowlAssignment> bowls, ServiceTimes times) {
        for (FloorService service : day.services()) {
            if (service.service() == times.service()) {
                return ScoreCheck.score(day, List.of(new WorkedService(service, times, bowls)));
            }
        }
        throw new IllegalArgumentException("no service " + times.service());
    }

    private static List<WorkedService> worked(FloorDay day, FloorPlan plan, List<String> faults) {
        Map<Integer, ServiceTimes> times = new HashMap<>();
        for (ServiceTimes one : plan.services()) {
            if (times.put(one.service(), one) != null) {
                faults.add("form: service " + one.service() + " twice");
            }
        }
        List<WorkedService> worked = new ArrayList<>();
        for (FloorService service : day.services()) {
            ServiceTimes one = times.remove(service.service());
            int minutes = service.zones().stream()
                    .mapToInt(zone -> zone.applyMinutes())
                    .sum();
            if (one == null || one.minutes().size() != minutes) {
                faults.add("form: service " + service.service() + " has not its " + minutes + " minutes");
                continue;
            }
            List<BowlAssignment> bowls = plan.bowls().stream()
                    .filter(bowl -> bowl.service() == service.service())
                    .sorted(java.util.Comparator.comparingInt(BowlAssignment::from))
                    .toList();
            worked.add(new WorkedService(service, one, bowls));
        }
        times.keySet().forEach(number -> faults.add("form: unknown service " + number));
        for (BowlAssignment bowl : plan.bowls()) {
            if (day.services().stream().noneMatch(service -> service.service() == bowl.service())
                    || bowl.size() < 0
                    || bowl.size() >= day.bowlSizes().size()
                    || bowl.assistant() < 0
                    || bowl.assistant() >= day.assistants().size()) {
                faults.add("form: " + bowl);
            }
        }
        return worked;
    }
}
