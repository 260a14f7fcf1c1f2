package stirtide.planner.salonfiles.source;

/**
 * One thing in the salon's files that is not accepted. All texts are made safe for a terminal: control and bidirectional
 * characters are written as {@code \}{@code uXXXX} and long texts are cut.
 *
 * @param file file name relative to the folder, {@code "."} for the folder itself
 * @param place JSON pointer with line and column, or line and property of a calendar; empty when the whole file is meant
 * @param value what was found
 * @param accepted what would be accepted instead
 */
public record FileProblem(String file, String place, String value, String accepted) {
    /** Value of what is not there. */
    public static final String MISSING = "(missing)";

    private static final int LONGEST_PLACE = 200;
    private static final int LONGEST_VALUE = 80;
    private static final int LONGEST_ACCEPTED = 600;

    public FileProblem {
        file = shown(file, LONGEST_PLACE);
        place = shown(place, LONGEST_PLACE);
        value = shown(value, LONGEST_VALUE);
        accepted = shown(accepted, LONGEST_ACCEPTED);
    }

    /** One line for people. */
    @Override
    public String toString() {
        String where = place.isEmpty() ? file : file + " " + place;
        if (value.equals(MISSING)) return where + " is missing; accepted: " + accepted;
        return where + ": " + value + " is not accepted; accepted: " + accepted;
    }

    /** Whether a character could steer a terminal or reorder the text around it. */
    public static boolean steers(int character) {
        return Character.isISOControl(character)
                || character == 0x2028
                || character == 0x2029
                || (character >= 0x200e && character <= 0x200f)
                || (character >= 0x202a && character <= 0x202e)
                || (character >= 0x2066 && character <= 0x2069)
                || (character >= 0xd800 && character <= 0xdfff);
    }

    private static String shown(String text, int longest) {
        StringBuilder out = new StringBuilder();
        text.codePoints().limit(longest + 1L).forEach(character -> {
            if (steers(character)) out.append(String.format("\\u%04x", character));
            else out.appendCodePoint(character);
        });
        int end = out.codePointCount(0, out.length());
        return end > longest ? out.substring(0, out.offsetByCodePoints(0, longest - 3)) + "..." : out.toString();
    }
}
