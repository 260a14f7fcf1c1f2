package stirtide.bar;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Sentences as the sources write them: arguments of calls, with something long where a value is put in. What is put
 * together elsewhere is not found.
 */
public final class SourceSentences {
    /** As long as the names that people give. */
    private static final String VALUE = "Ada-Marguerite Okonkwo-Lindqvist";

    private static final int FEWEST_LETTERS = 12;

    private SourceSentences() {}

    /** Sentences of all calls that the pattern finds in a folder of sources; it ends with the opening bracket. */
    public static List<String> of(Path folder, Pattern call) throws IOException {
        var sentences = new TreeSet<String>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                String text = Files.readString(file);
                Matcher found = call.matcher(text);
                while (found.find())
                    split(text, found.end(), ',')
                            .forEach(argument -> sentence(argument).ifPresent(sentences::add));
            }
        }
        return List.copyOf(sentences);
    }

    private static Optional<String> sentence(String argument) {
        if (!argument.contains("\"") || argument.contains("->")) return Optional.empty();
        var sentence = new StringBuilder();
        for (String part : split(argument + ")", 0, '+')) {
            String piece = part.strip();
            boolean literal = piece.matches("(?s)\"([^\"\\\\]|\\\\.)*\"");
            sentence.append(literal ? piece.substring(1, piece.length() - 1).replace("\\\"", "\"") : VALUE);
        }
        String shown = sentence.toString().strip();
        return shown.replace(VALUE, "").length() < FEWEST_LETTERS ? Optional.empty() : Optional.of(shown);
    }

    /** The pieces up to the closing bracket, split at a character outside brackets and texts. */
    private static List<String> split(String text, int from, char at) {
        var pieces = new ArrayList<String>();
        int begin = from;
        int depth = 0;
        boolean quoted = false;
        for (int i = from; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (quoted && letter == '\\') i++;
            else if (letter == '"') quoted = !quoted;
            else if (quoted) continue;
            else if (letter == '(' || letter == '[' || letter == '{') depth++;
            else if ((letter == ')' || letter == ']' || letter == '}') && --depth < 0) {
                pieces.add(text.substring(begin, i));
                return pieces;
            } else if (letter == at && depth == 0) {
                pieces.add(text.substring(begin, i));
                begin = i + 1;
            }
        }
        throw new IllegalStateException(
                "no closing bracket after: " + text.substring(from, Math.min(text.length(), from + 60)));
    }
}
