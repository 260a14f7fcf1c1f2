package stirtide.planner.planning.bounds;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stirtide.events.plan.BowlReason;
import stirtide.planner.check.ProofCheck;
import stirtide.planner.planning.bounds.FewestBowlsRun.Job;
import stirtide.planner.planning.search.RelaxedProblem;
import stirtide.planner.planning.stagger.Refutation;
import stirtide.planner.planning.stagger.SearchRounds;
import stirtide.planner.planning.stagger.StaggerProblem;

/**
 * Looks for a few services that no order of mixing gives just the bowls that each needs alone, though no stretch has too few
 * minutes: the services around one that got a bowl more, less those without which it still holds. Says only what the checker
 * confirms.
 *
 * @param rounds rounds for each set of services that is tried
 */
record OrderLowerBounds(
        RelaxedProblem problem,
        ProofCheck check,
        BowlReasonText words,
        List<FewestBowlsRun> runs,
        SearchRounds rounds) {
    /** More at once are seldom settled by few rounds, and too many to read. */
    private static final int MOST_SERVICES = 8;

    /**
     * Why one of several services gets one bowl more, if that can be shown.
     *
     * @param extra place of the run that gets it
     * @param near jobs that may be in its way
     */
    Optional<BowlReason> around(int extra, List<Job> near) {
        int own = serviceOf(extra);
        TreeSet<Integer> kept = new TreeSet<>(nearest(own, extra, near));
        Optional<BowlReason> reason = reason(extra, kept);
        if (reason.isEmpty()) return reason;
        for (int service : List.copyOf(kept)) {
            if (service == own) continue;
            TreeSet<Integer> fewer = new TreeSet<>(kept);
            fewer.remove(service);
            Optional<BowlReason> still = reason(extra, fewer);
            if (still.isEmpty()) continue;
            reason = still;
            kept = fewer;
        }
        return reason;
    }

    private int serviceOf(int place) {
        return problem.parts().get(place).service();
    }

    /** The service and those whose bowls are due at about the same time, nearest first. */
    private List<Integer> nearest(int own, int extra, List<Job> near) {
        int middle = middle(runs.get(extra).jobs());
        return Stream.concat(
                        Stream.of(own),
                        near.stream()
                                .sorted(Comparator.comparingInt(
                                        job -> Math.abs((job.release() + job.due()) / 2 - middle)))
                                .map(job -> serviceOf(job.place())))
                .distinct()
                .limit(MOST_SERVICES)
                .toList();
    }

    private static int middle(List<Job> jobs) {
        return (int) jobs.stream()
                .mapToInt(job -> (job.release() + job.due()) / 2)
                .average()
                .orElseThrow();
    }

    private Optional<BowlReason> reason(int extra, TreeSet<Integer> services) {
        List<Integer> places = IntStream.range(0, runs.size())
                .filter(place -> services.contains(serviceOf(place)))
                .boxed()
                .toList();
        int least =
                1 + places.stream().mapToInt(place -> runs.get(place).fewest()).sum();
        StaggerProblem whole = problem.problem();
        StaggerProblem only = new StaggerProblem(
                whole.handOverMinutes(),
                whole.maxWaitMinutes(),
                places.stream().map(whole.runs()::get).toList(),
                whole.assistants(),
                whole.mixesAtOnce());
        Refutation.Least found = Refutation.leastMixCost(only, least, rounds);
        if (found.mixCost() < least) return Optional.empty();
        List<Job> jobs = places.stream()
                .flatMap(place -> runs.get(place).jobs().stream())
                .toList();
        int from = jobs.stream().mapToInt(Job::release).min().orElseThrow();
        int to = jobs.stream().mapToInt(Job::due).max().orElseThrow();
        BowlReason reason = words.noOrder(extra, from, to, List.copyOf(services), least);
        return found.certificate()
                .filter(certificate -> check.forces(reason, certificate))
                .map(confirmed -> reason);
    }
}
