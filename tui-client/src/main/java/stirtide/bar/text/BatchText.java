package stirtide.bar.text;

import java.util.stream.Collectors;
import stirtide.events.view.DayView.BatchCard;
import stirtide.events.view.DayView.ShareCard;

/** One mix for two bowls in words. */
public final class BatchText {
    private BatchText() {}

    /** {@code 3a and 7b}. */
    public static String bowls(BatchCard batch) {
        return batch.shares().stream().map(ShareCard::bowl).collect(Collectors.joining(" and "));
    }

    /** {@code chairs 2 and 5}. */
    public static String chairs(BatchCard batch) {
        return "chairs "
                + batch.shares().stream()
                        .map(share -> String.valueOf(share.chair()))
                        .collect(Collectors.joining(" and "));
    }

    /** {@code 32.0 g stay in 3a, 23.0 g go into 7b}. */
    public static String shares(BatchCard batch) {
        return WeightText.grams(batch.mixedIn().milligrams()) + " g stay in "
                + batch.mixedIn().bowl() + ", "
                + WeightText.grams(batch.pouredInto().milligrams()) + " g go into "
                + batch.pouredInto().bowl();
    }

    /** {@code 55.0 g: 18.3 g Chalk Lift, 36.7 g 20 vol (6 %) Cream}. */
    public static String weights(BatchCard batch) {
        var planned = batch.planned();
        int total = planned.lightenerMilligrams()
                + planned.parts().stream().mapToInt(part -> part.milligrams()).sum();
        return WeightText.grams(total) + " g: " + WeightText.grams(planned.lightenerMilligrams()) + " g "
                + planned.lightenerName()
                + planned.parts().stream()
                        .map(part -> ", " + WeightText.part(part))
                        .collect(Collectors.joining());
    }

    /** The other bowl of the mix. */
    public static String other(BatchCard batch, String bowl) {
        return batch.mixedIn().bowl().equals(bowl)
                ? batch.pouredInto().bowl()
                : batch.mixedIn().bowl();
    }

    /** Whether a bowl is the one the mix is made in. */
    public static boolean isMixedIn(BatchCard batch, String bowl) {
        return batch.mixedIn().bowl().equals(bowl);
    }
}
