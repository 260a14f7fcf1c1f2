package stirtide.planner.planning.stagger;

import java.util.List;

/**
 * The plain model's rule: every bowl costs 1, and a bowl must hold what its stretch uses and what stays behind in it.
 *
 * @param usableFillDecigrams most that one bowl holds
 * @param residueDecigrams what stays on bowl and brush
 * @param usedDecigramsByMinute grams used up to each minute of the run, non-decreasing, first entry 0
 */
public record PlainBowls(int usableFillDecigrams, int residueDecigrams, List<Integer> usedDecigramsByMinute)
        implements BowlRule {

    /** Copies the table. */
    public PlainBowls {
        usedDecigramsByMinute = List.copyOf(usedDecigramsByMinute);
    }

    @Override
    public int cost(int fromMinute, int toMinute) {
        int used = usedDecigramsByMinute.get(toMinute) - usedDecigramsByMinute.get(fromMinute);
        return used + residueDecigrams <= usableFillDecigrams ? 1 : NO_BOWL;
    }
}
