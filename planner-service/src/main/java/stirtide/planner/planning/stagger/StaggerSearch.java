package stirtide.planner.planning.stagger;

import java.util.Objects;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * The order of the work on plans: negotiations on changing terms find complete plans where the bar is crowded, and each of
 * them, like the best plan itself, is then improved by ruin and recreate with falling heat.
 */
final class StaggerSearch {
    private static final int FIRST_NEGOTIATION_ROUNDS = 8;
    private static final int NEGOTIATION_ROUNDS = 240;
    private static final int NEGOTIATION_MOVES = 48;
    private static final int IMPROVER_ROUNDS = 40;
    private static final int IMPROVER_MOVES = 48;

    private static final Negotiation.Terms[] ON_TIME = {
        Negotiation.Terms.of(60, 40, 0, 4, 1, 0),
        Negotiation.Terms.of(60, 40, 0, 3, 1, 8),
        Negotiation.Terms.of(60, 20, 0, 2, 1, 4),
    };
    private static final Negotiation.Terms[] LATE = {
        Negotiation.Terms.of(6, 20, 30, 3, 1, 0),
        Negotiation.Terms.of(60, 40, 0, 4, 1, 0),
        Negotiation.Terms.of(20, 20, 30, 10, 5, 0),
        Negotiation.Terms.of(60, 30, 60, 4, 2, 4),
    };

    private static final long[] HEATS = {0, 3, 1, 8};
    private static final int STRICT_ROUNDS = 12;
    private static final long[] SOFT_HEATS = {16, 60, 30};
    private static final LevelWeights[] SOFT = {soft(20, 20), soft(60, 10), soft(60, 20)};

    private final MinuteGrid grid;
    private final Incumbent incumbent;
    private final RuinAndRecreate improver;
    private final RandomGenerator random;
    private @Nullable Negotiation negotiation;
    private long stepsBefore;
    private int attempts;
    private int roundsLeft;
    private int @Nullable [] guide;

    StaggerSearch(MinuteGrid grid, Incumbent incumbent, RuinAndRecreate improver, RandomGenerator random) {
        this.grid = grid;
        this.incumbent = incumbent;
        this.improver = improver;
        this.random = random;
        this.roundsLeft = late() ? 0 : IMPROVER_ROUNDS;
    }

    /** Weights under which a wait may be traded for a while, to leave a corner. */
    private static LevelWeights soft(long delay, long mix) {
        return new LevelWeights(1L << 40, delay * LevelWeights.AGE, mix * LevelWeights.AGE, LevelWeights.AGE);
    }

    private boolean late() {
        StaggerScore score = Objects.requireNonNull(incumbent.score());
        return score.lastResorts() + score.waitMinutes() > 0;
    }

    /** Steps of path search done so far. */
    long steps() {
        return stepsBefore + improver.steps() + (negotiation == null ? 0 : negotiation.steps());
    }

    /** Minute prices in parts of {@link LevelWeights#AGE}. */
    void guide(int @Nullable [] prices) {
        guide = prices;
        improver.guide(prices);
    }

    void round() {
        if (negotiation != null) {
            negotiate(negotiation);
        } else {
            improve();
        }
    }

    private void negotiate(Negotiation running) {
        boolean found = running.round(Math.max(NEGOTIATION_MOVES, grid.runs.length / 4));
        roundsLeft--;
        if (found) {
            RunPath[] paths = running.paths();
            incumbent.offer(paths);
            beginImproving(paths);
        } else if (roundsLeft <= 0) {
            beginImproving(Objects.requireNonNull(incumbent.paths()));
        }
    }

    private void beginImproving(RunPath[] from) {
        stepsBefore += negotiation == null ? 0 : negotiation.steps();
        negotiation = null;
        roundsLeft = IMPROVER_ROUNDS;
        improver.load(from);
    }

    private void improve() {
        boolean soft = late() && attempts % 3 > 0 && roundsLeft > STRICT_ROUNDS;
        int kind = attempts / 2 % SOFT.length;
        improver.weights(soft ? SOFT[kind] : LevelWeights.strict());
        long heat = soft ? SOFT_HEATS[kind] : HEATS[attempts % HEATS.length];
        improver.heat(heat * LevelWeights.AGE * roundsLeft / IMPROVER_ROUNDS);
        improver.round(Math.max(IMPROVER_MOVES, grid.runs.length / 4));
        if (--roundsLeft <= 0) {
            incumbent.offer(Retiming.latest(grid, improver.paths()));
            beginNegotiation();
        }
    }

    private void beginNegotiation() {
        Negotiation.Terms[] table = late() ? LATE : ON_TIME;
        Negotiation made = new Negotiation(grid, table[attempts % table.length], guide, random);
        attempts++;
        if (made.begin()) {
            negotiation = made;
            roundsLeft = Math.min(NEGOTIATION_ROUNDS, FIRST_NEGOTIATION_ROUNDS << Math.min(attempts, 5));
        } else {
            beginImproving(Objects.requireNonNull(incumbent.paths()));
        }
    }
}
