package stirtide.bar.report;

import java.util.List;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.text.WeightText;

/** Grams as lying bars of an SVG picture, each with its name and its figure. Whole pixels only. */
final class BarsSvg {
    private static final int ROW_HEIGHT = 22;
    private static final int BAR_HEIGHT = 14;
    private static final int LEFT = 190;
    private static final int LONGEST = 380;
    private static final int WIDTH = LEFT + LONGEST + 80;
    private static final String INK = "#4a5a68";

    private BarsSvg() {}

    static String of(List<OverMixBars.Bar> bars) {
        int most = Math.max(1, bars.get(0).milligrams());
        int height = bars.size() * ROW_HEIGHT + 4;
        var svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" ");
        svg.append("aria-label=\"over-mixed grams\" viewBox=\"0 0 " + WIDTH + ' ')
                .append(height)
                .append("\" width=\"" + WIDTH + "\" font-size=\"12\" font-family=\"sans-serif\">\n");
        for (int i = 0; i < bars.size(); i++) bar(svg, i * ROW_HEIGHT + 2, bars.get(i), most);
        return svg.append("</svg>\n").toString();
    }

    private static void bar(StringBuilder svg, int y, OverMixBars.Bar bar, int most) {
        long length = Math.max(1, (long) bar.milligrams() * LONGEST / most);
        svg.append("<rect x=\"" + LEFT + "\" y=\"")
                .append(y)
                .append("\" width=\"")
                .append(length);
        svg.append("\" height=\"" + BAR_HEIGHT + "\" fill=\"" + INK + "\"/>\n");
        text(svg, 2, y + BAR_HEIGHT - 2, bar.label());
        text(svg, LEFT + length + 6, y + BAR_HEIGHT - 2, WeightText.grams(bar.milligrams()) + " g");
    }

    private static void text(StringBuilder svg, long x, int y, String text) {
        svg.append("<text x=\"").append(x).append("\" y=\"").append(y).append("\">");
        svg.append(DayPage.escape(text)).append("</text>\n");
    }
}
