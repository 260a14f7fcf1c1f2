package stirtide.planner.planning.stagger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stirtide.planner.check.stagger.CertificateCheck;
import stirtide.planner.check.stagger.StaggerPlanCheck;

/** Runs that pause: nothing is used in a pause, and what begins after it need not be there before. */
class PausedRunsTest {
    private static final int ROUNDS = 300;

    private static StaggerRun run(int id, int life, List<Integer> use) {
        return new StaggerRun(id, use, 4, life, (from, to) -> 1);
    }

    private static List<Integer> minutes(int... spans) {
        List<Integer> minutes = new ArrayList<>();
        for (int i = 0; i < spans.length; i += 2)
            IntStream.range(spans[i], spans[i + 1]).forEach(minutes::add);
        return minutes;
    }

    private static StaggerProblem problem(List<StaggerRun> runs, DutyWindow... windows) {
        return new StaggerProblem(1, 60, runs, List.of(new Assistant(List.of(windows))), 1);
    }

    private static StaggerPlan plan(StaggerProblem problem) {
        StaggerPlan plan = new StaggerEngine(problem, new SplittableRandom(5)).improve(rounds -> rounds < ROUNDS);
        assertThat(StaggerPlanCheck.faults(problem, plan)).isEmpty();
        return plan;
    }

    @Test
    void a_bowl_after_a_pause_need_not_be_there_in_it() {
        StaggerProblem paused = problem(
                List.of(run(1, 20, minutes(100, 110, 120, 130))), new DutyWindow(95, 99), new DutyWindow(114, 120));
        StaggerPlan plan = plan(paused);
        // Mixed from 95, the first bowl lives until 115; the second is mixed from 115 and there at 120, when it is
        // needed.
        assertThat(plan.score()).isEqualTo(new StaggerScore(0, 0, 2, 10));
        assertThat(CertificateCheck.provenLevels(paused, plan)).isEqualTo(3);
        assertThat(plan.mixes()).extracting(StaggerMix::fromMinute).containsExactly(100, 120);
        assertThat(plan.mixes()).extracting(StaggerMix::toMinute).containsExactly(110, 130);
    }

    @Test
    void a_bowl_goes_on_over_a_pause_while_it_lives() {
        StaggerPlan plan = plan(problem(List.of(run(1, 35, minutes(100, 110, 120, 130))), new DutyWindow(60, 140)));
        assertThat(plan.score()).isEqualTo(new StaggerScore(0, 0, 1, 5));
        assertThat(plan.mixes()).singleElement().satisfies(mix -> {
            assertThat(mix.fromMinute()).isEqualTo(100);
            assertThat(mix.toMinute()).isEqualTo(130);
        });
    }

    /** Where not even a late mix outlives the pause, a run with a pause is two runs without one. */
    @Test
    void a_long_pause_makes_two_runs_of_one() {
        int compared = 0;
        for (int seed = 0; seed < 24; seed++) {
            Random random = new Random(seed);
            List<StaggerRun> paused = new ArrayList<>();
            List<StaggerRun> apart = new ArrayList<>();
            for (int r = 0; r < 4; r++) {
                int life = 18 + random.nextInt(10);
                int start = 100 + random.nextInt(30);
                int pause = start + 8 + random.nextInt(20);
                int again = pause + life + problem(paused).maxWaitMinutes();
                int end = again + 8 + random.nextInt(20);
                paused.add(run(r, life, minutes(start, pause, again, end)));
                apart.add(run(2 * r, life, minutes(start, pause)));
                apart.add(run(2 * r + 1, life, minutes(again, end)));
            }
            DutyWindow[] duty = {new DutyWindow(60, 120 + random.nextInt(20)), new DutyWindow(145, 400)};
            StaggerPlan one = plan(problem(paused, duty));
            StaggerPlan two = plan(problem(apart, duty));
            int proven = Math.min(
                    CertificateCheck.provenLevels(problem(paused, duty), one),
                    CertificateCheck.provenLevels(problem(apart, duty), two));
            compared += proven;
            if (proven > 0)
                assertThat(one.score().waitMinutes()).isEqualTo(two.score().waitMinutes());
            if (proven > 1)
                assertThat(one.score().mixCost()).isEqualTo(two.score().mixCost());
            if (proven > 2)
                assertThat(one.score().ageMinutes()).isEqualTo(two.score().ageMinutes());
        }
        assertThat(compared).isGreaterThan(60);
    }
}
