package stirtide.planner.planning.search;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stirtide.events.day.DayEvent.PlanDrawn;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedService;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.planning.bounds.TwoStepPlanner;

/**
 * A command, no test: invented days of 40 services at four loads, on which one thing after the other comes between. After each
 * the day is planned in two steps as by the service, both plans are checked, and after every fifth their waits are set against
 * those of a plan that is searched with the same rounds without regard to what is on show.
 */
@Command(
        name = "planner-service/trials/run replans",
        synopsisHeading = "usage: ",
        mixinStandardHelpOptions = true,
        exitCodeOnInvalidInput = 64,
        description =
                "Plans in two steps after invented events, checks each plan and compares it with a full search. Ends with 1 when a plan is invalid.")
public final class Replans implements Callable<Integer> {
    private static final int SERVICES = 40;
    private static final int EVENTS = 50;
    private static final int MINUTES_BETWEEN = 10;
    private static final int ROUNDS = 100;
    private static final int WARM_UP_EVENTS = 12;
    private static final int FULL_EVERY = 5;
    private static final List<Integer> LOADS = List.of(0, 40, 70, 90);

    private final Map<EventfulDay.Happening, Integer> kinds = new EnumMap<>(EventfulDay.Happening.class);
    private final Compared firstToSecond = new Compared();
    private final Compared secondToFull = new Compared();
    private final List<Long> firstNanos = new ArrayList<>();
    private final List<Long> secondNanos = new ArrayList<>();
    private int invalid;
    private int without;
    private int alone;
    private int kept;
    private long shownWaits;
    private long shownMixes;
    private long firstMoves;
    private long secondMoves;
    private long fullMoves;
    private long fullMixes;

    /** Waits of plans against those of others. */
    private static final class Compared {
        private long waits;
        private long otherWaits;
        private int equal;
        private int better;
        private int worse;

        void count(Plan plan, Plan other) {
            int wait = plan.totals().waitMinutes();
            int otherWait = other.totals().waitMinutes();
            waits += wait;
            otherWaits += otherWait;
            if (wait == otherWait) equal++;
            else if (wait < otherWait) better++;
            else worse++;
        }
    }

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "DAYS",
            defaultValue = "26",
            description = "days of 50 events for each load (${DEFAULT-VALUE})")
    private int days;

    @Parameters(
            index = "1..*",
            paramLabel = "LOAD",
            description = "loads in percent: 40, 70, 90, or 0 for the natural one; all if none is given")
    private List<Integer> loads = List.of();

    /** Prints the figures. */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Replans()).execute(arguments));
    }

    @Override
    public Integer call() {
        if (days < 1 || !LOADS.containsAll(loads))
            throw new IllegalArgumentException("accepted: 1 or more days, and the loads " + LOADS);
        for (int load : LOADS) new Replans().days(1, load, 1000, WARM_UP_EVENTS);
        int faults = 0;
        for (int load : loads.isEmpty() ? LOADS : loads) {
            Replans replans = new Replans();
            replans.days(days, load, 0, EVENTS);
            replans.print(load == 0 ? "natural" : load + " %");
            faults += replans.invalid + replans.without;
        }
        return faults > 0 ? 1 : 0;
    }

    private void days(int days, int load, int firstSeed, int events) {
        for (int seed = firstSeed; seed < firstSeed + days; seed++) {
            EventfulDay day = new EventfulDay(seed, RandomQuestion.loaded(seed, SERVICES, load));
            Plan plan = Planner.draw(day.question(), ROUNDS);
            for (int event = 0; event < events; event++) {
                kinds.merge(day.next(plan, MINUTES_BETWEEN), 1, Integer::sum);
                plan = replan(day.question());
            }
        }
    }

    private Plan replan(PlanQuestion question) {
        long start = nanos();
        Plan first = TwoStepPlanner.first(question, ROUNDS);
        long between = nanos();
        firstNanos.add(between - start);
        Plan second = first.roundsToCome().isPresent() ? second(question, first, between) : first;
        if (first.roundsToCome().isEmpty()) alone++;
        for (Plan plan : List.of(first, second)) {
            if (!PlanChecker.check(question, plan).isEmpty()) invalid++;
            if (plan.services().size() != question.services().size()) without++;
        }
        firstToSecond.count(first, second);
        ShownPlan shown = new ShownPlan(question);
        shownWaits += question.onShow().stream()
                .flatMap(plan -> plan.services().stream())
                .filter(each -> question.services().stream().anyMatch(task -> task.service() == each.service()))
                .mapToInt(PlannedService::waitMinutes)
                .sum();
        firstMoves += moves(shown, first);
        secondMoves += moves(shown, second);
        long mixes = first.bowls().stream()
                .filter(bowl -> shown.bowl(bowl.bowl()).isPresent())
                .count();
        shownMixes += mixes;
        if (firstNanos.size() % FULL_EVERY == 0) full(question, shown, second, mixes);
        return second;
    }

    private void full(PlanQuestion question, ShownPlan shown, Plan second, long mixes) {
        Plan full = Planner.draw(question.withOnShow(Optional.empty()), ROUNDS);
        secondToFull.count(second, full);
        fullMoves += moves(shown, full);
        fullMixes += mixes;
    }

    private Plan second(PlanQuestion question, Plan first, long start) {
        Optional<Plan> drawn = TwoStepPlanner.second(question, first, () -> false) instanceof PlanDrawn better
                ? Optional.of(better.plan())
                : Optional.empty();
        secondNanos.add(nanos() - start);
        if (drawn.isEmpty()) kept++;
        return drawn.orElse(first);
    }

    private static long moves(ShownPlan shown, Plan plan) {
        return plan.bowls().stream()
                .filter(bowl -> shown.bowl(bowl.bowl())
                        .filter(before -> !before.mixStart().equals(bowl.mixStart())
                                || !before.personId().equals(bowl.personId()))
                        .isPresent())
                .count();
    }

    private static long nanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private void print(String load) {
        System.out.printf(
                "%-8s %d events %s: %d invalid, %d without a plan%n", load, firstNanos.size(), kinds, invalid, without);
        System.out.printf(
                "  first step  %s; waits %d min, shown before %d%n", row(firstNanos), firstToSecond.waits, shownWaits);
        System.out.printf(
                "  second step %s; waits %d min; not wanted %d, first kept %d, first equal %d, worse %d in waits%n",
                row(secondNanos), firstToSecond.otherWaits, alone, kept, firstToSecond.equal, firstToSecond.worse);
        System.out.printf(
                "  full search with %d rounds and nothing on show, every %dth event: waits %d min; the second step %d, equal %d,"
                        + " better %d, worse %d%n",
                ROUNDS,
                FULL_EVERY,
                secondToFull.otherWaits,
                secondToFull.waits,
                secondToFull.equal,
                secondToFull.better,
                secondToFull.worse);
        System.out.printf(
                "  mixes moved of %d shown: first %d, second %d; of %d: full %d%n",
                shownMixes, firstMoves, secondMoves, fullMixes, fullMoves);
    }

    private static String row(List<Long> nanos) {
        List<Long> sorted = new ArrayList<>(nanos);
        Collections.sort(sorted);
        return sorted.isEmpty()
                ? "never"
                : String.format(
                        "p50 %.1f ms, p99 %.1f ms, max %.1f ms of processor time",
                        sorted.get(sorted.size() / 2) / 1e6,
                        sorted.get(sorted.size() * 99 / 100) / 1e6,
                        sorted.get(sorted.size() - 1) / 1e6);
    }
}
