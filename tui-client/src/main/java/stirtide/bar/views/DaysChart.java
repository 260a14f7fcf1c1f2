package stirtide.bar.views;

import java.math.BigDecimal;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.ControlLimits;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.model.UiState;
import stirtide.bar.model.ViewState;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayView;

/** Over-mixed grams of the days, today last, between the limits that tell an unusual day from a usual one. */
final class DaysChart {
    private static final int LEFT = 7;
    private static final int DAY_COLUMNS = 5;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d/M", Locale.ROOT);

    private DaysChart() {}

    static void draw(Pane pane, UiState scene, DayView view) {
        List<DayOverMix> past = scene.pages().past();
        Optional<ControlLimits> limits = OverMixBars.limits(past);
        pane.put(0, 0, "OVER-MIXED per day, g", Style.STRONG);
        pane.fit(24, 0, pane.width() - 24, words(limits, scene.pages()), Style.DIM);
        var days = new ArrayList<>(past);
        days.add(DayOverMix.of(view));
        int fitting = (pane.width() - LEFT) / DAY_COLUMNS;
        List<DayOverMix> shown = days.subList(Math.max(0, days.size() - fitting), days.size());
        chart(pane.part(0, 1, pane.width(), pane.height() - 1), shown, limits, view.closed());
    }

    private static String words(Optional<ControlLimits> limits, ViewState pages) {
        int days = pages.past().size();
        if (days == 0 && !pages.pastLoaded()) return "earlier days not loaded, d loads them";
        if (limits.isEmpty())
            return days + " earlier days known, limits are shown from " + ControlLimits.FEWEST + " on";
        BigDecimal lower = limits.get().lower().max(BigDecimal.ZERO);
        return "usual: " + OverMixBars.wholeGrams(lower) + " to "
                + OverMixBars.wholeGrams(limits.get().upper()) + " g, mean "
                + OverMixBars.wholeGrams(limits.get().mean()) + " g of " + days + " days";
    }

    private static void chart(Pane pane, List<DayOverMix> days, Optional<ControlLimits> limits, boolean closed) {
        int height = pane.height() - 2;
        int top = OverMixBars.top(days, limits);
        limits.ifPresent(limit -> {
            line(pane, height, top, limit.upper(), "upper");
            line(pane, height, top, limit.mean(), "mean");
        });
        for (int i = 0; i < days.size(); i++) {
            boolean isToday = i == days.size() - 1;
            day(pane, LEFT + i * DAY_COLUMNS, height, top, days.get(i), limits, isToday && !closed);
        }
    }

    private static void line(Pane pane, int height, int top, BigDecimal at, String word) {
        int row = row(height, top, at.intValue());
        pane.put(LEFT, row, "·".repeat(Math.max(0, pane.width() - LEFT)), Style.DIM);
        pane.put(0, row, word, Style.DIM);
    }

    private static int row(int height, int top, int milligrams) {
        long cells = (long) Math.max(0, milligrams) * height / top;
        return (int) Math.max(0, Math.min(height - 1, height - cells));
    }

    private static void day(
            Pane pane,
            int column,
            int height,
            int top,
            DayOverMix day,
            Optional<ControlLimits> limits,
            boolean unfinished) {
        boolean unusual = limits.map(limit -> limit.isUnusual(BigDecimal.valueOf(day.overMixedMilligrams())))
                .orElse(false);
        // A day that is still going on can already be too high, but not yet too low.
        boolean marked = unusual && (!unfinished || aboveMean(day, limits));
        Style style = marked ? Style.MEDIUM : Style.TEXT;
        long halves = (long) day.overMixedMilligrams() * height * 2 / top;
        for (int half = 0; half < halves; half += 2) {
            String block = half + 1 < halves ? "█" : "▄";
            pane.put(column + 1, height - 1 - half / 2, block.repeat(3), style);
        }
        String sign = marked ? "▲" : unfinished ? "~" : "";
        pane.put(column, height, sign, style);
        pane.right(column + 4, height, 4 - sign.length(), WeightText.wholeGrams(day.overMixedMilligrams()), style);
        pane.right(column + 4, height + 1, 5, DAY.format(day.date()), Style.DIM);
    }

    private static boolean aboveMean(DayOverMix day, Optional<ControlLimits> limits) {
        return limits.map(limit -> limit.mean().compareTo(BigDecimal.valueOf(day.overMixedMilligrams())) < 0)
                .orElse(false);
    }
}
