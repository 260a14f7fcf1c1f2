package stirtide.bar.report;

/** Text in HTML and SVG, and what the charts of a page have in common. */
final class Markup {
    /** Color of bars that are not unusual. */
    static final String INK = "#4a5a68";

    private Markup() {}

    /** Text that may stand in HTML. */
    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** An empty picture; its end is {@code </svg>}. */
    static StringBuilder svg(String label, int width, int height, int fontSize) {
        return new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"" + label
                + "\" viewBox=\"0 0 " + width + " " + height + "\" width=\"" + width + "\" font-size=\"" + fontSize
                + "\" font-family=\"sans-serif\">\n");
    }

    static void rect(StringBuilder svg, long x, long y, long width, long height, String fill) {
        svg.append("<rect x=\"" + x + "\" y=\"" + y + "\" width=\"" + width + "\" height=\"" + height + "\" fill=\""
                + fill + "\"/>\n");
    }

    static void text(StringBuilder svg, long x, long y, String text) {
        svg.append("<text x=\"" + x + "\" y=\"" + y + "\">" + escape(text) + "</text>\n");
    }
}
