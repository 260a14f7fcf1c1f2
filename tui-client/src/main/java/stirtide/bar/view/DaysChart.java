package stirtide.bar.view;

import java.math.BigDecimal;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.bar.frame.Pane;
import stirtide.bar.frame.Style;
import stirtide.bar.grams.DayGrams;
import stirtide.bar.grams.Limits;
import stirtide.bar.scene.PastDay;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.WeightText;
import stirtide.events.view.DayView;

/** Over-mixed grams of the days, today last, between the limits that tell an unusual day from a usual one. */
final class DaysChart {
    private static final int LEFT = 7;
    private static final int DAY_COLUMNS = 5;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d/M", Locale.ROOT);

    private DaysChart() {}

    static void draw(Pane pane, Scene scene, DayView view) {
        List<PastDay> past = scene.pages().past();
        Optional<Limits> limits = DayGrams.limits(past);
        pane.put(0, 0, "OVER-MIXED per day, g", Style.STRONG);
        pane.fit(24, 0, pane.width() - 24, words(limits, past.size()), Style.DIM);
        var days = new ArrayList<>(past);
        days.add(PastDay.of(view));
        int fitting = (pane.width() - LEFT) / DAY_COLUMNS;
        List<PastDay> shown = days.subList(Math.max(0, days.size() - fitting), days.size());
        chart(pane.part(0, 1, pane.width(), pane.height() - 1), shown, limits, view.closed());
    }

    private static String words(Optional<Limits> limits, int days) {
        if (limits.isEmpty()) return days + " earlier days known, limits are told from " + Limits.FEWEST + " on";
        BigDecimal lower = limits.get().lower().max(BigDecimal.ZERO);
        return "usual: " + DayGrams.wholeGrams(lower) + " to "
                + DayGrams.wholeGrams(limits.get().upper()) + " g, mean "
                + DayGrams.wholeGrams(limits.get().mean()) + " g of " + days + " days";
    }

    private static void chart(Pane pane, List<PastDay> days, Optional<Limits> limits, boolean closed) {
        int height = pane.height() - 2;
        int most = Math.max(
                1_000,
                days.stream().mapToInt(PastDay::overMixedMilligrams).max().orElse(0));
        int top = limits.map(limit -> Math.max(most, limit.upper().intValue())).orElse(most);
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
            Pane pane, int column, int height, int top, PastDay day, Optional<Limits> limits, boolean unfinished) {
        boolean unusual = limits.map(limit -> limit.isUnusual(BigDecimal.valueOf(day.overMixedMilligrams())))
                .orElse(false);
        // A day that is still going on can already be too high, but not yet too low.
        boolean told = unusual && (!unfinished || aboveMean(day, limits));
        Style style = told ? Style.MEDIUM : Style.TEXT;
        long halves = (long) day.overMixedMilligrams() * height * 2 / top;
        for (int half = 0; half < halves; half += 2) {
            String block = half + 1 < halves ? "█" : "▄";
            pane.put(column + 1, height - 1 - half / 2, block.repeat(3), style);
        }
        String sign = told ? "▲" : unfinished ? "~" : "";
        pane.put(column, height, sign, style);
        pane.right(column + 4, height, 4 - sign.length(), WeightText.wholeGrams(day.overMixedMilligrams()), style);
        pane.right(column + 4, height + 1, 5, DAY.format(day.date()), Style.DIM);
    }

    private static boolean aboveMean(PastDay day, Optional<Limits> limits) {
        return limits.map(limit -> limit.mean().compareTo(BigDecimal.valueOf(day.overMixedMilligrams())) < 0)
                .orElse(false);
    }
}
