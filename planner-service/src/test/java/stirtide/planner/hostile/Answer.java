package stirtide.planner.hostile;

import java.util.Locale;
import java.util.Map;

/**
 * What came back over the wire.
 *
 * @param headers names in lower case
 * @param body whole, or of a stream what came first
 * @param toHead whether a HEAD request was answered, whose body never comes
 */
record Answer(int status, Map<String, String> headers, String body, boolean toHead) {
    String mediaType() {
        return headers.getOrDefault("content-type", "")
                .replaceFirst(";.*", "")
                .trim()
                .toLowerCase(Locale.ROOT);
    }

    /** Head and body as one text, to be searched. */
    String text() {
        return headers + "\n" + body;
    }
}
