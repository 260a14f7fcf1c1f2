package stirtide.mixing.formula;

import java.util.Optional;
import stirtide.mixing.weighing.Ratios;
import stirtide.mixing.weighing.WorstCaseCheck;

/**
 * Finds the weights with the smallest surplus and, among those, the ratio closest to the wanted one. Walks over the
 * weights of lightener outward from the one a perfect scale would give; for each, the first developer weight that holds
 * is the smallest. The walk ends on either side as soon as nothing further out can be better, and never leaves the
 * weights the window allows.
 */
final class WeightSearch {
    private final WorstCaseCheck check;
    private final LiquidSplit split;
    private final int wantedRatio;
    private final long least;
    private final long usable;
    private final int step;
    private final long mostDeveloper;
    private Optional<Found> best = Optional.empty();

    private WeightSearch(WorstCaseCheck check, LiquidSplit split, int wantedRatio, long least, long usable) {
        this.check = check;
        this.split = split;
        this.wantedRatio = wantedRatio;
        this.least = least;
        this.usable = Math.min(usable, check.errors().maximumMilligrams());
        this.step = check.errors().stepMilligrams();
        this.mostDeveloper = split.mostDeveloper();
    }

    /** Weights that hold: lightener, each liquid, and the sum of all. */
    record Found(int lightener, int[] parts, long total) {
        long developer() {
            return total - lightener;
        }
    }

    /**
     * Searches.
     *
     * @param least smallest sum of all weights, in milligrams
     * @param usable largest sum of all weights, in milligrams
     */
    static Optional<Found> search(WorstCaseCheck check, LiquidSplit split, int wantedRatio, long least, long usable) {
        WeightSearch search = new WeightSearch(check, split, wantedRatio, least, usable);
        long ideal = least * 1000 / (1000 + wantedRatio) / search.step * search.step;
        search.walk(ideal, -1);
        search.walk(ideal + search.step, 1);
        return search.best;
    }

    /** The smallest mix with exactly this weight of lightener. */
    static Optional<Found> withLightener(
            WorstCaseCheck check, LiquidSplit split, FormulaQuestion question, int lightener) {
        return new WeightSearch(
                        check,
                        split,
                        question.ratioThousandths(),
                        question.leastMilligrams(),
                        question.usableMilligrams())
                .smallest(
                        lightener,
                        Math.min(question.usableMilligrams(), check.errors().maximumMilligrams()));
    }

    private void walk(long from, int direction) {
        long lowest = Math.max(check.leastPartMilligrams(), least * 1000 / (1000 + check.highestRatio()));
        long start = direction > 0 ? Math.max(from, -Math.floorDiv(-lowest, step) * step) : from;
        for (long lightener = start; lightener >= lowest; lightener += (long) direction * step) {
            long most = best.map(Found::total).orElse(usable);
            if (lightener * (1000 + check.lowestRatio()) > most * 1000) {
                if (direction > 0) return;
                continue;
            }
            Optional<Found> found = smallest((int) lightener, most);
            if (found.isPresent()) {
                keepBetter(found.get());
                if (endsWalk(found.get(), direction)) return;
            }
        }
    }

    private Optional<Found> smallest(int lightener, long mostTotal) {
        long enough = Math.max(least - lightener, split.leastDeveloper());
        enough = Math.max(enough, (long) lightener * check.lowestRatio() / 1000);
        long[] range = check.developerRange(lightener, split.leastError(lightener, enough));
        long most = Math.min(Math.min(mostTotal - lightener, range[1]), mostDeveloper);
        long developer = -Math.floorDiv(-Math.max(enough, range[0]), step) * step;
        for (; developer <= most; developer += step) {
            Optional<int[]> parts = split.of(lightener, developer);
            if (parts.isPresent()) return Optional.of(new Found(lightener, parts.get(), lightener + developer));
        }
        return Optional.empty();
    }

    private void keepBetter(Found found) {
        if (best.isEmpty() || better(found, best.get(), wantedRatio)) best = Optional.of(found);
    }

    /** Smaller mix first, then the closer ratio, then less lightener. */
    static boolean better(Found a, Found b, int wantedRatio) {
        if (a.total() != b.total()) return a.total() < b.total();
        int closeness =
                Ratios.compareCloseness(a.lightener(), a.developer(), b.lightener(), b.developer(), wantedRatio);
        return closeness != 0 ? closeness < 0 : a.lightener() < b.lightener();
    }

    /** No smaller mix exists, and further out the ratio only gets farther from the wanted one. */
    private boolean endsWalk(Found found, int direction) {
        if (found.total() - least >= step) return false;
        long beyond = 1000 * found.developer() - (long) wantedRatio * found.lightener();
        return direction > 0 ? beyond <= 0 : beyond >= 0;
    }
}
