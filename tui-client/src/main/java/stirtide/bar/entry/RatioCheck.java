package stirtide.bar.entry;

import java.util.List;
import java.util.OptionalInt;
import stirtide.bar.words.WeightText;

/**
 * Holds typed weights against the window of the directions while they are typed. Plain arithmetic on the window, in
 * milligrams and thousandths; ranges are rounded inward to the step of the scale. What the scale may err is the
 * service's business: it judges the bowl when the weights are sent.
 */
final class RatioCheck {
    private static final long THOUSAND = 1000;

    private final WeighTarget target;

    RatioCheck(WeighTarget target) {
        this.target = target;
    }

    /** Developer per lightener in thousandths, to nearest; lightener more than 0. */
    static int ratioThousandths(int lightenerMilligrams, int developerMilligrams) {
        long doubled = 2 * THOUSAND * developerMilligrams / lightenerMilligrams;
        return (int) ((doubled + 1) / 2);
    }

    /** Whether the weights are inside the window. */
    boolean isInside(int lightenerMilligrams, int developerMilligrams) {
        return !isThick(lightenerMilligrams, developerMilligrams) && !isThin(lightenerMilligrams, developerMilligrams);
    }

    private boolean isThick(long lightener, long developer) {
        return developer * THOUSAND < target.lowestRatioThousandths() * lightener;
    }

    private boolean isThin(long lightener, long developer) {
        return developer * THOUSAND > target.highestRatioThousandths() * lightener;
    }

    /** Whether the bowl would be too full; not known before the service has told the bowl's size. */
    boolean isOverfull(int lightenerMilligrams, int developerMilligrams) {
        return (long) lightenerMilligrams + developerMilligrams > room();
    }

    /** Sentences that say where the weights stand and what is inside the window, none when all is well. */
    List<String> advice(OptionalInt lightener, OptionalInt developer) {
        if (lightener.isEmpty()) return List.of();
        int grams = lightener.getAsInt();
        if (developer.isEmpty()) return List.of("inside with " + developerRange(grams) + " of developer in all");
        int liquid = developer.getAsInt();
        if (isOverfull(grams, liquid)) return List.of("more than the bowl may hold: " + roomText());
        if (isThin(grams, liquid)) return thin(grams, liquid);
        if (isThick(grams, liquid)) return thick(grams, liquid);
        return List.of();
    }

    private List<String> thin(int lightener, int developer) {
        long least = up(ceilDiv(developer * THOUSAND, target.highestRatioThousandths()));
        long most = down(Math.min(developer * THOUSAND / target.lowestRatioThousandths(), room() - developer));
        if (least > most) return hopeless();
        return List.of(
                "too much developer for the directions",
                "inside with " + range(least, most) + " of lightener in all: add "
                        + range(least - lightener, most - lightener));
    }

    private List<String> thick(int lightener, int developer) {
        long least = leastDeveloper(lightener);
        long most = mostDeveloper(lightener);
        if (least > most) return hopeless();
        String shares = target.parts().size() > 1 ? ", in the planned shares" : "";
        return List.of(
                "too little developer for the directions",
                "inside with " + range(least, most) + " of developer in all: add "
                        + range(least - developer, most - developer) + shares);
    }

    private String developerRange(int lightener) {
        long least = leastDeveloper(lightener);
        long most = mostDeveloper(lightener);
        return least > most ? "no amount" : range(least, most);
    }

    private List<String> hopeless() {
        return List.of("outside the directions, and " + roomText() + ": no amount more brings it in, bin it");
    }

    private long leastDeveloper(long lightener) {
        return up(ceilDiv(target.lowestRatioThousandths() * lightener, THOUSAND));
    }

    private long mostDeveloper(long lightener) {
        return down(Math.min(target.highestRatioThousandths() * lightener / THOUSAND, room() - lightener));
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
        return ceilDiv(milligrams, target.divisionMilligrams()) * target.divisionMilligrams();
    }

    private long down(long milligrams) {
        return Math.floorDiv(milligrams, (long) target.divisionMilligrams()) * target.divisionMilligrams();
    }

    private static long ceilDiv(long dividend, long divisor) {
        return -Math.floorDiv(-dividend, divisor);
    }
}
