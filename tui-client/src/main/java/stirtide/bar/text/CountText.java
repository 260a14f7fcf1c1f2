package stirtide.bar.text;

/** Numbers of things in words. */
public final class CountText {
    private CountText() {}

    /** {@code "1 bowl"}, {@code "3 bowls"}. */
    public static String of(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
