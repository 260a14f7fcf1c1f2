package stirtide.planner.planning.stagger;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Prices found and figures proved for each level of the objective, 1 to 3: waits, mixes, age. Index 0 is not used. */
final class ProvenLevels {
    final int[][] prices = new int[4][];
    final @Nullable LevelWeights[] weights = new LevelWeights[4];
    final @Nullable Certificate[] certificates = new Certificate[4];
    final long[] least = new long[4];
    private int @Nullable [] guide;
    private int @Nullable [] guideFrom;

    /** Figure of a score on a level. */
    static long figure(StaggerScore score, int level) {
        return level == 1 ? score.waitMinutes() : level == 2 ? score.mixCost() : score.ageMinutes();
    }

    /** The claim "as good on the levels before, and this figure on this one". */
    static Claim claim(StaggerScore score, int level, long figure) {
        return switch (level) {
            case 1 -> new Claim(figure, Claim.ANY, Claim.ANY);
            case 2 -> new Claim(score.waitMinutes(), figure, Claim.ANY);
            default -> new Claim(score.waitMinutes(), score.mixCost(), figure);
        };
    }

    void forget(int level) {
        least[level] = 0;
        certificates[level] = null;
    }

    /** Keeps prices and what they prove at the root. */
    void keep(MinuteGrid grid, int level, StaggerScore score, PriceAscent done) {
        prices[level] = done.bestPrice;
        weights[level] = done.bestWeights;
        long unit =
                level == 1 ? done.bestWeights.delay() : level == 2 ? done.bestWeights.mix() : done.bestWeights.age();
        long missing = -done.bestMargin;
        long figure = figure(score, level);
        long lower = done.closed() ? figure : figure - 1 - Math.floorDiv(missing, unit);
        if (lower > least[level]) {
            least[level] = lower;
            certificates[level] = new Certificate(claim(score, level, lower - 1), ProofTree.priced(grid, done));
        }
    }

    /** Prices of the third level in parts of {@link LevelWeights#AGE}, null while there are none. */
    int @Nullable [] guide() {
        int[] from = prices[3];
        if (from == null || from == guideFrom) {
            return guide;
        }
        guideFrom = from;
        guide = new int[from.length];
        for (int t = 0; t < from.length; t++) {
            guide[t] = (int) (from[t] * LevelWeights.AGE / PriceBound.SCALE);
        }
        return guide;
    }

    /** Least figures of any plan. */
    StaggerScore bound() {
        return new StaggerScore(0, least[1], least[2], least[3]);
    }

    List<Certificate> certificates() {
        List<Certificate> found = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            if (certificates[i] != null) {
                found.add(certificates[i]);
            }
        }
        return found;
    }
}
