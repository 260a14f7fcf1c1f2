package stirtide.planner.planning.stagger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stirtide.planner.check.stagger.CertificateCheck;
import stirtide.planner.check.stagger.StaggerPlanCheck;

/**
 * Published one-machine schedules as days: a job with a processing time and a due date is a run of one minute whose only
 * bowl takes that long to mix and is wanted at the due date; its tardiness is the client's wait. A release date is the bowl's
 * working life: mixed sooner it would not live until then.
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
    void two_of_ten_and_two_of_five_jobs_are_late_where_as_few_as_can_be_are() {
        // Ten jobs: data of a lecture note on M. Pinedo, Scheduling, chapter 3; value by the rule of Moore and Hodgson
        // (1968).
        assertThat(fewestLate(
                        new int[] {19, 23, 5, 31, 17, 8, 32, 41, 26, 18},
                        new int[] {48, 75, 170, 215, 205, 240, 85, 67, 100, 95}))
                .isEqualTo(2);
        // Five jobs: Pinedo, chapter 3; data from memory, value confirmed by enumeration.
        assertThat(fewestLate(new int[] {7, 8, 4, 6, 6}, new int[] {9, 17, 18, 19, 21}))
                .isEqualTo(2);
    }

    @Test
    void greatest_lateness_5_of_the_four_jobs_with_release_dates() {
        // M. Pinedo, Scheduling, branch and bound for 1 | rj | Lmax, as a lecture note gives it: (release, minutes,
        // due).
        int[][] jobs = {{0, 4, 8}, {1, 2, 12}, {3, 6, 11}, {5, 5, 10}};

        StaggerPlan late = proved(released(jobs, 4));
        StaggerPlan kept = proved(released(jobs, 5));

        assertThat(late.bound().waitMinutes()).isPositive();
        assertThat(kept.score().waitMinutes()).isZero();
        List<Integer> order = kept.mixes().stream()
                .sorted(Comparator.comparing(StaggerMix::mixStartMinute))
                .map(mix -> mix.runIndex() + 1)
                .toList();
        assertThat(order).containsExactly(1, 3, 4, 2);
    }

    @Test
    void earliest_deadline_first_would_be_late_where_planned_idle_time_is_not() {
        // Built for these tests, not published; values confirmed by enumeration: (release, minutes, due). The earliest
        // deadline
        // first starts the first job of each at 0, and the second is late.
        assertThat(proved(released(new int[][] {{0, 3, 10}, {1, 3, 4}}, 0))
                        .score()
                        .waitMinutes())
                .isZero();
        assertThat(proved(released(new int[][] {{0, 10, 25}, {4, 10, 14}, {10, 10, 40}}, 0))
                        .score()
                        .waitMinutes())
                .isZero();
    }

    /** Jobs that may not begin before their release and should end at most so many minutes after they are due. */
    private static StaggerProblem released(int[][] jobs, int lateness) {
        List<StaggerRun> runs = new ArrayList<>();
        for (int[] job : jobs) {
            int due = job[2] + lateness;
            runs.add(job(runs.size(), job[1], due, due - job[0]));
        }
        return new StaggerProblem(0, 30, runs, List.of(new Assistant(List.of(new DutyWindow(0, 100)))), 1);
    }

    private static StaggerPlan proved(StaggerProblem problem) {
        StaggerPlan plan = new StaggerEngine(problem, new SplittableRandom(1)).improve(rounds -> rounds < 500);
        assertThat(StaggerPlanCheck.faults(problem, plan)).isEmpty();
        assertThat(CertificateCheck.provenLevels(problem, plan)).isEqualTo(3);
        return plan;
    }

    private static long leastTardiness(int[] minutes, int[] due) {
        return proved(oneMachine(minutes, due, Arrays.stream(minutes).sum()))
                .score()
                .waitMinutes();
    }

    /** Nobody may wait, so a job that would be late is left to the stylist, and of those there are as few as can be. */
    private static long fewestLate(int[] minutes, int[] due) {
        StaggerProblem problem = oneMachine(minutes, due, 0);
        StaggerPlan plan = new StaggerEngine(problem, new SplittableRandom(1)).improve(rounds -> rounds < 200);
        assertThat(StaggerPlanCheck.faults(problem, plan)).isEmpty();
        return plan.score().lastResorts();
    }

    private static StaggerProblem oneMachine(int[] minutes, int[] due, int maxWait) {
        List<StaggerRun> runs = new ArrayList<>();
        for (int i = 0; i < minutes.length; i++) {
            runs.add(job(i, minutes[i], due[i], 2000));
        }
        int sum = Arrays.stream(minutes).sum();
        return new StaggerProblem(0, maxWait, runs, List.of(new Assistant(List.of(new DutyWindow(0, 2 * sum)))), 1);
    }

    /** The bowl may be mixed at most {@code early} minutes before it is wanted. */
    private static StaggerRun job(int id, int minutes, int due, int early) {
        return new StaggerRun(id, due, due + 1, minutes, early + 1, (from, to) -> 1);
    }
}
