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

    private BarsSvg() {}

    static String of(List<OverMixBars.Bar> bars) {
        int most = Math.max(1, bars.get(0).milligrams());
        var svg = Markup.svg("over-mixed grams", WIDTH, bars.size() * ROW_HEIGHT + 4, 12);
        for (int i = 0; i < bars.size(); i++) bar(svg, i * ROW_HEIGHT + 2, bars.get(i), most);
        return svg.append("</svg>\n").toString();
    }

    private static void bar(StringBuilder svg, int y, OverMixBars.Bar bar, int most) {
        long length = Math.max(1, (long) bar.milligrams() * LONGEST / most);
        Markup.rect(svg, LEFT, y, length, BAR_HEIGHT, Markup.INK);
        Markup.text(svg, 2, y + BAR_HEIGHT - 2, bar.label());
        Markup.text(svg, LEFT + length + 6, y + BAR_HEIGHT - 2, WeightText.grams(bar.milligrams()) + " g");
    }
}
