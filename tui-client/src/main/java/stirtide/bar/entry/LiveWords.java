package stirtide.bar.entry;

import java.util.Locale;

/** The stage of a live bowl in words. */
public final class LiveWords {
    private LiveWords() {}

    /** {@code AT_CHAIR} as {@code at chair}. */
    public static String stage(String stage) {
        return stage.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
