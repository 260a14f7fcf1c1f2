package stirtide.bar.panels.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stirtide.bar.text.WeightText;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.Ratios;
import stirtide.mixing.weighing.ScaleBands;
import stirtide.mixing.weighing.WeighedMix;

/**
 * Holds typed weights against the window of the directions while they are typed, as the service will: inside is what is
 * inside however the scale errs. Whole numbers, milligrams and thousandths; ranges are rounded inward to the step of the
 * scale. Each part counts as weighed once, lightener first.
 */
final class RatioCheck {
    private static final long THOUSAND = 1000;

    private final WeighTarget target;
    private final ScaleBands scale;

    RatioCheck(WeighTarget target) {
        this.target = target;
        scale = new ScaleBands(target.scale());
    }

    /** Whether the weights are inside the window whatever the scale's error. */
    boolean isInside(int lightenerMilligrams, List<Integer> liquids) {
        return !isThick(lightenerMilligrams, liquids) && !isThin(lightenerMilligrams, liquids);
    }

    /** Whether the figures on the display are inside the window, taken as exact. */
    boolean isInsideAsShown(int lightenerMilligrams, int developerMilligrams) {
        long shown = developerMilligrams * THOUSAND;
        return shown >= (long) target.mix().lowestRatioThousandths() * lightenerMilligrams
                && shown <= (long) target.mix().highestRatioThousandths() * lightenerMilligrams;
    }

    /** Where the weights stand, in a few words. */
    String verdict(int lightenerMilligrams, List<Integer> liquids) {
        String ratio = AmountText.ratio(Ratios.thousandths(lightenerMilligrams, sum(liquids)));
        if (isInside(lightenerMilligrams, liquids)) return ratio + " inside " + windowText();
        return ratio + " OUTSIDE "
                + (isInsideAsShown(lightenerMilligrams, sum(liquids)) ? "if the scale errs" : windowText());
    }

    /** The window of the directions. */
    String windowText() {
        return AmountText.ratio(target.mix().lowestRatioThousandths()) + " to "
                + AmountText.ratio(target.mix().highestRatioThousandths());
    }

    private boolean isThick(long lightener, List<Integer> liquids) {
        return !mix(lightener, liquids).hasEnoughDeveloper(target.mix().lowestRatioThousandths());
    }

    private boolean isThin(long lightener, List<Integer> liquids) {
        return !mix(lightener, liquids).hasEnoughLightener(target.mix().highestRatioThousandths());
    }

    /** What was weighed so far; a liquid of 0 was not weighed. Strength plays no part in it. */
    private WeighedMix mix(long lightener, List<Integer> liquids) {
        List<WeighedMix.Part> parts = liquids.stream()
                .filter(milligrams -> milligrams != 0)
                .map(milligrams -> new WeighedMix.Part(0, milligrams))
                .toList();
        return new WeighedMix(scale, (int) lightener, parts);
    }

    /** Whether the bowl would be too full; not known before the service has reported the bowl's size. */
    boolean isOverfull(int lightenerMilligrams, int developerMilligrams) {
        return (long) lightenerMilligrams + developerMilligrams > room();
    }

    /** Sentences that say where the weights stand and what is inside the window, none when all is well. */
    List<String> advice(OptionalInt lightener, Optional<List<Integer>> liquids) {
        if (lightener.isEmpty()) return List.of();
        int grams = lightener.getAsInt();
        if (liquids.isEmpty()) return List.of("directions take " + developerRange(grams) + " of developer in all");
        int developer = sum(liquids.get());
        if (isOverfull(grams, developer)) return List.of("more than the bowl may hold: " + roomText());
        String doubt = isInsideAsShown(grams, developer) ? " if the scale errs" : "";
        if (isThin(grams, liquids.get()))
            return thin(grams, liquids.get(), "too much developer for the directions" + doubt);
        if (isThick(grams, liquids.get()))
            return thick(grams, liquids.get(), "too little developer for the directions" + doubt);
        return List.of();
    }

