package stirtide.planner.day.batch;

import java.util.ArrayList;
import java.util.List;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.planner.day.state.BowlWeights;

/**
 * Shares a mix out over two bowls by grams. Both hold the same mix, so every part goes by the grams of the bowl; the two
 * shares of a part add up to it, to the milligram, and the parts of a bowl to the grams of the bowl.
 */
final class BatchSplit {
    private BatchSplit() {}

    /** Of each part, what lies in the bowl that got {@code poured} milligrams of the whole. */
    private static int[] poured(int[] parts, int poured) {
        long total = 0;
        for (int part : parts) total += part;
        int[] share = new int[parts.length];
        long[] rest = new long[parts.length];
        int open = poured;
        for (int i = 0; i < parts.length; i++) {
            share[i] = (int) ((long) parts[i] * poured / total);
            rest[i] = (long) parts[i] * poured % total;
            open -= share[i];
        }
        // What rounding down left open is less than a milligram a part; it goes where most was rounded off.
        for (; open > 0; open--) {
            int most = 0;
            for (int i = 1; i < rest.length; i++) if (rest[i] > rest[most]) most = i;
            share[most]++;
            rest[most] = -1;
        }
        return share;
    }

    private static int[] parts(int lightener, List<DeveloperPart> developers) {
        int[] parts = new int[developers.size() + 1];
        parts[0] = lightener;
        for (int i = 0; i < developers.size(); i++)
            parts[i + 1] = developers.get(i).milligrams();
        return parts;
    }

    private static int[] share(int lightener, List<DeveloperPart> developers, int poured, boolean second) {
        int[] all = parts(lightener, developers);
        int[] share = poured(all, poured);
        if (!second) for (int i = 0; i < all.length; i++) share[i] = all[i] - share[i];
        return share;
    }

    private static List<DeveloperPart> developers(List<DeveloperPart> whole, int[] share) {
        List<DeveloperPart> parts = new ArrayList<>();
        for (int i = 0; i < whole.size(); i++)
            parts.add(new DeveloperPart(whole.get(i).developerId(), share[i + 1]));
        return parts;
    }

    /** What one of the bowls holds of a formula, the second or the first. */
    static BowlFormula of(BowlFormula whole, int poured, boolean second) {
        int[] share = share(whole.lightenerMilligrams(), whole.developerParts(), poured, second);
        return whole.withLightenerMilligrams(share[0]).withDeveloperParts(developers(whole.developerParts(), share));
    }

    /** What one of the bowls holds of a mix that was weighed; ratio and judgment are those of the whole. */
    static BowlWeights of(BowlWeights whole, int poured, boolean second) {
        int[] share = share(whole.lightenerMilligrams(), whole.developerParts(), poured, second);
        return new BowlWeights(
                share[0],
                developers(whole.developerParts(), share),
                whole.ratioThousandths(),
                whole.insideDirections(),
                whole.at());
    }
}
