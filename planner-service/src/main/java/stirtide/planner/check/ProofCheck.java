package stirtide.planner.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import stirtide.events.plan.BowlReason;
import stirtide.events.plan.Plan;
import stirtide.events.setup.Directions;
import stirtide.planner.check.stagger.CertificateCheck;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.stagger.Assistant;
import stirtide.planner.planning.stagger.BowlRule;
import stirtide.planner.planning.stagger.Certificate;
import stirtide.planner.planning.stagger.Claim;
import stirtide.planner.planning.stagger.DutyWindow;
import stirtide.planner.planning.stagger.MinutePrices;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/**
 * Confirms what is claimed about all plans of a question in which assistants mix. The problem that the certificates speak of is
 * derived here, from the question alone; only what the plan says cannot be weighed is left out of it.
 */
public final class ProofCheck {
    private static final int BOWL_WEIGHT = 1_000_000;

    private final PlanQuestion question;
    private final StaggerProblem problem;
    private final List<ProofDay.Part> parts;
    private final int capacityMilligrams;
    private final List<List<Integer>> services;
    private final int unavoidableWait;

    /**
     * Derives the problem.
     *
     * @param extraWaitMinutes most minutes that one service may be late, besides those for bowls that are on their way
     */
    public ProofCheck(PlanQuestion question, Plan plan, int extraWaitMinutes) {
        this.question = question;
        ProofDay day = new ProofDay(question, plan);
        this.parts = day.parts();
        this.capacityMilligrams = capacity(question);
        TreeMap<Integer, List<Integer>> byService = new TreeMap<>();
        List<StaggerRun> runs = new ArrayList<>();
        for (ProofDay.Part part : day.parts()) {
            byService
                    .computeIfAbsent(part.service(), service -> new ArrayList<>())
                    .add(runs.size());
            runs.add(run(question, part, runs.size()));
        }
        this.services = List.copyOf(byService.values());
        this.unavoidableWait = day.unavoidableWait();
        // Two bowls of one mix take no more of a person and a scale than two mixes by two people on two scales.
        int mixes = question.oneMixTwoBowls() ? 2 : 1;
        List<Assistant> mixers = new ArrayList<>();
        for (int copy = 0; copy < mixes; copy++)
            question.assistants().forEach(each -> mixers.add(mixers(question, each)));
        int scales = mixes * Math.max(1, question.scales().size());
        this.problem = new StaggerProblem(question.handOverMinutes(), extraWaitMinutes, runs, mixers, scales);
    }

    private static int capacity(PlanQuestion question) {
        return question.bowlSizes().stream()
                .filter(size -> size.count() > 0)
                .mapToInt(size -> size.usableMilligrams() - size.residueMilligrams())
                .max()
                .orElse(0);
    }

    private StaggerRun run(PlanQuestion question, ProofDay.Part part, int place) {
        Directions directions =
                FirstFeed.directions(question, part.run().lightenerId()).orElseThrow();
        BowlServing serving = new BowlServing(question, part, capacityMilligrams);
        BowlRule rule = (from, to) -> serving.serves(from, to) ? 1 : BowlRule.NO_BOWL;
        return new StaggerRun(place, part.useMinutes(), directions.mixMinutes(), directions.workingLifeMinutes(), rule);
    }

