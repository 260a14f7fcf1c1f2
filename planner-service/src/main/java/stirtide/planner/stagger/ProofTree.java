package stirtide.planner.stagger;

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
    private final PriceBound bound;
    private final Claim claim;
    private final Incumbent incumbent;
    private final Filter filter;
    private final PathTally tally;
    private final Deque<Node> open = new ArrayDeque<>();
    private final int rounds;
    private Certificate.@Nullable Step proof;
    private boolean stuck;
    long nodes;

    private static final class Node {
        final @Nullable Limits[] limits;
        final int[] price;
        final Weights weights;
        final List<Certificate.Priced> chain = new ArrayList<>();
        PathTally.@Nullable Choice choice;
        Certificate.@Nullable Step first;

        @Nullable
        Node second;

        Node(@Nullable Limits[] limits, int[] price, Weights weights) {
            this.limits = limits;
            this.price = price;
            this.weights = weights;
        }
    }

    ProofTree(PriceBound bound, Claim claim, int[] price, Weights weights, Incumbent incumbent, int rounds) {
        this.bound = bound;
        this.claim = claim;
        this.incumbent = incumbent;
        this.filter = new Filter(bound);
        this.tally = new PathTally(bound.grid);
        this.rounds = rounds;
        open.push(new Node(new Limits[bound.grid.runs.length], price, weights));
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
        nodes++;
        for (int r = 0; r < node.limits.length; r++) {
            bound.limit(r, node.limits[r]);
        }
        PriceAscent ascent = new PriceAscent(bound, claim, node.price, node.weights);
        int left = rounds;
        for (int pass = 0; pass < 2; pass++) {
            tally.clear();
            climb(ascent, left);
            if (ascent.closed()) {
                node.chain.add(priced(bound.grid, ascent));
                deliver(wrap(node, null));
                return;
            }
            ascent.settle();
            int struck = filter.strike(claim);
            if (struck > 0) {
                node.chain.add(priced(bound.grid, ascent));
            }
            if (struck < 8) {
                break;
            }
            ascent.freshen(500);
        }
        branch(node, ascent);
    }

    private void climb(PriceAscent ascent, int most) {
        for (int i = 0; i < most && !ascent.closed(); i++) {
            ascent.round();
            if (bound.value < PathSearch.NEVER) {
                if (bound.fits()) {
                    incumbent.offer(bound.paths);
                }
                if (i >= most / 3) {
                    tally.note(bound.paths);
                }
            }
        }
    }

    private void branch(Node node, PriceAscent ascent) {
        PathTally.Choice choice = tally.split();
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

    private Node child(PathTally.Choice choice, PriceAscent ascent, boolean atMost) {
        @Nullable Limits[] limits = bound.limits.clone();
        Limits old = limits[choice.run()];
        Limits made = old == null ? new Limits(bound.grid.runs[choice.run()]) : old.copy();
        int t = choice.minute();
        if (atMost) {
            made.high[t] = Math.min(made.high[t], choice.start());
        } else {
            made.low[t] = Math.max(made.low[t], choice.start() + 1);
        }
        limits[choice.run()] = made;
        return new Node(limits, ascent.bestPrice, ascent.bestWeights);
    }

    /** Where all paths agree but too many mix at once: a bowl that is mixed in a crowded minute and could move. */
    private PathTally.@Nullable Choice crowded() {
        Grid grid = bound.grid;
        for (RunGrid run : grid.runs) {
            Path path = bound.paths[run.index];
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
        Limits limits = bound.limits[run];
        if (limits == null || limits.low[minute] < start) {
            return new PathTally.Choice(run, minute, start - 1, true);
        }
        return limits.high[minute] > start ? new PathTally.Choice(run, minute, start, true) : null;
    }

    static Certificate.Priced priced(Grid grid, PriceAscent ascent) {
        Weights w = ascent.bestWeights;
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
            Grid grid = bound.grid;
            int minute = grid.runs[choice.run()].start + choice.minute() + grid.origin;
            step = wrap(
                    parent, new Certificate.Split(choice.run(), minute, choice.start() + grid.origin, atMost, later));
        }
    }
}
