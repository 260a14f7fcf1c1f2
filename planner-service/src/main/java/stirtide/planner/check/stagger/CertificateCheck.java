package stirtide.planner.check.stagger;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import stirtide.planner.planning.stagger.Assistant;
import stirtide.planner.planning.stagger.Certificate;
import stirtide.planner.planning.stagger.Claim;
import stirtide.planner.planning.stagger.DutyWindow;
import stirtide.planner.planning.stagger.MinutePrices;
import stirtide.planner.planning.stagger.StaggerPlan;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;
import stirtide.planner.planning.stagger.StaggerScore;

/** Follows a certificate step by step from the problem alone and says whether it refutes its claim. */
public final class CertificateCheck {
    private final StaggerProblem problem;
    private final int from;
    private final int to;
    private final Map<Integer, boolean[]> allowed;

    private CertificateCheck(StaggerProblem problem) {
        this.problem = problem;
        int first = 0;
        int last = 0;
        for (StaggerRun run : problem.runs()) {
            first = Math.min(first, run.startMinute() - run.workingLifeMinutes());
            last = Math.max(last, run.endMinute() + problem.maxWaitMinutes() + run.mixMinutes());
        }
        this.from = first;
        this.to = last + 1;
        this.allowed = MixPrices.allowedStarts(problem, from, to);
    }

    /** Whether the certificate shows that no plan of the problem keeps its claim. */
    public static boolean refutes(StaggerProblem problem, Certificate certificate) {
        CertificateCheck check = new CertificateCheck(problem);
        RunCase[] cases = new RunCase[problem.runs().size()];
        for (int r = 0; r < cases.length; r++) {
            cases[r] = new RunCase(problem, problem.runs().get(r));
        }
        return check.follow(certificate.claim(), certificate.root(), cases);
    }

    /** How many levels of a valid plan's score, from the first, its certificates prove best. */
    public static int provenLevels(StaggerProblem problem, StaggerPlan plan) {
        StaggerScore score = plan.score();
        if (score.lastResorts() > 0) {
            return 0;
        }
        long wait = score.waitMinutes();
        long mix = score.mixCost();
        if (wait > 0 && !refuted(problem, plan, new Claim(wait - 1, Claim.ANY, Claim.ANY))) {
            return 0;
        }
        if (mix > 0 && !refuted(problem, plan, new Claim(wait, mix - 1, Claim.ANY))) {
            return 1;
        }
        boolean ageIsBest =
                score.ageMinutes() == 0 || refuted(problem, plan, new Claim(wait, mix, score.ageMinutes() - 1));
        return ageIsBest ? 3 : 2;
    }

    /**
     * Least minutes by which services must be late in all, if a late bowl makes all that follows in its service later: for
     * each service the cheapest delay with the cheapest bowls that are no later, less the price of all mixers. Holds for all
     * prices of 0 or more.
     *
     * @param services places of the runs of each service
     * @param minute price of a minute of delay, 1 or more
     * @return 0 or more, at most the longest wait of the problem plus 1 where a service cannot be fed within it
     */
    public static int leastDelay(
            StaggerProblem problem, List<List<Integer>> services, int minute, MinutePrices prices) {
        CertificateCheck check = new CertificateCheck(problem);
        Certificate.Priced step = new Certificate.Priced(0, 0, 0, prices, null);
        Claim any = new Claim(Claim.ANY, Claim.ANY, Claim.ANY);
        if (minute < 1 || !lawful(any, step)) {
            return 0;
        }
        MixPrices summed = new MixPrices(problem, any, step, check.allowed, check.from, check.to);
        long least = -check.mixers(step);
        for (List<Integer> service : services) {
            least = Math.addExact(least, check.delayed(service, minute, summed));
        }
        return (int) Math.max(0, Math.floorDiv(least + minute - 1, minute));
    }

    private long delayed(List<Integer> service, int minute, MixPrices summed) {
        List<RunCase> cases = service.stream()
                .map(r -> new RunCase(problem, problem.runs().get(r)))
                .toList();
        long least = (problem.maxWaitMinutes() + 1L) * minute;
        for (int delay = 0; (long) delay * minute < least; delay++) {
            MixPrices prices = summed.waitingAtMost(delay);
            long cost = (long) delay * minute;
            for (int i = 0; i < cases.size() && cost < least; i++) {
                cost = Math.addExact(cost, cases.get(i).ahead(prices)[0]);
            }
            least = Math.min(least, cost);
        }
        return least;
    }

