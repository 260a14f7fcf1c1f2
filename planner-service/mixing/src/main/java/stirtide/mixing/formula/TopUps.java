package stirtide.mixing.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.mixing.strength.Liquid;
import stirtide.mixing.weighing.Ratios;
import stirtide.mixing.weighing.WorstCaseCheck;

/**
 * The smallest pours that bring a bowl inside all limits: one of a set of kinds, or two. Total grams first, then the
 * ratio closest to the wanted one.
 */
final class TopUps {
    private final WorstCaseCheck check;
    private final List<Liquid> liquids;
    private final int wantedRatio;
    private final long least;
    private final long usable;
    private final int step;

    TopUps(WorstCaseCheck check, List<Liquid> liquids, FormulaQuestion question) {
        this.check = check;
        this.liquids = liquids;
        this.wantedRatio = question.ratioThousandths();
        this.least = question.leastMilligrams();
        this.usable = question.usableMilligrams();
        this.step = check.errors().stepMilligrams();
    }

    /** Pours to make, in order: kind and milligrams each, and the bowl after them. */
    record Found(List<int[]> pours, PouredBowl after) {}

    boolean holds(PouredBowl bowl) {
        return bowl.total() <= usable && isEnough(bowl);
    }

    /** Whether a bowl is enough and inside all limits as it is; what is in it already fits, whatever it was meant to hold. */
    boolean isEnough(PouredBowl bowl) {
        return bowl.total() >= least && check.holds(bowl.kinds(), bowl.amounts(), liquids);
    }

    /** The best way over all sets of kinds. */
    Optional<Found> best(PouredBowl bowl, List<int[]> sets) {
        Optional<Found> best = Optional.empty();
        for (int[] set : sets) {
            long most = best.map(found -> (long) found.after().total()).orElse(usable);
            Optional<Found> found = set.length == 1 ? one(bowl, set[0], most) : two(bowl, set, most);
            if (found.isPresent()
                    && (best.isEmpty() || better(found.get().after(), best.get().after()))) best = found;
        }
        return best;
    }

    private Optional<Found> one(PouredBowl bowl, int kind, long most) {
        for (long add = firstAdd(bowl, 1); bowl.total() + add <= most; add += step) {
            PouredBowl after = bowl.plus(kind, (int) add);
            if (holds(after)) return Optional.of(new Found(List.of(new int[] {kind, (int) add}), after));
        }
        return Optional.empty();
    }

    private Optional<Found> two(PouredBowl bowl, int[] set, long most) {
        for (long add = firstAdd(bowl, 2); bowl.total() + add <= most; add += step) {
            Optional<Found> best = Optional.empty();
            for (long first = step; first < add; first += step) {
                if (!nearRatio(bowl, set, first, add - first)) continue;
                PouredBowl after = bowl.plus(set[0], (int) first).plus(set[1], (int) (add - first));
                if (holds(after) && (best.isEmpty() || better(after, best.get().after())))
                    best = Optional.of(new Found(pours(set, first, add - first), after));
            }
            if (best.isPresent()) return best;
        }
        return Optional.empty();
    }

    private static List<int[]> pours(int[] set, long first, long second) {
        List<int[]> pours = new ArrayList<>();
        pours.add(new int[] {set[0], (int) first});
        pours.add(new int[] {set[1], (int) second});
        return pours;
    }

    /** Whether the shown weights alone are inside the window: cheaper than the worst case, and needed for it. */
    private boolean nearRatio(PouredBowl bowl, int[] set, long first, long second) {
        long lightener = bowl.of(0) + (set[0] == 0 ? first : 0) + (set[1] == 0 ? second : 0);
        long developer = bowl.total() + first + second - lightener;
        return 1000 * developer >= check.lowestRatio() * lightener
                && 1000 * developer <= check.highestRatio() * lightener;
    }

    private long firstAdd(PouredBowl bowl, int pours) {
        long enough = Math.max((long) pours * step, least - bowl.total());
        return -Math.floorDiv(-enough, step) * step;
    }

    private boolean better(PouredBowl a, PouredBowl b) {
        if (a.total() != b.total()) return a.total() < b.total();
        return Ratios.compareCloseness(a.of(0), a.total() - a.of(0), b.of(0), b.total() - b.of(0), wantedRatio) < 0;
    }
}
