package stirtide.demo.print;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import stirtide.bar.text.CountText;
import stirtide.events.plan.BowlReason;
import stirtide.events.plan.Plan;
import stirtide.events.setup.Person;

/** The prep sheet of a day. The same day gives the same text, byte for byte. */
public final class PrepSheet {
    static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE, MMMM d, yyyy", Locale.ENGLISH);

    private PrepSheet() {}

    /**
     * Writes the sheet: cautions, bowls to mix by each person, times of each client, missing tests, waits, bowls at once,
     * products to have ready.
     *
     * @param leftOut sentences about bookings that are not of this day's bar
     */
    public static String of(PrepSheetDay day, List<String> leftOut) {
        TextPage page = new TextPage();
        page.line("=".repeat(TextPage.COLUMNS))
                .text("PREP SHEET  ", title(day))
                .text("", summary(day))
                .line("=".repeat(TextPage.COLUMNS));
        CautionSection.write(page, day);
        MixingSection.write(page, day);
        ClientSection.write(page, day);
        theDay(page, day, leftOut);
        return page.toString();
    }

    /** What concerns the day as a whole. */
    static void theDay(SheetWriter page, PrepSheetDay day, List<String> leftOut) {
        OpenTestsSection.write(page, day);
        waits(page, day);
        bowls(page, day);
        notes(page, day, leftOut);
        BowlsAtOnce.write(page, day);
        ShelfSection.write(page, day);
    }

    static String title(PrepSheetDay day) {
        return day.setup().salon().name() + ", " + DATE.format(day.setup().date());
    }

    static String summary(PrepSheetDay day) {
        long assistants = day.setup().salon().people().stream()
                .filter(person -> person.role() == Person.Role.ASSISTANT)
                .count();
        Plan.PlanTotals totals = day.plan().totals();
        return "Times in " + day.setup().salon().zone() + ". "
                + CountText.of(day.bookings().size(), "service") + ", "
                + CountText.of(totals.bowlCount(), "bowl") + ", "
                + CountText.of(assistants, "assistant") + ". "
                + waiting(totals.waitMinutes());
    }

    private static String waiting(int minutes) {
        return minutes == 0
                ? "Nobody waits for the bar."
                : "Clients wait " + CountText.of(minutes, "minute") + " for the bar, all together.";
    }

    private static void waits(SheetWriter page, PrepSheetDay day) {
        page.heading("WAITS");
        if (day.plan().waits().isEmpty()) page.line("None planned.");
        for (Plan.WaitReason wait : day.plan().waits())
            page.text(day.clock(wait.from()) + " to " + day.clock(wait.to()) + "  ", wait.sentence());
        day.plan().totals().proof().forEach(sentence -> page.text("", sentence));
    }

    private static void bowls(SheetWriter page, PrepSheetDay day) {
        if (day.plan().totals().bowlReasons().isEmpty()) return;
        page.heading("BOWLS THAT CANNOT BE SAVED");
        for (BowlReason reason : day.plan().totals().bowlReasons())
            page.text(day.clock(reason.from()) + " to " + day.clock(reason.to()) + "  ", reason.sentence());
    }

    private static void notes(SheetWriter page, PrepSheetDay day, List<String> leftOut) {
        if (day.plan().notes().isEmpty() && leftOut.isEmpty()) return;
        page.heading("NOTES");
        for (Plan.PlanNote note : day.plan().notes())
            page.text(TextPage.cell("service " + note.service(), 12), note.sentence());
        leftOut.forEach(sentence -> page.text("calendar    ", sentence));
    }
}
