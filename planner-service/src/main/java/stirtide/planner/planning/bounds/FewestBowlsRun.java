package stirtide.planner.planning.bounds;

import java.util.ArrayList;
import java.util.List;
import stirtide.planner.planning.stagger.Assistant;
import stirtide.planner.planning.stagger.BowlRule;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/** One run with its fewest bowls, if an assistant is always free: in which minutes each of them would have to be mixed. */
final class FewestBowlsRun {
    /**
     * A bowl of a way with the fewest bowls: whichever that way is, it is mixed within {@code [release, due)}.
     *
     * @param place place of the run
     * @param release earliest start of mixing
     * @param due latest end of mixing
     * @param minutes minutes of mixing
     */
    record Job(int place, int release, int due, int minutes) {
        /** Minutes of mixing that lie in a stretch at least. */
        int mustLieIn(int from, int to) {
            return Math.max(
                    0, Math.min(Math.min(minutes, to - from), Math.min(release + minutes - from, to - due + minutes)));
        }
    }

    private final StaggerProblem problem;
    private final int place;
    private final StaggerRun run;
    /** Minutes that so many bowls feed at most, from the start. */
    private final List<Integer> farthest = new ArrayList<>(List.of(0));

    FewestBowlsRun(StaggerProblem problem, int place) {
        this.problem = problem;
        this.place = place;
        this.run = problem.runs().get(place);
        for (int from = 0; from < run.minutes(); from = farthest.get(farthest.size() - 1)) {
            int to = from;
            while (to < run.minutes() && run.bowls().cost(from, to + 1) != BowlRule.NO_BOWL) to++;
            if (to == from) throw new IllegalArgumentException("one minute of run " + place + " overfills every bowl");
            farthest.add(to);
        }
    }

    int fewest() {
        return farthest.size() - 1;
    }

    /** One job for each of the fewest bowls. */
    List<Job> jobs() {
        int[] nearest = nearest();
        int lead = run.mixMinutes() + problem.handOverMinutes();
        List<Job> jobs = new ArrayList<>();
        for (int bowl = 0; bowl < fewest(); bowl++) {
            int release = run.endOf(nearest[bowl + 1]) - run.workingLifeMinutes();
            int start = run.useOf(Math.min(farthest.get(bowl), run.minutes() - 1)) - lead + problem.maxWaitMinutes();
            jobs.add(new Job(place, release, Math.max(start, release) + run.mixMinutes(), run.mixMinutes()));
        }
        return jobs;
    }

    /** Minutes that the first so many bowls must feed, for the others to feed the rest. */
    private int[] nearest() {
        int[] nearest = new int[fewest() + 1];
        nearest[fewest()] = run.minutes();
        for (int bowl = fewest() - 1; bowl > 0; bowl--) {
            int from = nearest[bowl + 1];
            while (from > 0 && run.bowls().cost(from - 1, nearest[bowl + 1]) != BowlRule.NO_BOWL) from--;
            nearest[bowl] = from;
        }
        return nearest;
    }

    /** Whether some person could mix the bowl of a job. */
    boolean somebodyMay(Job job) {
        for (Assistant person : problem.assistants())
            for (int start = job.release; start + job.minutes <= job.due; start++)
                if (person.onDuty(start, start + job.minutes)) return true;
        return false;
    }
}
