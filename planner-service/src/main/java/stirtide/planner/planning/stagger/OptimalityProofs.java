package stirtide.planner.planning.stagger;

import org.jspecify.annotations.Nullable;

/**
 * What is proved about the best plan so far, level by level: the claim "as good on the levels before and one unit better
 * on this one" is refuted by prices, or, where they stand still short of it, by a tree.
 */
final class OptimalityProofs {
    private static final int ROOT_ROUNDS = 600;
    private static final int NODE_ROUNDS = 48;
    /** Prices get so many times the steps that the tables of a sweep take before one is tried early. */
    private static final int TRIES = 2;

    /** Early tries get one step for so many of the prices. */
    private static final int EARLY_SHARE = 4;

    private final MinuteGrid grid;
    private final PriceBound bound;
    private final Incumbent incumbent;
    private final ProvenLevels levels = new ProvenLevels();
    private int level = 1;
    private StaggerScore score;
    private @Nullable PriceAscent ascent;
    private @Nullable ProofTree tree;
    private int rootRounds;
    private long rootSteps;
    private long nextTry;
    private final SweepRounds sweeps;
    private long treeSteps;
    private boolean hopeless;

    OptimalityProofs(MinuteGrid grid, Incumbent incumbent, StaggerScore score) {
        this.grid = grid;
        this.bound = new PriceBound(grid);
        this.incumbent = incumbent;
        this.score = score;
        this.sweeps = new SweepRounds(grid, incumbent);
        begin(score);
    }

    /** Starts over for a better plan; prices found so far are kept as a beginning. */
    void begin(StaggerScore better) {
        if (ascent != null) {
            levels.keep(grid, level, score, ascent);
        }
        boolean sameWait = better.waitMinutes() == score.waitMinutes();
        boolean sameMix = sameWait && better.mixCost() == score.mixCost();
        score = better;
        if (!sameWait) {
            levels.forget(2);
        }
        if (!sameMix) {
            levels.forget(3);
        }
        level = 1;
        ascent = null;
        tree = null;
        sweeps.leave();
        hopeless = false;
        if (better.lastResorts() == 0) {
            beginBounds();
        } else {
            sweeps.beginComplete();
            hopeless = !sweeps.running();
        }
        level = 1;
        skipProven();
    }

    /** Bounds of the levels without any price, so that there is one from the start. */
    private void beginBounds() {
        for (level = 2; level <= 3; level++) {
            if (levels.least[level] == 0 && figure(level) > 0) {
                Claim claim = claim(figure(level) - 1);
                freeLimits();
                PriceAscent first = new PriceAscent(bound, claim, new int[grid.horizon], PriceAscent.weights(claim));
                first.round();
                int[] kept = levels.prices[level];
                levels.keep(grid, level, score, first);
                levels.prices[level] = kept;
            }
        }
    }

    private void freeLimits() {
        for (int r = 0; r < grid.runs.length; r++) {
            bound.limit(r, null);
        }
    }

    private void skipProven() {
        while (level <= 3 && levels.least[level] >= figure(level)) {
            level++;
        }
    }

    private long figure(int at) {
        return ProvenLevels.figure(score, at);
    }

    private Claim claim(long figure) {
        return ProvenLevels.claim(score, level, figure);
    }

    /** What is proved so far. */
    ProvenLevels levels() {
        return levels;
    }

    int provenLevels() {
        return score.lastResorts() > 0 ? 0 : level - 1;
    }

    /** Whether prices alone no longer raise the bound. */
    boolean inTree() {
        return tree != null;
    }

    /** Whether plans are being followed minute by minute. */
    boolean sweeping() {
        return sweeps.running();
    }

    boolean working() {
        return level <= 3 && !hopeless;
    }

    /** One round: a step of the prices or one node of a tree. */
    void round() {
        if (sweeps.running() && (tree == null || sweeps.steps() <= treeSteps)) {
            sweepRound();
        } else if (tree != null) {
            treeRound(tree);
        } else {
            priceRound();
        }
    }

    private void priceRound() {
        if (ascent == null) {
            ascent = beginAscent();
        }
        PriceAscent climbing = ascent;
        long before = bound.steps();
        climbing.round();
        rootSteps += bound.steps() - before;
        if (bound.value < CostModel.NEVER && bound.fits()) {
            incumbent.offer(bound.paths);
        }
        if (!climbing.closed() && refutedEarly(climbing)) {
            return;
        }
        if (climbing.closed() || climbing.stalled() || ++rootRounds >= ROOT_ROUNDS) {
            endAscent(climbing);
        }
    }

    private PriceAscent beginAscent() {
        Claim claim = claim(figure(level) - 1);
        int[] start = levels.prices[level] == null ? new int[grid.horizon] : levels.prices[level];
        LevelWeights first = levels.weights[level] == null ? PriceAscent.weights(claim) : levels.weights[level];
        freeLimits();
        rootRounds = 0;
        rootSteps = 0;
        nextTry = TRIES * sweeps.preparation();
        return new PriceAscent(bound, claim, start, first);
    }

    /** Tries a sweep now and then while prices still climb; such tries get a small share of the steps. */
    private boolean refutedEarly(PriceAscent climbing) {
        if (rootSteps < nextTry || sweeps.earlySteps() > bound.steps() / EARLY_SHARE) {
            return false;
        }
        nextTry = 2 * rootSteps;
        Certificate early = sweeps.tryEarly(climbing, levels.prices[1], rootSteps / 2);
        if (early == null || score.lastResorts() > 0) {
            return false;
        }
        levels.keep(grid, level, score, climbing);
        ascent = null;
        refuted(early);
        return true;
    }

    private void endAscent(PriceAscent climbing) {
        levels.keep(grid, level, score, climbing);
        ascent = null;
        skipProven();
        if (!climbing.closed()) {
            tree = new ProofTree(
                    bound, climbing.claim, climbing.bestPrice, climbing.bestWeights, incumbent, NODE_ROUNDS);
            treeSteps = 0;
            sweeps.begin(climbing, levels.prices[1]);
        }
    }

    private void sweepRound() {
        sweeps.round();
        Certificate closed = sweeps.closed();
        if (closed != null && score.lastResorts() == 0) {
            refuted(closed);
        } else if (!sweeps.running() && tree == null) {
            hopeless = true;
        }
    }

    private void treeRound(ProofTree growing) {
        long before = bound.steps();
        growing.advance();
        treeSteps += bound.steps() - before;
        if (growing.done()) {
            refuted(growing.certificate());
        } else if (growing.stuck()) {
            tree = null;
            sweeps.tellPeopleApart();
            hopeless = !sweeps.running();
        }
    }

    private void refuted(Certificate certificate) {
        levels.least[level] = figure(level);
        levels.certificates[level] = certificate;
        tree = null;
        sweeps.leave();
        skipProven();
    }

    /** Steps of path search done so far. */
    long steps() {
        return bound.steps() + sweeps.allSteps();
    }
}
