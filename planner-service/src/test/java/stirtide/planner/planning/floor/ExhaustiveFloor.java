package stirtide.planner.planning.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stirtide.planner.check.floor.FloorPlanCheck;

/** Looks through all plans of a tiny day for one that is better than a given score, with waits before bowls. */
final class ExhaustiveFloor {
    private static final int MOST_DELAY = 6;

    private record Choice(List<BowlAssignment> bowls, ServiceTimes times, FloorScore score) {}

    private final FloorDay day;
    private final List<Choice> chosen = new ArrayList<>();
    private FloorScore best;

    ExhaustiveFloor(FloorDay day, FloorScore best) {
        this.day = day;
        this.best = best;
    }

    /** The best score of all plans, or the given one if none is better. */
    FloorScore best() {
        search(0, new FloorScore(0, 0, 0));
        return best;
    }

    private void search(int index, FloorScore sum) {
        if (sum.compareTo(best) >= 0) {
            return;
        }
        if (index == day.services().size()) {
            List<BowlAssignment> bowls =
                    chosen.stream().flatMap(one -> one.bowls().stream()).toList();
            List<ServiceTimes> times = chosen.stream().map(Choice::times).toList();
            if (FloorPlanCheck.faults(day, new FloorPlan(bowls, times, sum)).isEmpty()) {
                best = sum;
            }
            return;
        }
        for (Choice choice : choices(index)) {
            FloorScore one = choice.score();
            FloorScore next = new FloorScore(
                    sum.lateness() + one.lateness(), sum.handling() + one.handling(), sum.standing() + one.standing());
            if (next.compareTo(best) >= 0) {
                return;
            }
            if (chosen.stream().noneMatch(other -> overlap(other, choice))) {
                chosen.add(choice);
                search(index + 1, next);
                chosen.remove(chosen.size() - 1);
            }
        }
    }

    /** Only one assistant: two mixes may not overlap. */
    private boolean overlap(Choice one, Choice other) {
        return one.bowls().stream().anyMatch(a -> other.bowls().stream()
                .anyMatch(b -> Math.abs(a.mixStart() - b.mixStart()) < 1 + day.mixes().get(0).mixMinutes()));
    }

    private List<Choice> choices(int index) {
        List<Choice> choices = new ArrayList<>();
        FloorDay alone = new FloorDay(
                day.handOverMinutes(), day.washMinutes(), day.scales(), day.basins(), day.rinseMinutes(),
                day.stylistsRinse(), day.marginMinutes(), day.leastDecigrams(), day.assistants(), day.bowlSizes(),
                day.mixes(), List.of(day.services().get(index)));
        ServiceGrid grid = new ServiceGrid(alone, 0);
        bowls(alone, grid, new ArrayList<>(), new ArrayList<>(), 0, 0, choices);
        choices.sort(Comparator.comparing(Choice::score));
        return choices;
    }

    private void bowls(
            FloorDay alone,
            ServiceGrid grid,
            List<BowlAssignment> bowls,
            List<Integer> minutes,
            int j,
            int delay,
            List<Choice> choices) {
        if (j == grid.last) {
            rinses(alone, grid, bowls, minutes, choices);
            return;
        }
        ZoneTimes times = new ZoneTimes(grid.service);
        FloorMix mix = day.mixes().get(grid.mix[j]);
        for (int k = j + 1; k <= grid.last; k++) {
            for (int d = delay; d <= Math.min(MOST_DELAY, best.lateness()); d++) {
                int latest = grid.startBase[j] + d - mix.mixMinutes() - day.handOverMinutes();
                for (int start = Math.max(0, grid.endBase[k] + d - mix.lifeMinutes()); start <= latest; start++) {
                    bowls.add(new BowlAssignment(grid.service.service(), grid.minute[j], grid.minute[k], 0, start, 0));
                    int size = minutes.size();
                    for (int i = grid.minute[j]; i < grid.minute[k]; i++) {
                        minutes.add(times.clock[i] + d);
                    }
                    bowls(alone, grid, bowls, minutes, k, d, choices);
                    bowls.remove(bowls.size() - 1);
                    minutes.subList(size, minutes.size()).clear();
                }
            }
        }
    }

    private void rinses(
            FloorDay alone, ServiceGrid grid, List<BowlAssignment> bowls, List<Integer> minutes, List<Choice> choices) {
        int wish = minutes.get(minutes.size() - 1) + 1 + grid.service.zones().get(0).processMinutes();
        for (int rinse = wish; rinse <= wish + best.lateness(); rinse++) {
            ServiceTimes times =
                    new ServiceTimes(grid.service.service(), minutes, rinse, day.stylistsRinse() ? -1 : 0);
            FloorScore none = new FloorScore(-1, -1, -1);
            List<String> faults = FloorPlanCheck.faults(alone, new FloorPlan(bowls, List.of(times), none));
            if (faults.size() == 1 && faults.get(0).startsWith("value")) {
                FloorScore score = FloorPlanCheck.score(alone, bowls, times);
                if (score.compareTo(best) < 0) {
                    choices.add(new Choice(List.copyOf(bowls), times, score));
                }
            }
        }
    }
}