    private static Assistant mixers(PlanQuestion question, PlanQuestion.Assistant assistant) {
        int free = Math.max(question.nowMinute(), assistant.busyUntilMinute());
        return new Assistant(assistant.onDuty().stream()
                .filter(duty -> duty.to() > free)
                .map(duty -> new DutyWindow(Math.max(duty.from(), free), duty.to()))
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
        return certificate.claim().equals(fewerThan(bowls)) && CertificateCheck.refutes(problem, certificate);
    }

    /** What a proof that so many bowls are needed refutes. */
    private static Claim fewerThan(int bowls) {
        return new Claim(Claim.ANY, bowls - 1L, Claim.ANY);
    }

    /** Bowls that all services need one by one if an assistant is always free, however long clients wait. */
    public int fewestAlone() {
        return parts.stream().mapToInt(part -> serving(part).fewest(true, true)).sum();
    }

    /**
     * Whether the stretch of a reason forces as many bowls as it says: for its cause alone, with everybody free at all other
     * times, and with waits up to those allowed.
     */
    public boolean forces(BowlReason reason, int fromMinute, int toMinute) {
        List<Integer> places = meant(reason);
        boolean mixers = reason.cause().equals("NOBODY_FREE") || reason.cause().equals("TOO_MUCH_AT_ONCE");
        return mixers
                ? mixersForce(places, fromMinute, toMinute, reason.leastBowls())
                : places.stream()
                                .map(parts::get)
                                .mapToInt(part -> serving(part)
                                        .fewest(
                                                !reason.cause().equals("BOWL_SIZE"),
                                                !reason.cause().equals("WORKING_LIFE")))
                                .sum()
                        >= reason.leastBowls();
    }

    /**
     * Whether a certificate shows that the services of a reason need as many bowls as it says, if no assistant mixes for any other
     * service, and with waits up to those allowed.
     */
    public boolean forces(BowlReason reason, Certificate certificate) {
        return certificate.claim().equals(fewerThan(reason.leastBowls()))
                && CertificateCheck.refutes(only(meant(reason), problem.assistants()), certificate);
    }

    /** Places of the runs that a reason speaks of. */
    private List<Integer> meant(BowlReason reason) {
        List<Integer> places = new ArrayList<>();
        for (int place = 0; place < parts.size(); place++) {
            ProofDay.Part part = parts.get(place);
            boolean meant = reason.services().contains(part.service())
                    && (reason.zones().isEmpty() || reason.zones().equals(part.zones()));
            if (meant) places.add(place);
        }
        return places;
    }

    private StaggerProblem only(List<Integer> places, List<Assistant> mixers) {
        List<StaggerRun> runs = places.stream().map(problem.runs()::get).toList();
        return new StaggerProblem(
                problem.handOverMinutes(), problem.maxWaitMinutes(), runs, mixers, problem.mixesAtOnce());
    }

    /** A price of 1 on each minute of mixing in the stretch, and one on bowls that no saving of minutes makes up for. */
    private boolean mixersForce(List<Integer> places, int from, int to, int least) {
        List<Assistant> mixers = problem.assistants().stream()
                .map(each -> new Assistant(freeOutside(each, from, to)))
                .toList();
        int[] prices = new int[to - from];
        Arrays.fill(prices, 1);
        Certificate.Priced step = new Certificate.Priced(0, BOWL_WEIGHT, 0, MinutePrices.of(from, prices), null);
        return CertificateCheck.refutes(only(places, mixers), new Certificate(fewerThan(least), step));
    }

    private static List<DutyWindow> freeOutside(Assistant person, int from, int to) {
        List<DutyWindow> windows = new ArrayList<>();
        int begun = Integer.MIN_VALUE / 2;
        int until = from;
        for (DutyWindow duty : person.onDuty().stream()
                .sorted(Comparator.comparing(DutyWindow::fromMinute))
                .toList()) {
            if (duty.toMinute() <= from || to <= duty.fromMinute()) continue;
            if (duty.fromMinute() > until) {
                windows.add(new DutyWindow(begun, until));
                begun = duty.fromMinute();
            }
            until = Math.max(until, duty.toMinute());
        }
        if (until < to) {
            windows.add(new DutyWindow(begun, until));
            begun = to;
        }
        windows.add(new DutyWindow(begun, Integer.MAX_VALUE / 2));
        return windows;
    }

    private BowlServing serving(ProofDay.Part part) {
        return new BowlServing(question, part, capacityMilligrams);
    }

    /** The problem derived here. */
    public StaggerProblem problem() {
        return problem;
    }

    /** Places of the runs of each service in {@link #problem}. */
    public List<List<Integer>> services() {
        return services;
    }
}
