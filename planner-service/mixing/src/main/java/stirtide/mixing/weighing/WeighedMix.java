package stirtide.mixing.weighing;

import java.util.List;
import java.util.Optional;

/**
 * A mix as the scale showed it, each part weighed once in the order given, lightener first. It is within limits only when it
 * is so for every error the scale may have, by the same bounds by which formulas are chosen and pours advised.
 *
 * @param errors errors of the scale it was weighed on
 * @param lightenerMilligrams lightener, more than 0
 * @param liquids what was weighed to it, each more than 0, at most three
 */
public record WeighedMix(ReadingErrors errors, int lightenerMilligrams, List<Part> liquids) {
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

    /** The first limit that does not hold in the worst case, empty when all hold whatever the scale's error. */
    public Optional<Fault> fault(Bounds bounds) {
        if (!hasEnoughDeveloper(bounds.lowestRatioThousandths())) return Optional.of(Fault.TOO_LITTLE_DEVELOPER);
        if (!hasEnoughLightener(bounds.highestRatioThousandths())) return Optional.of(Fault.TOO_MUCH_DEVELOPER);
        int[] strengths = liquids.stream().mapToInt(Part::strengthHundredths).toArray();
        return worst().weakEnough(bounds.highestStrengthHundredths(), kinds(), amounts(), strengths)
                ? Optional.empty()
                : Optional.of(Fault.TOO_STRONG);
    }

    /** Whether there is enough developer for the lightener in the worst case; ratio in thousandths. */
    public boolean hasEnoughDeveloper(int lowestRatioThousandths) {
        return worst().enoughDeveloper(lowestRatioThousandths, kinds(), amounts());
    }

    /** Whether there is enough lightener for the developer in the worst case; ratio in thousandths. */
    public boolean hasEnoughLightener(int highestRatioThousandths) {
        return worst().enoughLightener(highestRatioThousandths, kinds(), amounts());
    }

    private WorstCase worst() {
        return new WorstCase(errors);
    }

    private int[] kinds() {
        return WorstCaseCheck.eachOnce(liquids.size());
    }

    private int[] amounts() {
        return WorstCaseCheck.withFirst(
                lightenerMilligrams, liquids.stream().mapToInt(Part::milligrams).toArray());
    }

    /** Whether the figures on the display pass a limit, taken as exact. */
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
}