    private static boolean refuted(StaggerProblem problem, StaggerPlan plan, Claim claim) {
        for (Certificate certificate : plan.certificates()) {
            if (certificate.claim().equals(claim) && refutes(problem, certificate)) {
                return true;
            }
        }
        return false;
    }

    private boolean follow(Claim claim, Certificate.Step step, RunCase[] cases) {
        if (step instanceof Certificate.Split split) {
            RunCase[] atMost = cases.clone();
            RunCase[] later = cases.clone();
            int r = split.runIndex();
            atMost[r] = cases[r].atMost(split.minute(), split.mixStartMinute());
            later[r] = cases[r].later(split.minute(), split.mixStartMinute());
            return follow(claim, split.atMost(), atMost) && follow(claim, split.later(), later);
        }
        if (step instanceof Certificate.Swept swept) {
            return swept(claim, swept);
        }
        return priced(claim, (Certificate.Priced) step, cases);
    }

    /** Followed from the whole problem: what splits and strikes before it left out is not needed. */
    private boolean swept(Claim claim, Certificate.Swept step) {
        Certificate.Priced terms =
                new Certificate.Priced(step.delayWeight(), step.mixWeight(), step.ageWeight(), step.prices(), null);
        if (!lawful(claim, terms)) {
            return false;
        }
        MixPrices prices = new MixPrices(problem, claim, terms, allowed, from, to);
        int[] mixers = new int[to - from];
        Arrays.setAll(mixers, i -> mixers(from + i));
        MixerStates workers = new MixerStates(problem, mixers, from, step.people());
        return new SweepCheck(problem, prices, step.prices(), mixers, from, workers).dies(allowance(claim, terms));
    }

    private boolean priced(Claim claim, Certificate.Priced step, RunCase[] cases) {
        if (!lawful(claim, step)) {
            return false;
        }
        MixPrices prices = new MixPrices(problem, claim, step, allowed, from, to);
        long[][] ahead = new long[cases.length][];
        long bound = -mixers(step);
        for (int r = 0; r < cases.length; r++) {
            ahead[r] = cases[r].ahead(prices);
            if (ahead[r][0] >= RunCase.NONE) {
                return true;
            }
            bound += ahead[r][0];
        }
        long slack = allowance(claim, step) - bound;
        if (slack < 0) {
            return true;
        }
        if (step.next() == null) {
            return false;
        }
        RunCase[] rest = new RunCase[cases.length];
        for (int r = 0; r < cases.length; r++) {
            rest[r] = cases[r].without(ahead[r][0] + slack, ahead[r], prices);
        }
        return follow(claim, step.next(), rest);
    }

    /** Weights and prices of 0 or more, and no weight on what the claim leaves open. */
    private static boolean lawful(Claim claim, Certificate.Priced step) {
        boolean signs = step.delayWeight() >= 0 && step.mixWeight() >= 0 && step.ageWeight() >= 0;
        boolean open = (claim.waitMinutes() == Claim.ANY && step.delayWeight() > 0)
                || (claim.mixCost() == Claim.ANY && step.mixWeight() > 0)
                || (claim.ageMinutes() == Claim.ANY && step.ageWeight() > 0);
        for (int t = step.prices().fromMinute(); t < step.prices().toMinute(); t++) {
            signs &= step.prices().at(t) >= 0;
        }
        return signs && !open;
    }

    private static long allowance(Claim claim, Certificate.Priced step) {
        long wait = step.delayWeight() == 0 ? 0 : Math.multiplyExact(step.delayWeight(), claim.waitMinutes());
        long mix = step.mixWeight() == 0 ? 0 : Math.multiplyExact(step.mixWeight(), claim.mixCost());
        long age = step.ageWeight() == 0 ? 0 : Math.multiplyExact(step.ageWeight(), claim.ageMinutes());
        return Math.addExact(wait, Math.addExact(mix, age));
    }

    /** Price of all the mixing that the bar can do. */
    private long mixers(Certificate.Priced step) {
        long sum = 0;
        for (int t = step.prices().fromMinute(); t < step.prices().toMinute(); t++) {
            sum += (long) mixers(t) * step.prices().at(t);
        }
        return sum;
    }

    /** How many can mix in a minute. */
    private int mixers(int minute) {
        int onDuty = 0;
        for (Assistant assistant : problem.assistants()) {
            boolean here = false;
            for (DutyWindow window : assistant.onDuty()) {
                here |= window.covers(minute, minute + 1);
            }
            onDuty += here ? 1 : 0;
        }
        return Math.min(onDuty, problem.mixesAtOnce());
    }
}
