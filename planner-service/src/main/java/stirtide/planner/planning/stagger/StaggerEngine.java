package stirtide.planner.planning.stagger;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.random.RandomGenerator;

/**
 * Plans a day of the stagger problem and proves how good the plan is. Work comes in rounds: the same problem, random numbers
 * and count of rounds give the same plan; a caller that watches a clock only decides after which round to stop.
 */
public final class StaggerEngine {
    /** Decides between rounds whether to go on. */
    @FunctionalInterface
    public interface Gate {
        /**
         * Called after each round.
         *
         * @param roundsDone rounds done so far
         * @return false to stop and take the best plan so far
         */
        boolean mayGoOn(long roundsDone);
    }

    private static final long FIRST_PROOF_STEPS = 100_000;

    private final MinuteGrid grid;
    private final Incumbent incumbent;
    private final RuinAndRecreate improver;
    private final StaggerSearch search;
    private final OptimalityProofs proofs;
    private long rounds;

    /**
     * Makes a first complete plan.
     *
     * @param problem the day
     * @param random numbers for the search
     */
    public StaggerEngine(StaggerProblem problem, RandomGenerator random) {
        this.grid = new MinuteGrid(problem);
        this.incumbent = new Incumbent(grid);
        this.improver = new RuinAndRecreate(grid, LevelWeights.strict(), incumbent, random);
        List<Comparator<RunGrid>> orders = List.of(
                Comparator.comparingInt(run -> run.start),
                Comparator.comparingInt(run -> run.finish),
                Comparator.comparingInt(run -> -run.minutes));
        for (Comparator<RunGrid> order : orders) {
            improver.build(order);
        }
        if (incumbent.score() == null && !improver.buildFromStylists()) {
            throw new IllegalArgumentException("some run cannot be fed at all: one minute of it overfills a bowl");
        }
        improver.load(Objects.requireNonNull(incumbent.paths()));
        this.search = new StaggerSearch(grid, incumbent, improver, random);
        this.proofs = new OptimalityProofs(grid, incumbent, Objects.requireNonNull(incumbent.score()));
    }

    /** The best plan so far. */
    public StaggerPlan plan() {
        StaggerScore score = Objects.requireNonNull(incumbent.score());
        return new StaggerPlan(
                score,
                incumbent.mixes(),
                proofs.levels().bound(),
                proofs.provenLevels(),
                proofs.levels().certificates(),
                rounds);
    }

    /** Works until everything is proven or the gate closes. */
    public StaggerPlan improve(Gate gate) {
        StaggerScore known = Objects.requireNonNull(incumbent.score());
        while (proofs.provenLevels() < 3 && gate.mayGoOn(rounds)) {
            rounds++;
            search.guide(proofs.levels().guide());
            search.round();
            known = follow(known);
            while (proofs.working() && proofs.steps() < allowance()) {
                proofs.round();
                known = follow(known);
            }
        }
        return plan();
    }

    /** Proofs get as many steps as the search; fewer while no sweep runs and clients still wait in the best plan or a tree grows. */
    private long allowance() {
        boolean late = Objects.requireNonNull(incumbent.score()).waitMinutes() > 0;
        boolean tree = proofs.provenLevels() >= 2 && proofs.inTree();
        return FIRST_PROOF_STEPS + search.steps() / (proofs.sweeping() ? 1 : late ? 4 : tree ? 2 : 1);
    }

    private StaggerScore follow(StaggerScore known) {
        StaggerScore now = Objects.requireNonNull(incumbent.score());
        if (now.equals(known)) {
            return known;
        }
        proofs.begin(now);
        return now;
    }
}
