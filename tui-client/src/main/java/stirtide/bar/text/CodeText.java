package stirtide.bar.text;

import java.util.Locale;

/** Codes of the contract in words. */
public final class CodeText {
    private CodeText() {}

    /** {@code PAST_LIFE} as {@code past life}. */
    public static String words(String code) {
        return code.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
