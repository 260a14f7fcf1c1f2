package stirtide.bar.text;

import java.util.ArrayList;
import java.util.List;

/** Long sentences in narrow places. */
public final class LineWrap {
    private LineWrap() {}

    /** The text in lines of at most {@code columns}, broken at blanks; a longer word is cut into pieces. */
    public static List<String> wrap(String text, int columns) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String rest = word;
            if (line.length() > 0 && line.length() + 1 + rest.length() > columns) {
                lines.add(line.toString());
                line.setLength(0);
            }
            // Ends: each round takes a whole line's worth of characters off the word.
            while (rest.length() > columns) {
                lines.add(rest.substring(0, columns));
                rest = rest.substring(columns);
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        if (line.length() > 0) lines.add(line.toString());
        return List.copyOf(lines);
    }
}
