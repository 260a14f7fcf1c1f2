package stirtide.planner.planning.bounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import stirtide.events.plan.BowlReason;
import stirtide.events.plan.Plan;
import stirtide.planner.check.ProofCheck;
import stirtide.planner.planning.bounds.BowlReasonText.Stretch;
import stirtide.planner.planning.bounds.FewestBowlsRun.Job;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.RelaxedProblem;
import stirtide.planner.planning.stagger.SearchRounds;

/**
 * Looks for the stretches that force bowls of a plan: what one bowl cannot serve or hold, minutes in which no assistant is free for
 * the bowl that would save another, and stretches in which services with their fewest bowls would need more mixing than people
 * and scales can give. Says only what the checker confirms.
 */
final class BowlLowerBounds {
    private static final int NEAR_MINUTES = 30;

    private final PlanQuestion question;
    private final Plan plan;
    private final RelaxedProblem problem;
    private final ProofCheck check;
    private final BowlReasonText words;
    private final List<FewestBowlsRun> runs = new ArrayList<>();
    private final List<Job> jobs = new ArrayList<>();
    private final List<BowlReason> reasons = new ArrayList<>();
    private final OrderLowerBounds orders;
    private final SearchRounds rounds;

    BowlLowerBounds(PlanQuestion question, Plan plan, RelaxedProblem problem, ProofCheck check, SearchRounds rounds) {
        this.question = question;
        this.plan = plan;
        this.problem = problem;
        this.check = check;
        this.rounds = rounds;
        this.words = new BowlReasonText(question, problem);
        for (int place = 0; place < problem.parts().size(); place++) {
            runs.add(new FewestBowlsRun(problem.problem(), place));
            jobs.addAll(runs.get(place).jobs());
        }
        this.orders = new OrderLowerBounds(problem, check, words, runs, rounds);
    }

    /**
     * The reasons that are confirmed.
     *
     * @param mixers whether to look for stretches that want for mixers; without, only for what a bowl serves and holds
     */
    List<BowlReason> reasons(boolean mixers) {
        List<Integer> unexplained = new ArrayList<>();
        for (int place = 0; place < runs.size(); place++) {
            int fewest = runs.get(place).fewest();
            int planned = planned(place);
            if (fewest > 1 && planned >= fewest) alone(place, fewest);
            if (mixers && planned > fewest && !extra(place, fewest)) unexplained.add(place);
        }
        if (rounds.granted() == 0) return reasons;
        for (int place : unexplained)
            if (!known(place)) orders.around(place, near(jobsOf(place))).ifPresent(reasons::add);
        return reasons;
    }

    private int planned(int place) {
        RelaxedProblem.Part part = problem.parts().get(place);
        return (int) plan.bowls().stream()
                .filter(bowl -> bowl.service() == part.service()
                        && bowl.zones().stream().anyMatch(part.zones()::contains))
                .count();
    }

    /** Tries the narrowest cause first. */
    private void alone(int place, int fewest) {
        for (String cause : List.of("WORKING_LIFE", "BOWL_SIZE", "LIFE_AND_SIZE"))
            if (claim(words.alone(place, cause, fewest))) return;
    }

    private List<Job> jobsOf(int place) {
        return jobs.stream().filter(job -> job.place() == place).toList();
    }

    /** Whether some reason is about the bowls of several services, this one among them. */
    private boolean known(int place) {
        int service = problem.parts().get(place).service();
        return reasons.stream()
                .anyMatch(reason -> reason.cause().equals("NO_ORDER_FITS")
                        && reason.services().contains(service));
    }

    private boolean extra(int place, int fewest) {
        List<Job> own = jobsOf(place);
        Optional<Job> unmixable =
                own.stream().filter(job -> !runs.get(place).somebodyMay(job)).findFirst();
        if (unmixable.isPresent()) {
            return claim(words.noneFree(place, unmixable.get(), fewest + 1));
        }
        return !question.oneMixTwoBowls()
                && busiest(own).filter(stretch -> tooMuch(place, stretch)).isPresent();
    }

    private List<Job> near(List<Job> own) {
        int first = own.stream().mapToInt(Job::release).min().orElseThrow() - NEAR_MINUTES;
        int last = own.stream().mapToInt(Job::due).max().orElseThrow() + NEAR_MINUTES;
        return jobs.stream()
                .filter(job -> job.release() < last && first < job.due())
                .toList();
    }

    /** The stretch around one of these jobs that lacks most minutes; of several the longest, which holds whole mixes. */
    private Optional<Stretch> busiest(List<Job> own) {
        List<Job> near = near(own);
        TreeSet<Integer> froms = new TreeSet<>();
        TreeSet<Integer> tos = new TreeSet<>();
        for (Job job : near) {
            froms.add(job.release());
            froms.add(job.due() - job.minutes());
            tos.add(job.due());
            tos.add(job.release() + job.minutes());
        }
        MixingCapacity given = new MixingCapacity(problem.problem(), froms.first(), tos.last());
        Stretch best = null;
        for (int from : froms) {
            for (int to : tos.tailSet(from, false)) {
                if (mustLieIn(own, from, to) == 0) continue;
                Stretch stretch = new Stretch(from, to, mustLieIn(near, from, to), given.between(from, to));
                if (stretch.needed() > stretch.available() && (best == null || better(stretch, best))) best = stretch;
            }
        }
        return Optional.ofNullable(best);
    }

    private static int mustLieIn(List<Job> jobs, int from, int to) {
        int minutes = 0;
        for (Job job : jobs) minutes += job.mustLieIn(from, to);
        return minutes;
    }

    private static boolean better(Stretch a, Stretch b) {
        int more = a.needed() - a.available() - b.needed() + b.available();
        return more > 0 || more == 0 && a.to() - a.from() > b.to() - b.from();
    }

    private boolean tooMuch(int extra, Stretch stretch) {
        TreeSet<Integer> services = new TreeSet<>();
        for (Job job : jobs)
            if (job.mustLieIn(stretch.from(), stretch.to()) > 0)
                services.add(problem.parts().get(job.place()).service());
        int least = 1;
        for (int place = 0; place < runs.size(); place++)
            if (services.contains(problem.parts().get(place).service()))
                least += runs.get(place).fewest();
        boolean known = reasons.stream()
                .anyMatch(reason -> reason.cause().equals("TOO_MUCH_AT_ONCE")
                        && reason.from().equals(words.at(stretch.from()))
                        && reason.to().equals(words.at(stretch.to())));
        return known || claim(words.tooMuch(extra, stretch, List.copyOf(services), least));
    }

    private boolean claim(BowlReason reason) {
        boolean confirmed = check.forces(reason, question.minuteOf(reason.from()), question.minuteOf(reason.to()));
        if (confirmed) reasons.add(reason);
        return confirmed;
    }
}
