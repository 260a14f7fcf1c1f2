package stirtide.mixing.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.mixing.strength.BlendStrength;
import stirtide.mixing.strength.Liquid;
import stirtide.mixing.weighing.WorstCaseCheck;

/**
 * What is in a bowl, pour by pour. Kind 0 is the lightener, kind k the liquid k - 1 of the planned formula.
 *
 * @param kinds kind of each pour, in the order of weighing
 * @param amounts milligrams of each pour
 */
record PouredBowl(int[] kinds, int[] amounts) {
    int total() {
        return Arrays.stream(amounts).sum();
    }

    int of(int kind) {
        int sum = 0;
        for (int i = 0; i < kinds.length; i++) if (kinds[i] == kind) sum += amounts[i];
        return sum;
    }

    boolean has(int kind) {
        for (int other : kinds) if (other == kind) return true;
        return false;
    }

    boolean lastIs(int kind) {
        return kinds.length > 0 && kinds[kinds.length - 1] == kind;
    }

    /** The bowl after one more pour; the last pour goes on if it was of the same kind. */
    PouredBowl plus(int kind, int milligrams) {
        boolean goesOn = lastIs(kind);
        int[] nextKinds = Arrays.copyOf(kinds, kinds.length + (goesOn ? 0 : 1));
        int[] nextAmounts = Arrays.copyOf(amounts, nextKinds.length);
        nextKinds[nextKinds.length - 1] = kind;
        nextAmounts[nextKinds.length - 1] += milligrams;
        return new PouredBowl(nextKinds, nextAmounts);
    }

    /** The bowl as a formula: sums of each part, and the true range of the ratio. All kinds must have been poured. */
    BowlFormula asFormula(BowlFormula planned, List<Liquid> liquids, WorstCaseCheck check) {
        int[] sums = new int[liquids.size()];
        List<DeveloperPart> parts = new ArrayList<>();
        for (int k = 0; k < sums.length; k++) {
            sums[k] = of(k + 1);
            parts.add(new DeveloperPart(liquids.get(k).id(), sums[k]));
        }
        return new BowlFormula(
                planned.lightenerId(),
                of(0),
                parts,
                BlendStrength.blendHundredths(liquids, sums),
                planned.wantedRatioThousandths(),
                planned.lowestRatioThousandths(),
                planned.highestRatioThousandths(),
                check.worstLowRatio(kinds, amounts),
                check.worstHighRatio(kinds, amounts));
    }
}
