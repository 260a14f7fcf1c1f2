package stirtide.planner.planning.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Holds the engine against all plans of tiny days, on all three levels. */
class ExhaustiveFloorTest {
    private static FloorDay tiny(SplittableRandom random) {
        List<FloorService> services = new ArrayList<>();
        boolean stylistsRinse = random.nextBoolean();
        for (int i = 1; i <= 2; i++) {
            int minutes = 3 + random.nextInt(3);
            FloorZone zone = new FloorZone(0, minutes, minutes * 30, 0, 2 + random.nextInt(4), 14 + random.nextInt(8));
            services.add(new FloorService(
                    i, random.nextInt(2), random.nextInt(2), 5 + random.nextInt(8), List.of(zone), breaks(minutes)));
        }
        int pause = 8 + random.nextInt(10);
        return new FloorDay(
                1, 2, 1, 1, 3, stylistsRinse, 1, 90,
                List.of(new FloorAssistant(List.of(new DutySpan(0, pause), new DutySpan(pause + 3, 60)))),
                List.of(new FloorBowlSize(140 + random.nextInt(80), 10, 2)),
                List.of(new FloorMix(2, 9 + random.nextInt(3))),
                services);
    }

    private static List<Integer> breaks(int minutes) {
        return IntStream.range(1, minutes).filter(i -> i % 2 == 0).boxed().toList();
    }

    @Test
    void no_plan_of_a_tiny_day_is_better() {
        int solved = 0;
        for (int seed = 0; seed < 12; seed++) {
            FloorDay day = tiny(new SplittableRandom(seed));
            FloorEngine engine = new FloorEngine(day, new SplittableRandom(1));
            engine.improve(steps -> steps < 500);
            if (engine.plan().isPresent()) {
                FloorScore score = engine.plan().get().score();
                assertThat(new ExhaustiveFloor(day, score).best()).as("day %s", seed).isEqualTo(score);
                assertThat(engine.bounds().lateness()).isLessThanOrEqualTo(score.lateness());
                assertThat(engine.bounds().handling()).isLessThanOrEqualTo(score.handling());
                solved++;
            }
        }
        assertThat(solved).isGreaterThan(6);
    }
}
