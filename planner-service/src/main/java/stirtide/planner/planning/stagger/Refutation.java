package stirtide.planner.planning.stagger;

import java.util.Optional;

/**
 * Shows that no plan within the longest wait of a problem does with less on the second level: prices first, then the tree.
 * Rounds, never a clock, so that the same problem gives the same proof.
 */
public final class Refutation {
    private static final int NODE_ROUNDS = 48;
    private static final int ROUNDS_PER_NODE = 20;

    private Refutation() {}

    /**
     * What was proved.
     *
     * @param mixCost least of the second level, whatever clients wait within the longest wait
     * @param certificate refutes that one unit less would do; empty where nothing above 0 was proved
     */
    public record Least(long mixCost, Optional<Certificate> certificate) {}

    /**
     * The least of the second level, as far as it can be proved.
     *
     * @param planned what a known plan needs, 1 or more: nothing above it is proved
     * @param rounds rounds of work, none for what the runs need one by one
     */
    public static Least leastMixCost(StaggerProblem problem, long planned, SearchRounds rounds) {
        MinuteGrid grid = new MinuteGrid(problem);
        PriceBound bound = new PriceBound(grid);
        Claim claim = new Claim(Claim.ANY, planned - 1, Claim.ANY);
        LevelWeights weights = new LevelWeights(CostModel.NEVER, 0, PriceBound.SCALE, 0);
        PriceAscent ascent = new PriceAscent(bound, claim, new int[grid.horizon], weights);
        ascent.round();
        for (int round = 0; rounds.another(round) && !ascent.closed() && !ascent.stalled(); round++) {
            ascent.round();
        }
        if (ascent.closed()) {
            return new Least(planned, Optional.of(new Certificate(claim, ProofTree.priced(grid, ascent))));
        }
        ProofTree tree =
                new ProofTree(bound, claim, ascent.bestPrice, ascent.bestWeights, new Incumbent(grid), NODE_ROUNDS);
        SearchRounds nodes = rounds.part(rounds.granted() / ROUNDS_PER_NODE);
        for (int node = 0; nodes.another(node) && !tree.done() && !tree.stuck(); node++) {
            tree.advance();
        }
        return tree.done() ? new Least(planned, Optional.of(tree.certificate())) : less(grid, ascent, planned);
    }

    private static Least less(MinuteGrid grid, PriceAscent ascent, long planned) {
        long least = planned - 1 - Math.floorDiv(-ascent.bestMargin, PriceBound.SCALE);
        if (least < 1) {
            return new Least(0, Optional.empty());
        }
        Claim claim = new Claim(Claim.ANY, least - 1, Claim.ANY);
        return new Least(least, Optional.of(new Certificate(claim, ProofTree.priced(grid, ascent))));
    }
}
