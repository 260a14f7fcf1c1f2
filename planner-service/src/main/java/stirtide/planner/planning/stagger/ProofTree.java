package stirtide.planner.planning.stagger;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Exact search that refutes a claim: every node raises prices, strikes out what cannot be part of a plan within the claim,
 * and splits on the start of a bowl where the cheapest paths disagree. Depth first, one node at a call, so that a caller
 * may stop between nodes. A closed tree is a certificate.
 */
final class ProofTree {
    private static final int WATCHED_ROUNDS = 12;
    private static final int SLOW = 10;
    private static final int TRIED_SPLITS = 8;
    private static final long CAP = 64 * PriceBound.SCALE;

    private final PriceBound bound;
    private final Claim claim;
    private final Incumbent incumbent;
    private final ReducedCostFilter filter;
    private final PathTally tally;
    private final Deque<Node> open = new ArrayDeque<>();
    private final int rounds;
    private Certificate.@Nullable Step proof;
    private boolean stuck;

    private static final class Node {
        final @Nullable StartLimits[] limits;
        final int[] price;
        final LevelWeights weights;
        final List<Certificate.Priced> chain = new ArrayList<>();
        PathTally.@Nullable Choice choice;
        Certificate.@Nullable Step first;

        @Nullable
        Node second;

        Node(@Nullable StartLimits[] limits, int[] price, LevelWeights weights) {
            this.limits = limits;
            this.price = price;
            this.weights = weights;
        }
    }

    ProofTree(PriceBound bound, Claim claim, int[] price, LevelWeights weights, Incumbent incumbent, int rounds) {
        this.bound = bound;
        this.claim = claim;
        this.incumbent = incumbent;
        this.filter = new ReducedCostFilter(bound);
        this.tally = new PathTally(bound.grid);
        this.rounds = rounds;
        open.push(new Node(new StartLimits[bound.grid.runs.length], price, weights));
    }

    boolean done() {
        return proof != null;
    }

    boolean stuck() {
        return stuck;
    }

    Certificate certificate() {
        return new Certificate(claim, Objects.requireNonNull(proof));
    }

    /** Works on one node. */
    void advance() {
        Node node = open.element();
        for (int r = 0; r < node.limits.length; r++) {
            bound.limit(r, node.limits[r]);
        }
        PriceAscent ascent = new PriceAscent(bound, claim, node.price, node.weights);
        tally.clear();
        climb(ascent);
        if (ascent.closed()) {
            node.chain.add(priced(bound.grid, ascent));
            deliver(wrap(node, null));
            return;
        }
        ascent.settle();
        if (filter.strike(claim) > 0) {
            node.chain.add(priced(bound.grid, ascent));
        }
        branch(node, ascent);
    }

    /** Raises the prices while that pays: a node that gains too little is better split. */
    private void climb(PriceAscent ascent) {
        long before = Long.MIN_VALUE / 2;
        for (int i = 0; i < rounds && !ascent.closed(); i++) {
            if (i % WATCHED_ROUNDS == WATCHED_ROUNDS - 1) {
                if (ascent.bestMargin - before < -ascent.bestMargin / SLOW) {
                    return;
                }
                before = ascent.bestMargin;
            }
            ascent.round();
            if (bound.value < CostModel.NEVER) {
                if (bound.fits()) {
                    incumbent.offer(bound.paths);
                }
                tally.note(bound.paths);
            }
        }
    }

    private void branch(Node node, PriceAscent ascent) {
        PathTally.Choice choice = strongest(tally.splits());
        if (choice == null) {
            choice = crowded();
        }
        if (choice == null) {
            stuck = true;
            return;
        }
        node.choice = choice;
        Node atMost = child(choice, ascent, true);
        Node later = child(choice, ascent, false);
        node.second = choice.atMostFirst() ? later : atMost;
        open.push(choice.atMostFirst() ? atMost : later);
    }

