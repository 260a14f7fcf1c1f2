package stirtide.bar.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.bar.model.ControlLimits;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.model.OverMixSelection;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayTotals;
import stirtide.events.view.DayView;

/** A day as one page of HTML that needs nothing beside itself: tables, and a chart of the days drawn as SVG. */
public final class DayPage {
    private static final String STYLE = """
            body{font:16px/1.5 sans-serif;max-width:60em;margin:2em auto;padding:0 1em;color:#1a1a1a;background:#fff}
            table{border-collapse:collapse;margin:1em 0}td,th{padding:.2em .8em;border-bottom:1px solid #bbb;text-align:left}
            td.n{text-align:right;font-variant-numeric:tabular-nums}svg{max-width:100%;height:auto}
            """;

    private DayPage() {}

    /** The page; earlier days oldest first. */
    public static String of(DayView view, List<DayOverMix> past) {
        var html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>");
        String title = Markup.escape(view.salonName() + ", " + view.date() + ": over-mixed grams");
        html.append(title + "</title>\n<style>\n" + STYLE + "</style>\n</head>\n<body>\n<h1>" + title + "</h1>\n<p>");
        html.append(view.closed() ? "The day is closed." : "The day is not finished: only bowls that are done count.");
        html.append("</p>\n");
        balance(html, view.totals(), OverMixBars.cost(view).toPlainString() + " " + view.currency());
        var days = new ArrayList<>(past);
        days.add(DayOverMix.of(view));
        Optional<ControlLimits> limits = OverMixBars.limits(past);
        html.append("<h2>Over-mixed per day</h2>\n<p>" + Markup.escape(words(limits, past.size())) + "</p>\n");
        html.append(DaysSvg.of(days, limits));
        for (OverMixSelection.Sort sort : OverMixSelection.Sort.values())
            bars(html, List.of(DayOverMix.of(view)), sort, view, "");
        weeks(html, days, view.currency());
        List<DayOverMix> month = OverMixSelection.Period.FOUR_WEEKS.of(view, past);
        String fourWeeks = " over " + OverMixSelection.Period.FOUR_WEEKS.words() + ", " + month.size() + " known";
        for (OverMixSelection.Sort sort : OverMixSelection.Sort.OF_MANY_DAYS) bars(html, month, sort, view, fourWeeks);
        return html.append("</body>\n</html>\n").toString();
    }

    private static String words(Optional<ControlLimits> limits, int days) {
        if (limits.isEmpty()) {
            return days + " earlier days known; limits are shown from " + ControlLimits.FEWEST + " days on.";
        }
        return "A usual day lies between the dashed lines: the mean of " + days
                + " earlier days, and three times their mean moving range over 1.128 on either side.";
    }

    private static void balance(StringBuilder html, DayTotals totals, String cost) {
        html.append("<h2>Balance</h2>\n<table>\n");
        row(html, "bowls done", String.valueOf(totals.bowlsMixed()));
        row(html, "mixed", WeightText.grams(totals.mixedMilligrams()) + " g");
        row(html, "applied", WeightText.grams(totals.appliedMilligrams()) + " g");
        row(html, "stuck to bowl and brush", WeightText.grams(totals.residueMilligrams()) + " g");
        row(html, "over-mixed", WeightText.grams(totals.overMixedMilligrams()) + " g");
        row(
                html,
                "over-mixed of mixed",
                OverMixBars.percent(totals.overMixedMilligrams(), totals.mixedMilligrams()) + " %");
        row(html, "over-mixed, at pack prices", cost);
        html.append("</table>\n");
    }

    private static void bars(
            StringBuilder html, List<DayOverMix> days, OverMixSelection.Sort sort, DayView view, String period) {
        html.append("<h2>Over-mixed by ").append(sort.word()).append(period).append("</h2>\n");
        List<OverMixBars.Bar> bars = OverMixBars.bars(days, sort);
        if (!bars.isEmpty()) html.append(BarsSvg.of(bars));
        html.append("<table>\n");
        if (bars.isEmpty()) row(html, "nothing", "0 g");
        bars.forEach(bar -> row(
                html,
                bar.label(),
                WeightText.grams(bar.milligrams()) + " g, " + bar.cost().toPlainString() + " " + view.currency()));
        html.append("</table>\n");
    }

    /** Sums of the known days of each week, weeks from Monday to Sunday. */
    private static void weeks(StringBuilder html, List<DayOverMix> days, String currency) {
        var weeks = new TreeMap<LocalDate, List<DayOverMix>>();
        days.forEach(day -> weeks.computeIfAbsent(
                        day.date().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)), made -> new ArrayList<>())
                .add(day));
        html.append("<h2>Over-mixed by week</h2>\n<table>\n");
        weeks.forEach((monday, known) -> {
            DayOverMix week = DayOverMix.together(known);
            row(
                    html,
                    "from " + monday + ", " + known.size() + " known days",
                    WeightText.grams(week.overMixedMilligrams()) + " g, "
                            + OverMixBars.percent(week.overMixedMilligrams(), week.mixedMilligrams()) + " % of mixed, "
                            + week.cost().toPlainString() + " " + currency);
        });
        html.append("</table>\n");
    }

    private static void row(StringBuilder html, String label, String value) {
        html.append("<tr><th scope=\"row\">").append(Markup.escape(label)).append("</th><td class=\"n\">");
        html.append(Markup.escape(value)).append("</td></tr>\n");
    }
}
