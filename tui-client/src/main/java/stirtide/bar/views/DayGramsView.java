package stirtide.bar.views;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.model.OverMixSelection;
import stirtide.bar.model.UiState;
import stirtide.bar.text.CodeText;
import stirtide.bar.text.CountText;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayTotals;
import stirtide.events.view.DayView;

/** The day in grams: what was over-mixed and why, the day's balance, this terminal's alarms, and the days before. */
final class DayGramsView {
    private static final int RIGHT_COLUMNS = 33;
    private static final int TOP_ROWS = 10;
    private static final int LABEL_COLUMNS = 20;
    private static final int COST_COLUMNS = 7;
    private static final int FIGURE_COLUMNS = 15;

    private DayGramsView() {}

    /** Draws between the alarm rows and the footer. */
    static void draw(Pane pane, UiState scene) {
        if (scene.view().isEmpty()) {
            pane.put(2, 1, "no picture of the day yet", Style.DIM);
            return;
        }
        DayView view = scene.view().get();
        boolean tall = pane.height() >= 2 * TOP_ROWS;
        int top = tall ? pane.height() / 2 : TOP_ROWS - 1;
        int left = pane.width() - RIGHT_COLUMNS - 2;
        bars(pane.part(0, 0, left - 1, top), scene, view);
        for (int row = 0; row < top; row++) pane.put(left, row, "│", Style.RULE);
        Pane right = pane.part(left + 2, 0, RIGHT_COLUMNS, top);
        OverMixSelection pick = scene.pages().day();
        int row = pick.period() == OverMixSelection.Period.TODAY
                ? balance(right, view, tall)
                : sums(right, pick.period().of(view, scene.pages().past()), view.currency(), tall);
        alarms(right, row + (tall ? 1 : 0), scene);
        pane.rule(top);
        DaysChart.draw(pane.part(0, top + 1, pane.width(), pane.height() - top - 1), scene, view);
    }

    private static void bars(Pane pane, UiState scene, DayView view) {
        OverMixSelection pick = scene.pages().day();
        String head =
                "OVER-MIXED " + pick.period().words() + ", by " + pick.sort().word();
        pane.put(0, 0, head, Style.STRONG);
        pane.right(pane.width() - 1, 0, COST_COLUMNS, view.currency(), Style.DIM);
        List<OverMixBars.Bar> bars = OverMixBars.bars(view, scene.pages().past(), pick);
        if (bars.isEmpty()) {
            pane.put(2, 2, "nothing over-mixed in bowls that are done", Style.DIM);
            return;
        }
        int rows = pane.height() - 2;
        int picked = Math.min(pick.row(), bars.size() - 1);
        int first = Math.max(0, Math.min(picked - rows + 1, bars.size() - rows));
        int most = Math.max(1, bars.get(0).milligrams());
        for (int i = 0; i < rows && first + i < bars.size(); i++)
            bar(pane, 1 + i, bars.get(first + i), most, first + i == picked);
        int hidden = bars.size() - first - rows;
        if (hidden > 0) pane.put(2, pane.height() - 1, hidden + " more below", Style.DIM);
    }

    private static void bar(Pane pane, int row, OverMixBars.Bar bar, int most, boolean isPicked) {
        Style style = pane.select(row, isPicked, Style.TEXT);
        pane.fit(2, row, LABEL_COLUMNS, bar.label(), style);
        pane.right(LABEL_COLUMNS + 9, row, 7, WeightText.grams(bar.milligrams()), style)
                .put(LABEL_COLUMNS + 10, row, "g", style);
        int room = Math.max(1, pane.width() - LABEL_COLUMNS - 14 - COST_COLUMNS);
        pane.right(pane.width() - 1, row, COST_COLUMNS, bar.cost().toPlainString(), style);
        long cells = Math.max(1, (long) bar.milligrams() * room / most);
        pane.put(LABEL_COLUMNS + 12, row, "▓".repeat((int) Math.min(room, cells)), style);
    }

    private static int balance(Pane pane, DayView view, boolean tall) {
        DayTotals totals = view.totals();
        pane.put(0, 0, "DONE BOWLS  " + totals.bowlsMixed(), Style.STRONG);
        figure(pane, 1, "mixed", grams(totals.mixedMilligrams()));
        figure(pane, 2, "applied", grams(totals.appliedMilligrams()));
        figure(pane, 3, "stuck to bowl and brush", grams(totals.residueMilligrams()));
        figure(pane, 4, "over-mixed", grams(totals.overMixedMilligrams()));
        figure(
                pane,
                5,
                "  of mixed",
                OverMixBars.percent(totals.overMixedMilligrams(), totals.mixedMilligrams()) + " %");
        figure(pane, 6, "  worth", OverMixBars.cost(view).toPlainString() + " " + view.currency());
        if (!tall) return 7;
        view.planTotals()
                .ifPresent(plan -> figure(
                        pane,
                        8,
                        "still planned, " + CountText.of(plan.bowlCount(), "bowl"),
                        grams(plan.mixedMilligrams())));
        return 9;
    }

    private static int sums(Pane pane, List<DayOverMix> days, String currency, boolean tall) {
        DayOverMix all = DayOverMix.together(days);
        pane.put(0, 0, "KNOWN DAYS  " + days.size() + ", today is one", Style.STRONG);
        figure(pane, 1, "mixed", grams(all.mixedMilligrams()));
        figure(pane, 2, "over-mixed", grams(all.overMixedMilligrams()));
        figure(pane, 3, "  of mixed", OverMixBars.percent(all.overMixedMilligrams(), all.mixedMilligrams()) + " %");
        figure(pane, 4, "  worth", all.cost().toPlainString() + " " + currency);
        figure(pane, 5, "over-mixed a day, mean", grams(all.overMixedMilligrams() / days.size()));
        return tall ? 9 : 7;
    }

    private static String grams(int milligrams) {
        return WeightText.wholeGrams(milligrams) + " g";
    }

    private static void figure(Pane pane, int row, String label, String figure) {
        pane.put(0, row, label, Style.TEXT).right(pane.width() - 1, row, FIGURE_COLUMNS, figure, Style.TEXT);
    }

    /** Alarms in ten minutes on average since this terminal counts. */
    private static String mean(AlarmList.Tally tally, UiState scene) {
        long minutes = Math.max(1, Duration.between(tally.since(), scene.now()).toMinutes());
        int all = tally.high() + tally.medium() + tally.low();
        return BigDecimal.valueOf(all * 10L)
                .divide(BigDecimal.valueOf(minutes), 1, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static void alarms(Pane pane, int row, UiState scene) {
        AlarmList.Tally tally = scene.alarms().tally();
        var lines = new ArrayList<String>();
        lines.add("high " + tally.high() + "  medium " + tally.medium() + "  low " + tally.low());
        lines.add("most in 10 min " + tally.mostInTenMinutes() + ", aim 10 or less");
        lines.add(mean(tally, scene) + " in 10 min on average, aim 1");
        lines.add("in a flood " + tally.floodSeconds() / 60 + " min");
        if (!tally.topKind().isEmpty()) {
            lines.add("most often " + CodeText.words(tally.topKind()) + " " + tally.topCount());
        }
        boolean counted = !tally.equals(AlarmList.Tally.NONE);
        String since = counted ? " since " + scene.minute(tally.since()) : "";
        pane.put(0, row, "ALARMS seen here" + since, Style.STRONG);
        for (int i = 0; i < lines.size() && row + 1 + i < pane.height(); i++)
            pane.fit(0, row + 1 + i, pane.width(), lines.get(i), Style.TEXT);
    }
}
