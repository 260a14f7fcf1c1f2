package stirtide.demo.print;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import stirtide.bar.text.CodeText;
import stirtide.bar.text.TimeText;
import stirtide.demo.play.PlayedDay;
import stirtide.events.day.DayEvent;
import stirtide.events.day.OverMixCause;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Person;
import stirtide.events.view.DayTotals;
import stirtide.events.view.DayView.ServiceCard;
import stirtide.mixing.text.AmountText;

/** The played day as plain text of at most {@value TextPage#COLUMNS} columns. */
public final class DayReport {

    private static final int[] CLIENTS = {4, 6, 10, 27, 8, 8, 9, -8};
    private static final int[] BOWLS = {5, 6, 8, 6, 6, 7, 7, -9, -10, -9, 7};
    private static final int[] GRAMS = {32, -14, -12};

    private DayReport() {}

    /**
     * Writes the report.
     *
     * @param checks what {@link DayChecks#of} found
     */
    public static String of(DaySetup setup, PlayedDay day, List<DayChecks.Check> checks) {
        TextPage page = new TextPage();
        ZoneId zone = ZoneId.of(setup.salon().zone());
        List<BowlSummary> bowls = BowlSummary.of(day.events());
        page.line("=".repeat(TextPage.COLUMNS))
                .text("THE DAY AS IT WENT  ", setup.salon().name() + ", " + PrepSheet.DATE.format(setup.date()))
                .line("=".repeat(TextPage.COLUMNS));
        UnplannedEvents.write(page, day, zone);
        clients(page, day, zone);
        bowls(page, setup, day, bowls, zone);
        overMix(page, day.view().totals(), day.view().currency());
        refusals(page, day);
        page.heading("CHECKS");
        checks.forEach(check -> page.text(check.holds() ? "ok   " : "NOT  ", check.sentence()));
        return page.toString();
    }

    private static void clients(TextPage page, PlayedDay day, ZoneId zone) {
        page.heading("CLIENTS");
        page.row(CLIENTS, "no", "chair", "client", "service", "booked", "began", "applied", "waited");
        for (ServiceCard card : day.view().services())
            page.row(
                    CLIENTS,
                    Integer.toString(card.service()),
                    Integer.toString(card.chair()),
                    card.clientRef(),
                    card.menuName(),
                    TimeText.minute(card.bookedStart(), zone),
                    last(
                            day,
                            zone,
                            event -> event instanceof DayEvent.ServiceStarted started
                                    && started.service() == card.service()),
                    last(
                            day,
                            zone,
                            event -> event instanceof DayEvent.ZoneFinished done && done.service() == card.service()),
                    day.chairs().waitedMinutes().getOrDefault(card.service(), 0) + " min");
    }

    private static String last(PlayedDay day, ZoneId zone, Predicate<DayEvent> which) {
        return day.events().stream()
                .filter(stored -> which.test(stored.event()))
                .reduce((first, second) -> second)
                .map(stored -> TimeText.minute(stored.time(), zone))
                .orElse("-");
    }

    private static void bowls(TextPage page, DaySetup setup, PlayedDay day, List<BowlSummary> bowls, ZoneId zone) {
        page.heading("BOWLS");
        page.row(
                BOWLS,
                "bowl",
                "chair",
                "who",
                "begun",
                "there",
                "closed",
                "ends",
                "lightener",
                "developer",
                "left",
                "");
        for (BowlSummary summary : bowls)
            page.row(
                    BOWLS,
                    summary.bowl,
                    day.view()
                            .service(summary.service)
                            .map(card -> Integer.toString(card.chair()))
                            .orElse(""),
                    setup.salon().person(summary.personId).map(Person::name).orElse(summary.personId),
                    TimeText.minute(summary.begunAt, zone),
                    summary.handedOverAt.map(at -> TimeText.minute(at, zone)).orElse("-"),
                    summary.closedAt.map(at -> TimeText.minute(at, zone)).orElse("-"),
                    TimeText.minute(summary.lifeEnds, zone),
                    AmountText.roundedGrams(summary.lightener),
                    AmountText.roundedGrams(summary.developer),
                    summary.left == 0 ? "-" : AmountText.roundedGrams(summary.left),
                    summary.cause.map(cause -> "  " + mark(cause)).orElse(""));
        page.text(
                "",
                "There: at the chair. Ends: end of its life. Marks: left = left over, life = past its life, gone = client gone, spilt ="
                        + " spilled, ratio = wrong ratio.");
    }

    private static String mark(OverMixCause cause) {
        return switch (cause) {
            case LEFT_OVER -> "left";
            case PAST_LIFE -> "life";
            case WRONG_RATIO -> "ratio";
            case CLIENT_GONE -> "gone";
            case SPILLED -> "spilt";
        };
    }

    private static void overMix(TextPage page, DayTotals totals, String currency) {
        page.heading("GRAMS");
        grams(page, "mixed", totals.mixedMilligrams(), totals.mixedMilligrams());
        grams(page, "on hair", totals.appliedMilligrams(), totals.mixedMilligrams());
        grams(page, "stayed on bowl and brush", totals.residueMilligrams(), totals.mixedMilligrams());
        grams(page, "over-mixed", totals.overMixedMilligrams(), totals.mixedMilligrams());
        for (Map.Entry<String, Integer> cause : totals.overMixedByCause().entrySet())
            grams(page, "  " + CodeText.words(cause.getKey()), cause.getValue(), totals.mixedMilligrams());
        page.row(GRAMS, "cost of all mixed", totals.mixedCost().toPlainString() + " " + currency, "");
        page.row(GRAMS, "cost of what was over-mixed", totals.overMixedCost().toPlainString() + " " + currency, "");
    }

    private static void grams(TextPage page, String what, long milligrams, long of) {
        String share = of == 0 ? "" : Math.round(milligrams * 1000.0 / of) / 10.0 + " %";
        page.row(GRAMS, what, AmountText.roundedGrams(milligrams), share);
    }

    private static void refusals(TextPage page, PlayedDay day) {
        if (day.refusals().isEmpty()) return;
        page.heading("REFUSED");
        day.refusals().forEach(refusal -> page.text("- ", refusal));
    }
}
