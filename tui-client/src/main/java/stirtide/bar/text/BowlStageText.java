package stirtide.bar.text;

import java.util.Locale;

/** The stage of a live bowl in words. */
public final class BowlStageText {
    private BowlStageText() {}

    /** {@code AT_CHAIR} as {@code at chair}. */
    public static String stage(String stage) {
        return stage.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
