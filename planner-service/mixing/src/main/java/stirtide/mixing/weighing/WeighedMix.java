package stirtide.mixing.weighing;

import java.util.List;
import java.util.Optional;
import stirtide.events.setup.Scale;

/**
 * A mix as the scale showed it, each part weighed once in the order given. It is within limits only when it is however the
 * scale erred, by the same bounds by which formulas are chosen and pours advised ({@link ScaleErrors}).
 *
 * @param scale scale it was weighed on
 * @param lightenerMilligrams lightener, more than 0
 * @param liquids what was weighed to it, each more than 0, one to three
 */
public record WeighedMix(Scale scale, int lightenerMilligrams, List<Part> liquids) {
    /**
     * A liquid of the mix.
     *
     * @param strengthHundredths its strength in hundredths of a per cent by weight, 0 for water
     * @param milligrams its weight
     */
    public record Part(int strengthHundredths, int milligrams) {}

    /**
     * What a mix is held to.
     *
     * @param lowestRatioThousandths smallest developer per lightener
     * @param highestRatioThousandths largest developer per lightener
     * @param highestStrengthHundredths strongest the liquids together may be
     */
    public record Bounds(int lowestRatioThousandths, int highestRatioThousandths, int highestStrengthHundredths) {}

    /** What does not hold. */
    public enum Fault {
        TOO_LITTLE_DEVELOPER,
        TOO_MUCH_DEVELOPER,
        TOO_STRONG
    }

    public WeighedMix {
        liquids = List.copyOf(liquids);
    }

    /** The first limit that does not hold in the worst case, empty when the mix is inside whatever the scale's error. */
    public Optional<Fault> fault(Bounds bounds) {
        WorstCaseCheck check = check(bounds);
        int[] kinds = WorstCaseCheck.eachOnce(liquids.size());
        if (!check.enoughDeveloper(kinds, amounts())) return Optional.of(Fault.TOO_LITTLE_DEVELOPER);
        if (!check.enoughLightener(kinds, amounts())) return Optional.of(Fault.TOO_MUCH_DEVELOPER);
        int[] strengths = liquids.stream().mapToInt(Part::strengthHundredths).toArray();
        return check.weakEnough(kinds, amounts(), strengths) ? Optional.empty() : Optional.of(Fault.TOO_STRONG);
    }

    /** Whether a limit is passed by the figures on the display already, not only by what the scale may err. */
    public boolean isAsShown(Fault fault, Bounds bounds) {
        long developer = liquids.stream().mapToLong(Part::milligrams).sum();
        long peroxide = liquids.stream()
                .mapToLong(part -> (long) part.milligrams() * part.strengthHundredths())
                .sum();
        return switch (fault) {
            case TOO_LITTLE_DEVELOPER ->
                1000 * developer < (long) bounds.lowestRatioThousandths() * lightenerMilligrams;
            case TOO_MUCH_DEVELOPER -> 1000 * developer > (long) bounds.highestRatioThousandths() * lightenerMilligrams;
            case TOO_STRONG -> peroxide > bounds.highestStrengthHundredths() * developer;
        };
    }

    private WorstCaseCheck check(Bounds bounds) {
        return new WorstCaseCheck(
                scale,
                bounds.lowestRatioThousandths(),
                bounds.highestRatioThousandths(),
                0,
                bounds.highestStrengthHundredths());
    }

    private int[] amounts() {
        return WorstCaseCheck.withFirst(
                lightenerMilligrams, liquids.stream().mapToInt(Part::milligrams).toArray());
    }
}
