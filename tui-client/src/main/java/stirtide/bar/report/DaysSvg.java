package stirtide.bar.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import stirtide.bar.model.ControlLimits;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.text.WeightText;

/** The days as bars of an SVG picture, the limits as dashed lines. Whole pixels only. */
final class DaysSvg {
    private static final int DAY_WIDTH = 36;
    private static final int BAR_WIDTH = 24;
    private static final int LEFT = 60;
    private static final int HEIGHT = 200;
    private static final int TOP = 20;
    private static final String INK = "#4a5a68";
    private static final String UNUSUAL = "#9c2a00";

    private DaysSvg() {}

    static String of(List<DayOverMix> days, Optional<ControlLimits> limits) {
        int most = Math.max(
                1_000,
                days.stream().mapToInt(DayOverMix::overMixedMilligrams).max().orElse(0));
        int top = limits.map(limit -> Math.max(most, limit.upper().intValue())).orElse(most);
        int width = LEFT + days.size() * DAY_WIDTH + 10;
        var svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" ");
        svg.append("aria-label=\"over-mixed grams of each day\" ");
        svg.append("viewBox=\"0 0 ")
                .append(width)
                .append(' ')
                .append(HEIGHT + TOP + 40)
                .append("\" width=\"");
        svg.append(width).append("\" font-size=\"11\" font-family=\"sans-serif\">\n");
        for (int i = 0; i < days.size(); i++) bar(svg, i, days.get(i), top, limits);
        limits.ifPresent(limit -> {
            line(svg, limit.upper(), top, width, "upper");
            line(svg, limit.mean(), top, width, "mean");
            if (limit.lower().signum() > 0) line(svg, limit.lower(), top, width, "lower");
        });
        return svg.append("</svg>\n").toString();
    }

    private static int y(int milligrams, int top) {
        return TOP + HEIGHT - (int) ((long) milligrams * HEIGHT / top);
    }

    private static void bar(StringBuilder svg, int index, DayOverMix day, int top, Optional<ControlLimits> limits) {
        int x = LEFT + index * DAY_WIDTH;
        int y = y(day.overMixedMilligrams(), top);
        boolean unusual = limits.map(limit -> limit.isUnusual(BigDecimal.valueOf(day.overMixedMilligrams())))
                .orElse(false);
        svg.append("<rect x=\"")
                .append(x)
                .append("\" y=\"")
                .append(y)
                .append("\" width=\"")
                .append(BAR_WIDTH);
        svg.append("\" height=\"").append(TOP + HEIGHT - y).append("\" fill=\"").append(unusual ? UNUSUAL : INK);
        svg.append("\"/>\n");
        text(svg, x, y - 4, WeightText.wholeGrams(day.overMixedMilligrams()) + (unusual ? " !" : ""));
        String date = day.date().getDayOfMonth() + "/" + day.date().getMonthValue();
        text(svg, x, TOP + HEIGHT + 16, date);
    }

    private static void line(StringBuilder svg, BigDecimal at, int top, int width, String word) {
        int y = y(at.intValue(), top);
        svg.append("<line x1=\"")
                .append(LEFT)
                .append("\" x2=\"")
                .append(width)
                .append("\" y1=\"")
                .append(y);
        svg.append("\" y2=\"").append(y).append("\" stroke=\"#1a1a1a\" stroke-dasharray=\"4 3\"/>\n");
        text(svg, 2, y + 4, word + " " + OverMixBars.wholeGrams(at));
    }

    private static void text(StringBuilder svg, int x, int y, String text) {
        svg.append("<text x=\"").append(x).append("\" y=\"").append(y).append("\">");
        svg.append(DayPage.escape(text)).append("</text>\n");
    }
}