    private List<String> thin(int lightener, List<Integer> liquids, String what) {
        long developer = sum(liquids);
        long end = room() - developer;
        long least = up(ceilDiv(developer * THOUSAND, target.mix().highestRatioThousandths()));
        while (least <= end && isThin(least, liquids)) least += scale.divisionMilligrams(least);
        long most = down(Math.min(developer * THOUSAND / target.mix().lowestRatioThousandths(), end));
        while (most >= least && isThick(most, liquids)) most -= scale.divisionMilligrams(most);
        if (least > most) return hopeless();
        return List.of(
                what,
                "inside with " + range(least, most) + " of lightener in all: add "
                        + range(least - lightener, most - lightener));
    }

    private List<String> thick(int lightener, List<Integer> liquids, String what) {
        long least = leastDeveloper(lightener, liquids);
        long most = mostDeveloper(lightener, liquids, least);
        if (least > most) return hopeless();
        String shares = target.mix().parts().size() > 1 ? ", in the planned shares" : "";
        long developer = sum(liquids);
        return List.of(
                what,
                "inside with " + range(least, most) + " of developer in all: add "
                        + range(least - developer, most - developer) + shares);
    }

    private String developerRange(int lightener) {
        List<Integer> none = target.mix().parts().stream().map(part -> 0).toList();
        long least = leastDeveloper(lightener, none);
        long most = mostDeveloper(lightener, none, least);
        return least > most ? "no amount" : range(least, most);
    }

    private List<String> hopeless() {
        return List.of("outside the directions, and " + roomText() + ": no amount more brings it in, bin it");
    }

    private long leastDeveloper(long lightener, List<Integer> liquids) {
        long end = room() - lightener;
        long least = up(ceilDiv(target.mix().lowestRatioThousandths() * lightener, THOUSAND));
        while (least <= end && isThick(lightener, filled(liquids, least))) least += scale.divisionMilligrams(least);
        return least;
    }

    private long mostDeveloper(long lightener, List<Integer> liquids, long least) {
        long most = down(Math.min(target.mix().highestRatioThousandths() * lightener / THOUSAND, room() - lightener));
        while (most >= least && isThin(lightener, filled(liquids, most))) most -= scale.divisionMilligrams(most);
        return most;
    }

    /** The liquids after more was poured to them in the planned shares, until they weigh so much in all. */
    private List<Integer> filled(List<Integer> liquids, long inAll) {
        long open = inAll - sum(liquids);
        List<Integer> filled = new ArrayList<>();
        for (int i = 0; i < liquids.size(); i++) {
            long share = down(open
                    * target.mix().parts().get(i).milligrams()
                    / target.mix().developerMilligrams());
            boolean last = i == liquids.size() - 1;
            filled.add((int) (last ? inAll - sum(filled) : liquids.get(i) + share));
        }
        return filled;
    }

    private static int sum(List<Integer> milligrams) {
        return milligrams.stream().mapToInt(Integer::intValue).sum();
    }

    private long room() {
        return target.usableMilligrams().orElse(Integer.MAX_VALUE / 2);
    }

    private String roomText() {
        return target.usableMilligrams()
                .map(usable -> "the bowl takes " + WeightText.grams(usable) + " g")
                .orElse("the bowl");
    }

    private static String range(long least, long most) {
        String low = WeightText.grams((int) Math.max(0, least));
        return least >= most ? low + " g" : low + " to " + WeightText.grams((int) most) + " g";
    }

    private long up(long milligrams) {
        return ceilDiv(milligrams, scale.divisionMilligrams(milligrams)) * scale.divisionMilligrams(milligrams);
    }

    private long down(long milligrams) {
        return Math.floorDiv(milligrams, scale.divisionMilligrams(milligrams)) * scale.divisionMilligrams(milligrams);
    }

    private static long ceilDiv(long dividend, long divisor) {
        return -Math.floorDiv(-dividend, divisor);
    }
}