    /** Of the first few choices the one whose weaker case lifts the bound most at the present prices. */
    private PathTally.@Nullable Choice strongest(List<PathTally.Choice> choices) {
        PathTally.Choice best = null;
        long most = -1;
        for (PathTally.Choice choice : choices.subList(0, Math.min(TRIED_SPLITS, choices.size()))) {
            long atMost = lift(choice, true);
            long later = lift(choice, false);
            long merit = Math.min(atMost, later) * 4 + Math.min(Math.max(atMost, later), CAP);
            if (merit > most) {
                most = merit;
                best = choice;
            }
        }
        return best;
    }

    private long lift(PathTally.Choice choice, boolean atMost) {
        RunGrid run = bound.grid.runs[choice.run()];
        long cost = bound.costWith(run, limited(choice, atMost));
        return cost >= CostModel.NEVER ? CAP : Math.min(CAP, cost - bound.cost[run.index]);
    }

    private StartLimits limited(PathTally.Choice choice, boolean atMost) {
        StartLimits old = bound.limits[choice.run()];
        StartLimits made = old == null ? new StartLimits(bound.grid.runs[choice.run()]) : old.copy();
        int t = choice.minute();
        if (atMost) {
            made.high[t] = Math.min(made.high[t], choice.start());
        } else {
            made.low[t] = Math.max(made.low[t], choice.start() + 1);
        }
        return made;
    }

    private Node child(PathTally.Choice choice, PriceAscent ascent, boolean atMost) {
        @Nullable StartLimits[] limits = bound.limits.clone();
        limits[choice.run()] = limited(choice, atMost);
        return new Node(limits, ascent.bestPrice, ascent.bestWeights);
    }

    /** Where all paths agree but too many mix at once: a bowl that is mixed in a crowded minute and could move. */
    private PathTally.@Nullable Choice crowded() {
        MinuteGrid grid = bound.grid;
        for (RunGrid run : grid.runs) {
            RunPath path = bound.paths[run.index];
            for (int k = 0; k < path.start.length; k++) {
                int s = path.start[k];
                boolean crowded = false;
                for (int t = s; t < s + run.mix; t++) {
                    crowded |= bound.use[t] > grid.capacity[t];
                }
                PathTally.Choice choice = crowded ? around(run.index, path.from[k], s) : null;
                if (choice != null) {
                    return choice;
                }
            }
        }
        return null;
    }

    private PathTally.@Nullable Choice around(int run, int minute, int start) {
        StartLimits limits = bound.limits[run];
        if (limits == null || limits.low[minute] < start) {
            return new PathTally.Choice(run, minute, start - 1, true, 0);
        }
        return limits.high[minute] > start ? new PathTally.Choice(run, minute, start, true, 0) : null;
    }

    static Certificate.Priced priced(MinuteGrid grid, PriceAscent ascent) {
        LevelWeights w = ascent.bestWeights;
        MinutePrices prices = MinutePrices.of(grid.origin, ascent.bestPrice);
        return new Certificate.Priced(w.delay(), w.mix(), w.age(), prices, null);
    }

    private static Certificate.Step wrap(Node node, Certificate.@Nullable Step rest) {
        Certificate.Step step = rest;
        for (int i = node.chain.size() - 1; i >= 0; i--) {
            Certificate.Priced p = node.chain.get(i);
            step = new Certificate.Priced(p.delayWeight(), p.mixWeight(), p.ageWeight(), p.prices(), step);
        }
        return Objects.requireNonNull(step);
    }

    private void deliver(Certificate.Step result) {
        Certificate.Step step = result;
        open.pop();
        while (true) {
            Node parent = open.peek();
            if (parent == null) {
                proof = step;
                return;
            }
            PathTally.Choice choice = Objects.requireNonNull(parent.choice);
            if (parent.first == null) {
                parent.first = step;
                open.push(Objects.requireNonNull(parent.second));
                return;
            }
            open.pop();
            Certificate.Step atMost = choice.atMostFirst() ? parent.first : step;
            Certificate.Step later = choice.atMostFirst() ? step : parent.first;
            MinuteGrid grid = bound.grid;
            int minute = grid.runs[choice.run()].at[choice.minute()] + grid.origin;
            step = wrap(
                    parent, new Certificate.Split(choice.run(), minute, choice.start() + grid.origin, atMost, later));
        }
    }
}
