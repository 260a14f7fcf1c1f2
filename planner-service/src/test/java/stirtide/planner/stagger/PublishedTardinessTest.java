package stirtide.planner.stagger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stirtide.planner.stagger.check.PlanCheck;

/**
 * Published one-machine schedules as days: a job with a processing time and a due date is a run of one minute whose only
 * bowl takes that long to mix and is wanted at the due date; its tardiness is the client's wait.
 */
class PublishedTardinessTest {

    @Test
    void total_tardiness_20_of_the_four_jobs_in_winston_section_9_6() {
        // W. Winston, Operations Research, 4th ed., section 9.6, problem 1; the value 20 was confirmed by enumeration.
        assertThat(leastTardiness(new int[] {7, 5, 9, 11}, new int[] {14, 13, 18, 15}))
                .isEqualTo(20);
    }

    @Test
    void total_tardiness_370_of_the_five_jobs_in_pinedo_chapter_3() {
        // M. Pinedo, Scheduling: Theory, Algorithms, and Systems, chapter 3; data and value from memory, confirmed by
        // enumeration.
        assertThat(leastTardiness(new int[] {121, 79, 147, 83, 130}, new int[] {260, 266, 266, 336, 337}))
                .isEqualTo(370);
    }

    @Test
    void earliest_deadline_first_would_be_late_where_planned_idle_time_is_not() {
        // Built for this test, not published: job A (released 0, due 10), B (released 1, due 4), 3 minutes each.
        // Starting A at 0
        // makes B late by 2; waiting until 1 makes nobody late.
        List<Run> runs = List.of(job(0, 3, 10, 10), job(1, 3, 4, 3));
        Problem problem = new Problem(0, 30, runs, List.of(new Assistant(List.of(new Window(0, 60)))), 1);

        Plan plan = new StaggerEngine(problem, new SplittableRandom(1)).improve(rounds -> rounds < 50);

        assertThat(plan.score().waitMinutes()).isZero();
        assertThat(plan.provenLevels()).isEqualTo(3);
    }

    private static long leastTardiness(int[] minutes, int[] due) {
        List<Run> runs = new ArrayList<>();
        int sum = 0;
        for (int i = 0; i < minutes.length; i++) {
            runs.add(job(i, minutes[i], due[i], 2000));
            sum += minutes[i];
        }
        Problem problem = new Problem(0, sum, runs, List.of(new Assistant(List.of(new Window(0, 2 * sum)))), 1);
        Plan plan = new StaggerEngine(problem, new SplittableRandom(1)).improve(rounds -> rounds < 60);
        assertThat(PlanCheck.faults(problem, plan)).isEmpty();
        return plan.score().waitMinutes();
    }

    /** The bowl may be mixed at most {@code early} minutes before it is wanted. */
    private static Run job(int id, int minutes, int due, int early) {
        return new Run(id, due, due + 1, minutes, early + 1, (from, to) -> 1);
    }
}
