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
     * Writes the sheet: bowls to mix, times of each client, missing tests, waits, products to have ready, cautions.
     *
     * @param leftOut sentences about bookings that are not of this day's bar
     */
    public static String of(PrepSheetDay day, List<String> leftOut) {
        TextPage page = new TextPage();
        head(page, day);
        MixingSection.write(page, day);
        ClientSection.write(page, day);
        OpenTestsSection.write(page, day);
        waits(page, day);
        bowls(page, day);
        notes(page, day, leftOut);
        ShelfSection.write(page, day);
        CautionSection.write(page, day);
        return page.toString();
    }

    private static void head(TextPage page, PrepSheetDay day) {
        List<Person> assistants = day.setup().salon().people().stream()
                .filter(person -> person.role() == Person.Role.ASSISTANT)
                .toList();
        Plan.PlanTotals totals = day.plan().totals();
        page.line("=".repeat(TextPage.COLUMNS))
                .text(
                        "PREP SHEET  ",
                        day.setup().salon().name() + ", "
                                + DATE.format(day.setup().date()))
                .text(
                        "",
                        "Times in " + day.setup().salon().zone() + ". "
                                + CountText.of(day.bookings().size(), "service") + ", "
                                + CountText.of(totals.bowlCount(), "bowl") + ", "
                                + CountText.of(assistants.size(), "assistant") + ". "
                                + waiting(totals.waitMinutes()))
                .line("=".repeat(TextPage.COLUMNS));
    }

    private static String waiting(int minutes) {
        return minutes == 0
                ? "Nobody waits for the bar."
                : "Clients wait " + CountText.of(minutes, "minute") + " for the bar, all together.";
    }

    private static void waits(TextPage page, PrepSheetDay day) {
        page.heading("WAITS");
        if (day.plan().waits().isEmpty()) page.line("None planned.");
        for (Plan.WaitReason wait : day.plan().waits())
            page.text(day.clock(wait.from()) + " to " + day.clock(wait.to()) + "  ", wait.sentence());
        day.plan().totals().proof().forEach(sentence -> page.text("", sentence));
    }

    private static void bowls(TextPage page, PrepSheetDay day) {
        if (day.plan().totals().bowlReasons().isEmpty()) return;
        page.heading("BOWLS THAT CANNOT BE SAVED");
        for (BowlReason reason : day.plan().totals().bowlReasons())
            page.text(day.clock(reason.from()) + " to " + day.clock(reason.to()) + "  ", reason.sentence());
    }

    private static void notes(TextPage page, PrepSheetDay day, List<String> leftOut) {
        if (day.plan().notes().isEmpty() && leftOut.isEmpty()) return;
        page.heading("NOTES");
        for (Plan.PlanNote note : day.plan().notes())
            page.text(TextPage.cell("service " + note.service(), 12), note.sentence());
        leftOut.forEach(sentence -> page.text("calendar    ", sentence));
    }
}
