package stirtide.planner.check;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import stirtide.events.plan.Plan;
import stirtide.events.setup.Directions;
import stirtide.planner.plan.PlanQuestion;
import stirtide.planner.stagger.Assistant;
import stirtide.planner.stagger.BowlRule;
import stirtide.planner.stagger.Certificate;
import stirtide.planner.stagger.Claim;
import stirtide.planner.stagger.MinutePrices;
import stirtide.planner.stagger.Problem;
import stirtide.planner.stagger.Run;
import stirtide.planner.stagger.Window;
import stirtide.planner.stagger.check.CertificateCheck;

/**
 * Confirms what is claimed about all plans of a question in which assistants mix. The problem that the certificates speak of is
 * derived here, from the question alone; only what the plan says cannot be weighed is left out of it.
 */
public final class ProofCheck {
    private final Problem problem;
    private final List<List<Integer>> services;
    private final int unavoidableWait;

    /**
     * Derives the problem.
     *
     * @param extraWaitMinutes most minutes that one service may be late, besides those for bowls that are on their way
     */
    public ProofCheck(PlanQuestion question, Plan plan, int extraWaitMinutes) {
        ProofDay day = new ProofDay(question, plan);
        TreeMap<Integer, List<Integer>> byService = new TreeMap<>();
        List<Run> runs = new ArrayList<>();
        for (ProofDay.Part part : day.parts()) {
            byService
                    .computeIfAbsent(part.service(), service -> new ArrayList<>())
                    .add(runs.size());
            runs.add(run(question, part, runs.size()));
        }
        this.services = List.copyOf(byService.values());
        this.unavoidableWait = day.unavoidableWait();
        this.problem = new Problem(
                question.handOverMinutes(),
                extraWaitMinutes,
                runs,
                question.assistants().stream()
                        .map(each -> hands(question, each))
                        .toList(),
                Math.max(1, question.scales().size()));
    }

    private static Run run(PlanQuestion question, ProofDay.Part part, int place) {
        Directions directions =
                FirstFeed.directions(question, part.run().lightenerId()).orElseThrow();
        long[] upTo = new long[part.needMilligrams().size() + 1];
        for (int i = 1; i < upTo.length; i++)
            upTo[i] = upTo[i - 1] + part.needMilligrams().get(i - 1);
        long room = question.bowlSizes().stream()
                .filter(size -> size.count() > 0)
                .mapToLong(size -> size.usableMilligrams() - size.residueMilligrams())
                .max()
                .orElse(0);
        BowlRule rule = (from, to) -> upTo[to] - upTo[from] <= room ? 1 : BowlRule.NO_BOWL;
        return new Run(place, part.useMinutes(), directions.mixMinutes(), directions.workingLifeMinutes(), rule);
    }

    private static Assistant hands(PlanQuestion question, PlanQuestion.Assistant assistant) {
        int free = Math.max(question.nowMinute(), assistant.busyUntilMinute());
        return new Assistant(assistant.onDuty().stream()
                .filter(duty -> duty.to() > free)
                .map(duty -> new Window(Math.max(duty.from(), free), duty.to()))
                .toList());
    }

    /** Minutes that clients wait for bowls that are on their way, whatever is planned. */
    public int unavoidableWait() {
        return unavoidableWait;
    }

    /**
     * Least minutes of waiting that prices on minutes of mixing prove, those that cannot be avoided anyway included.
     *
     * @param minute price of a minute of waiting, 1 or more
     */
    public int leastWait(int minute, MinutePrices prices) {
        return unavoidableWait + CertificateCheck.leastDelay(problem, services, minute, prices);
    }

    /** Whether a certificate shows that no plan does with fewer bowls, however it spends the waiting allowed. */
    public boolean leastBowls(int bowls, Certificate certificate) {
        return certificate.claim().equals(new Claim(Claim.ANY, bowls - 1L, Claim.ANY))
                && CertificateCheck.refutes(problem, certificate);
    }

    /** In what a problem differs from the one derived here; empty when the proofs of one are proofs of the other. */
    public List<String> differences(Problem other, List<List<Integer>> otherServices) {
        List<String> found = new ArrayList<>();
        if (!services.equals(otherServices)) found.add("services " + services + ", not " + otherServices);
        if (!problem.assistants().equals(other.assistants())) found.add("other people or hours");
        if (problem.runs().size() != other.runs().size()) return List.of("another number of runs");
        for (int r = 0; r < problem.runs().size(); r++) {
            Run own = problem.runs().get(r);
            Run its = other.runs().get(r);
            if (!own.useMinutes().equals(its.useMinutes())
                    || own.mixMinutes() != its.mixMinutes()
                    || own.workingLifeMinutes() != its.workingLifeMinutes()) found.add("times of run " + r);
            else if (!sameBowls(own, its)) found.add("bowls of run " + r);
        }
        return found;
    }

    private static boolean sameBowls(Run a, Run b) {
        for (int from = 0; from < a.minutes(); from++)
            for (int to = from + 1; to <= a.minutes(); to++)
                if (a.bowls().cost(from, to) != b.bowls().cost(from, to)) return false;
        return true;
    }
}
