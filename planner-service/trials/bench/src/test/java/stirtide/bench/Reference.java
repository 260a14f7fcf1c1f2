package stirtide.bench;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.List;
import stirtide.planner.planning.stagger.Assistant;
import stirtide.planner.planning.stagger.DutyWindow;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/**
 * The plain model for a general-purpose solver of the CP-SAT class: bowls of each run as optional intervals on the assistants,
 * changes of bowls as variables, grams by table. The levels are solved one after the other, each with the levels before fixed.
 * Plans in which nobody waits are looked for first, in half of the time: such a plan needs no proof of its waits.
 */
final class Reference {
    /** Bowls that a run may have beyond the fewest that feed it alone. */
    private static final int SPARE_BOWLS = 2;

    private static final int SECONDS_OF_A_SMALL_DAY = 60;

    /** The solver tells bounds of whole figures as floating-point numbers. */
    private static final double ROUNDING = 1e-6;

    /**
     * What the solver found.
     *
     * @param figures wait, bowls, age; -1 where it found nothing
     * @param provenLevels how many levels, from the first, it proved best (with at most two bowls more than a run needs alone)
     * @param bounds of each level, for plans as good on the levels before; -1 where it did not get to the level
     * @param millis time of solving, without loading the library or making the model
     */
    record Outcome(long[] figures, int provenLevels, long[] bounds, long millis) {}

    private final StaggerProblem problem;
    private final int spareBowls;
    private final CpModel model = new CpModel();
    private final LinearExpr[] levels = new LinearExpr[3];
    private final List<IntVar> delays = new ArrayList<>();
    private final List<BoolVar> used = new ArrayList<>();
    private final List<IntVar> ages = new ArrayList<>();
    private final List<IntVar> all = new ArrayList<>();
    private final List<List<IntervalVar>> hands = new ArrayList<>();
    private final List<IntervalVar> mixes = new ArrayList<>();

    private Reference(StaggerProblem problem, int spareBowls) {
        this.problem = problem;
        this.spareBowls = spareBowls;
        problem.assistants().forEach(assistant -> hands.add(new ArrayList<>()));
        problem.runs().forEach(this::addRun);
        hands.forEach(model::addNoOverlap);
        if (problem.mixesAtOnce() < hands.size()) {
            limitScales();
        }
        levels[0] = LinearExpr.sum(delays.toArray(new IntVar[0]));
        levels[1] = LinearExpr.sum(used.toArray(new BoolVar[0]));
        levels[2] = LinearExpr.sum(ages.toArray(new IntVar[0]));
    }

    /** Loads the library, so that the first day does not pay for it. */
    static void load() {
        Loader.loadNativeLibraries();
    }

    /** Solves a day with the given number of workers in at most the given time for all levels together. */
    static Outcome solve(StaggerProblem problem, int workers, double seconds, int seed) {
        StaggerProblem onTime =
                new StaggerProblem(problem.handOverMinutes(), 0, problem.runs(), problem.assistants(), problem.mixesAtOnce());
        Outcome first = new Reference(onTime, SPARE_BOWLS).solve(workers, seconds / 2, seed, 1);
        if (first.figures[0] >= 0) {
            return first;
        }
        Outcome second = new Reference(problem, SPARE_BOWLS).solve(workers, seconds - first.millis / 1000.0, seed, 0);
        return new Outcome(second.figures, second.provenLevels, second.bounds, first.millis + second.millis);
    }

    /** Solves a small day to the end, with as many bowls as a run has minutes. */
    static Outcome optimum(StaggerProblem problem) {
        return new Reference(
                        problem,
                        problem.runs().stream().mapToInt(StaggerRun::minutes).max().orElse(0))
                .solve(1, SECONDS_OF_A_SMALL_DAY, 1, 0);
    }

