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
    private static final String UNUSUAL = "#9c2a00";

    private DaysSvg() {}

    static String of(List<DayOverMix> days, Optional<ControlLimits> limits) {
        int top = OverMixBars.top(days, limits);
        int width = LEFT + days.size() * DAY_WIDTH + 10;
        var svg = Markup.svg("over-mixed grams of each day", width, HEIGHT + TOP + 40, 11);
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
        Markup.rect(svg, x, y, BAR_WIDTH, TOP + HEIGHT - y, unusual ? UNUSUAL : Markup.INK);
        Markup.text(svg, x, y - 4, WeightText.wholeGrams(day.overMixedMilligrams()) + (unusual ? " !" : ""));
        String date = day.date().getDayOfMonth() + "/" + day.date().getMonthValue();
        Markup.text(svg, x, TOP + HEIGHT + 16, date);
    }

    private static void line(StringBuilder svg, BigDecimal at, int top, int width, String word) {
        int y = y(at.intValue(), top);
        svg.append("<line x1=\"" + LEFT + "\" x2=\"" + width + "\" y1=\"" + y + "\" y2=\"" + y
                + "\" stroke=\"#1a1a1a\" stroke-dasharray=\"4 3\"/>\n");
        Markup.text(svg, 2, y + 4, word + " " + OverMixBars.wholeGrams(at));
    }
}
