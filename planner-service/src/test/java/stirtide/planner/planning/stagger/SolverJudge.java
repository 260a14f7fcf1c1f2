package stirtide.planner.planning.stagger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * Independent judge: the plain model in the hands of a general-purpose constraint solver. Each run may have as many bowls as
 * minutes; the bowls of a run are tables of (used from, used to, start of mixing, wait, age), and who mixes what is a variable.
 */
final class SolverJudge {
    private static final int NOBODY = -1;

    private record Bowl(IntVar start, IntVar by, BoolVar used, int mixMinutes) {}

    private final StaggerProblem problem;
    private final Model model = new Model();
    private final List<Bowl> bowls = new ArrayList<>();
    private final List<IntVar> waits = new ArrayList<>();
    private final List<IntVar> ages = new ArrayList<>();
    private final List<IntVar> decisions = new ArrayList<>();

    private SolverJudge(StaggerProblem problem) {
        this.problem = problem;
    }

    /** Best wait, bowls and age, empty if nobody can make the day work without a last resort. */
    static Optional<StaggerScore> best(StaggerProblem problem) {
        return new SolverJudge(problem).solve();
    }

    private Optional<StaggerScore> solve() {
        for (StaggerRun run : problem.runs()) {
            if (!addRun(run)) {
                return Optional.empty();
            }
        }
        for (int i = 0; i < bowls.size(); i++) {
            for (int j = i + 1; j < bowls.size(); j++) {
                apart(bowls.get(i), bowls.get(j));
            }
        }
        limitScales();
        IntVar wait = total(waits, 2);
        IntVar count = total(bowls.stream().map(bowl -> (IntVar) bowl.used).toList(), 1);
        IntVar age = total(ages, 100);
        IntVar cost = model.intVar("cost", 0, 2_000_000);
        model.scalar(new IntVar[] {wait, count, age, cost}, new int[] {40_000, 1000, 1, -1}, "=", 0)
                .post();
        model.getSolver().setSearch(Search.minDomLBSearch(decisions.toArray(IntVar[]::new)));
        Solution best = model.getSolver().findOptimalSolution(cost, false);
        return Optional.ofNullable(best)
                .map(found -> new StaggerScore(0, found.getIntVal(wait), found.getIntVal(count), found.getIntVal(age)));
    }

    private IntVar total(List<IntVar> parts, int mostOfOne) {
        IntVar sum = model.intVar("sum", 0, Math.max(1, parts.size() * mostOfOne));
        model.sum(parts.toArray(IntVar[]::new), "=", sum).post();
        return sum;
    }

    private boolean addRun(StaggerRun run) {
        Tuples rows = rows(run);
        if (rows.nbTuples() <= 1) {
            return false;
        }
        IntVar from = model.intVar(run.startMinute());
        for (int k = 0; k < run.minutes(); k++) {
            IntVar to = model.intVar("to", run.startMinute(), run.endMinute());
            IntVar start = model.intVar("start", -100, 200);
            IntVar wait = model.intVar("wait", 0, problem.maxWaitMinutes());
            IntVar age = model.intVar("age", 0, 100);
            BoolVar used = model.boolVar("used");
            IntVar by = model.intVar("by", NOBODY, problem.assistants().size() - 1);
            model.table(new IntVar[] {from, to, start, by, wait, age, used}, rows)
                    .post();
            bowls.add(new Bowl(start, by, used, run.mixMinutes()));
            waits.add(wait);
            ages.add(age);
            decisions.addAll(List.of(to, start, by));
            from = to;
        }
        model.arithm(from, "=", run.endMinute()).post();
        return true;
    }

    /** Every bowl that keeps the rules of its run and its assistant, and for each end of the run the bowl that is none. */
    private Tuples rows(StaggerRun run) {
        Tuples rows = new Tuples(true);
        int lead = run.mixMinutes() + problem.handOverMinutes();
        for (int from = run.startMinute(); from < run.endMinute(); from++) {
            for (int to = from + 1; to <= run.endMinute(); to++) {
                if (run.bowls().cost(from - run.startMinute(), to - run.startMinute()) < 0) {
                    continue;
                }
                for (int s = to - run.workingLifeMinutes(); s + lead - from <= problem.maxWaitMinutes(); s++) {
                    for (int a = 0; a < problem.assistants().size(); a++) {
                        if (problem.assistants().get(a).onDuty(s, s + run.mixMinutes())) {
                            int age = Math.max(lead, from - s);
                            rows.add(from, to, s, a, Math.max(0, s + lead - from), age, 1);
                        }
                    }
                }
            }
        }
        rows.add(run.endMinute(), run.endMinute(), -100, NOBODY, 0, 0, 0);
        return rows;
    }

    /** Two bowls by the same person do not overlap; those that are not used do not matter. */
    private void apart(Bowl a, Bowl b) {
        model.or(
                        model.arithm(a.used, "=", 0).reify(),
                        model.arithm(b.used, "=", 0).reify(),
                        model.arithm(a.by, "!=", b.by).reify(),
                        model.arithm(b.start, "-", a.start, ">=", a.mixMinutes).reify(),
                        model.arithm(a.start, "-", b.start, ">=", b.mixMinutes).reify())
                .post();
    }

    /** No more mixes at one time than scales: at the start of each mix. */
    private void limitScales() {
        if (problem.mixesAtOnce() >= problem.assistants().size()) {
            return;
        }
        for (Bowl at : bowls) {
            List<BoolVar> atWork = new ArrayList<>();
            for (Bowl other : bowls) {
                if (other != at) {
                    BoolVar meets = model.boolVar("meets");
                    model.and(
                                    model.arithm(at.used, "=", 1).reify(),
                                    model.arithm(other.used, "=", 1).reify(),
                                    model.arithm(other.start, "<=", at.start).reify(),
                                    model.arithm(at.start, "-", other.start, "<", other.mixMinutes)
                                            .reify())
                            .reifyWith(meets);
                    atWork.add(meets);
                }
            }
            model.sum(atWork.toArray(BoolVar[]::new), "<=", problem.mixesAtOnce() - 1)
                    .post();
        }
    }
}