    private Outcome solve(int workers, double seconds, int seed, int firstLevel) {
        long begin = System.nanoTime();
        long[] figures = {-1, -1, -1};
        long[] bounds = {firstLevel > 0 ? 0 : -1, -1, -1};
        int proven = 0;
        for (int level = firstLevel; level < 3; level++) {
            double left = seconds - (System.nanoTime() - begin) / 1e9;
            if (left <= 0) {
                break;
            }
            CpSolver solver = new CpSolver();
            solver.getParameters()
                    .setNumWorkers(workers)
                    .setMaxTimeInSeconds(left)
                    .setRandomSeed(seed);
            model.minimize(levels[level]);
            CpSolverStatus status = solver.solve(model);
            bounds[level] = Math.max(0, (long) Math.ceil(solver.bestObjectiveBound() - ROUNDING));
            if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
                break;
            }
            for (int i = 0; i < 3; i++) {
                figures[i] = solver.value(levels[i]);
            }
            proven = Math.max(proven, firstLevel);
            if (status != CpSolverStatus.OPTIMAL) {
                break;
            }
            proven = level + 1;
            model.addLessOrEqual(levels[level], figures[level]);
            model.clearHints();
            all.forEach(variable -> model.addHint(variable, solver.value(variable)));
        }
        return new Outcome(figures, proven, bounds, (System.nanoTime() - begin) / 1_000_000);
    }

    private void addRun(StaggerRun run) {
        int most = Math.min(run.minutes(), InventedDays.fewestBowls(run, problem.handOverMinutes()) + spareBowls);
        long[] reach = reach(run);
        boolean fillCounts = fillCounts(run, reach, problem.maxWaitMinutes());
        IntVar[] change = new IntVar[most + 1];
        for (int k = 0; k <= most; k++) {
            int low = k == 0 ? 0 : k == most ? run.minutes() : 1;
            int high = k == 0 ? 0 : run.minutes();
            change[k] = note(model.newIntVar(low, high, "b"));
        }
        BoolVar before = null;
        for (int k = 0; k < most; k++) {
            BoolVar active = model.newBoolVar("a");
            note(active);
            used.add(active);
            if (before != null) {
                model.addImplication(active, before);
            }
            before = active;
            model.addGreaterOrEqual(difference(change[k + 1], change[k]), active);
            model.addEquality(change[k], run.minutes()).onlyEnforceIf(active.not());
            if (fillCounts) {
                IntVar farthest = note(model.newIntVar(0, run.minutes(), "f"));
                model.addElement(change[k], reach, farthest);
                model.addLessOrEqual(change[k + 1], farthest);
            }
            addBowl(run, active, change[k], change[k + 1]);
        }
    }

    private void addBowl(StaggerRun run, BoolVar active, IntVar from, IntVar to) {
        int lead = run.mixMinutes() + problem.handOverMinutes();
        int latest = run.endMinute() - 1 - lead + problem.maxWaitMinutes();
        IntVar start = note(model.newIntVar(run.startMinute() - run.workingLifeMinutes(), latest, "s"));
        IntVar delay = note(model.newIntVar(0, problem.maxWaitMinutes(), "t"));
        IntVar age = note(model.newIntVar(0, run.workingLifeMinutes(), "g"));
        delays.add(delay);
        ages.add(age);
        model.addLessOrEqual(difference(to, start), run.workingLifeMinutes() - run.startMinute())
                .onlyEnforceIf(active);
        model.addLessOrEqual(
                        LinearExpr.newBuilder()
                                .add(start)
                                .addTerm(from, -1)
                                .addTerm(delay, -1)
                                .build(),
                        run.startMinute() - lead)
                .onlyEnforceIf(active);
        model.addGreaterOrEqual(age, LinearExpr.term(active, lead));
        model.addGreaterOrEqual(
                        LinearExpr.newBuilder()
                                .add(age)
                                .add(start)
                                .addTerm(from, -1)
                                .build(),
                        run.startMinute())
                .onlyEnforceIf(active);
        mixes.add(model.newOptionalFixedSizeIntervalVar(start, run.mixMinutes(), active, "m"));
        List<BoolVar> by = new ArrayList<>();
        for (int a = 0; a < hands.size(); a++) {
            BoolVar his = model.newBoolVar("x");
            note(his);
            by.add(his);
            hands.get(a).add(model.newOptionalFixedSizeIntervalVar(start, run.mixMinutes(), his, "i"));
            model.addLinearExpressionInDomain(start, starts(problem.assistants().get(a), run.mixMinutes()))
                    .onlyEnforceIf(his);
        }
        model.addEquality(LinearExpr.sum(by.toArray(new BoolVar[0])), active);
    }

    private void limitScales() {
        CumulativeConstraint scales = model.addCumulative(problem.mixesAtOnce());
        mixes.forEach(mix -> scales.addDemand(mix, 1));
    }

    private static Domain starts(Assistant assistant, int mixMinutes) {
        return Domain.fromIntervals(assistant.onDuty().stream()
                .filter(window -> window.toMinute() - window.fromMinute() >= mixMinutes)
                .map((DutyWindow window) -> new long[] {window.fromMinute(), window.toMinute() - mixMinutes})
                .toArray(long[][]::new));
    }

    /** Farthest minute that one bowl used from each minute can feed, however long it lives. */
    private static long[] reach(StaggerRun run) {
        long[] reach = new long[run.minutes() + 1];
        reach[run.minutes()] = run.minutes();
        for (int from = 0; from < run.minutes(); from++) {
            int to = from;
            while (to < run.minutes() && run.bowls().cost(from, to + 1) >= 0) {
                to++;
            }
            reach[from] = to;
        }
        return reach;
    }

    /** Whether some bowl is empty before its life ends; one that comes late could reach farther than its life. */
    private static boolean fillCounts(StaggerRun run, long[] reach, int maxWait) {
        for (int from = 0; from < run.minutes(); from++) {
            if (reach[from] < Math.min(run.minutes(), from + run.workingLifeMinutes() + maxWait)) {
                return true;
            }
        }
        return false;
    }

    private static LinearExpr difference(IntVar a, IntVar b) {
        return LinearExpr.newBuilder().add(a).addTerm(b, -1).build();
    }

    private IntVar note(IntVar variable) {
        all.add(variable);
        return variable;
    }
}
