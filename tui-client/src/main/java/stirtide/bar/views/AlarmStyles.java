package stirtide.bar.views;

import stirtide.bar.canvas.Style;

/** How a priority looks: always a symbol and a word beside the color. */
final class AlarmStyles {
    private AlarmStyles() {}

    static int rank(String priority) {
        return priority.equals("HIGH") ? 0 : priority.equals("MEDIUM") ? 1 : 2;
    }

    static Style style(String priority) {
        return rank(priority) == 0 ? Style.HIGH : rank(priority) == 1 ? Style.MEDIUM : Style.LOW;
    }

    static String symbol(String priority) {
        return rank(priority) == 0 ? "■" : rank(priority) == 1 ? "▲" : "i";
    }
}
