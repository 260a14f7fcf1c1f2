package stirtide.planner.planning.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stirtide.planner.check.floor.FloorPlanCheck;

/** The engine against a general solver that knows the whole problem, on days so small that the solver can say that nothing is better. */
class TinyFloorDaysTest {
    private static final int DAYS = 12;

    @Test
    void nearly_no_plan_is_better_and_no_bound_is_too_high() {
        int answered = 0;
        int better = 0;
        int late = 0;
        int provenLate = 0;
        for (int seed = 0; seed < DAYS; seed++) {
            FloorDay day = day(new SplittableRandom(seed));
            FloorEngine engine = new FloorEngine(day, new SplittableRandom(1));
            engine.improve(steps -> steps < 1000);
            Optional<FloorPlan> plan = engine.plan();
            if (plan.isEmpty()) {
                continue;
            }
            assertThat(FloorPlanCheck.faults(day, plan.get()))
                    .as("seed " + seed)
                    .isEmpty();
            FloorScore score = plan.get().score();
            FloorJudge judge = new FloorJudge(day);
            FloorScore best = judge.better(score).orElse(score);
            assertThat(engine.bounds().lateness()).as("seed " + seed).isLessThanOrEqualTo(best.lateness());
            assertThat(engine.bounds().handling()).as("seed " + seed).isLessThanOrEqualTo(best.handling());
            answered += judge.isSure() ? 1 : 0;
            better += best.equals(score) ? 0 : 1;
            late += score.lateness() > 0 ? 1 : 0;
            provenLate += score.lateness() > 0 && engine.provenLevels() > 0 ? 1 : 0;
        }
        assertThat(answered).isGreaterThan(DAYS * 2 / 3);
        assertThat(better).isLessThanOrEqualTo(1);
        assertThat(late).isGreaterThan(DAYS / 2);
        assertThat(provenLate).isGreaterThan(late * 2 / 3);
    }

    private static FloorDay day(RandomGenerator random) {
        int count = random.nextInt(4) == 0 ? 3 : 2;
        List<FloorService> services = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            services.add(service(random, i + 1));
        }
        List<FloorAssistant> assistants = new ArrayList<>();
        for (int a = 0; a <= random.nextInt(2); a++) {
            int pause = 10 + random.nextInt(30);
            assistants.add(new FloorAssistant(List.of(new DutySpan(0, pause), new DutySpan(pause + 4, 90))));
        }
        return new FloorDay(
                1,
                3,
                1 + random.nextInt(2),
                1 + random.nextInt(2),
                3,
                random.nextInt(2) == 0,
                2,
                100,
                assistants,
                List.of(new FloorBowlSize(300, 20, 2 + random.nextInt(2)), new FloorBowlSize(600, 32, 2)),
                List.of(new FloorMix(2, 16), new FloorMix(3, 20)),
                services);
    }

    private static FloorService service(RandomGenerator random, int number) {
        List<FloorZone> zones = new ArrayList<>();
        int minutes = 0;
        int zoneCount = 1 + random.nextInt(2);
        for (int z = 0; z < zoneCount; z++) {
            int apply = 3 + random.nextInt(4);
            int mix = random.nextInt(3) == 0 ? 1 : 0;
            zones.add(new FloorZone(
                    random.nextInt(2), apply, apply * (30 + random.nextInt(40)), mix, 5 + random.nextInt(3), 24));
            minutes += apply;
        }
        int all = minutes;
        return new FloorService(
                number,
                random.nextInt(2),
                random.nextInt(3),
                6 + random.nextInt(14),
                zones,
                IntStream.range(1, all).filter(m -> m % 3 == 0).boxed().toList());
    }
}
