package stirtide.planner.stagger;

import java.util.Objects;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * The order of the work on plans: negotiations on changing terms find complete plans where the bar is crowded, and each of
 * them, like the best plan itself, is then improved by ruin and recreate with falling heat.
 */
final class Search {
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
    private static final long SOFT_HEAT = 16;
    private static final Weights SOFT = new Weights(1L << 40, 20 * Improver.AGE, 20 * Improver.AGE, Improver.AGE);

    private final Grid grid;
    private final Incumbent incumbent;
    private final Improver improver;
    private final RandomGenerator random;
    private @Nullable Negotiation negotiation;
    private long stepsBefore;
    private int attempts;
    private int roundsLeft;
    private int @Nullable [] guide;

    Search(Grid grid, Incumbent incumbent, Improver improver, RandomGenerator random) {
        this.grid = grid;
        this.incumbent = incumbent;
        this.improver = improver;
        this.random = random;
        this.roundsLeft = late() ? 0 : IMPROVER_ROUNDS;
    }

    private boolean late() {
        return Objects.requireNonNull(incumbent.score()).waitMinutes() > 0;
    }

    /** Steps of path search done so far. */
    long steps() {
        return stepsBefore + improver.steps() + (negotiation == null ? 0 : negotiation.steps());
    }

    /** Minute prices in parts of {@link Improver#AGE}. */
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
        boolean found = running.round(NEGOTIATION_MOVES);
        roundsLeft--;
        if (found) {
            Path[] paths = running.paths();
            incumbent.offer(paths);
            beginImproving(paths);
        } else if (roundsLeft <= 0) {
            beginImproving(Objects.requireNonNull(incumbent.paths()));
        }
    }

    private void beginImproving(Path[] from) {
        stepsBefore += negotiation == null ? 0 : negotiation.steps();
        negotiation = null;
        roundsLeft = IMPROVER_ROUNDS;
        improver.load(from);
    }

    private void improve() {
        boolean soft = late() && attempts % 2 == 1 && roundsLeft > STRICT_ROUNDS;
        improver.weights(soft ? SOFT : Improver.strict());
        long heat = soft ? SOFT_HEAT : HEATS[attempts % HEATS.length];
        improver.heat(heat * Improver.AGE * roundsLeft / IMPROVER_ROUNDS);
        improver.round(IMPROVER_MOVES);
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
            roundsLeft = NEGOTIATION_ROUNDS;
        } else {
            beginImproving(Objects.requireNonNull(incumbent.paths()));
        }
    }
}
