package stirtide.demo.sheet;

import java.util.List;
import java.util.Locale;
import stirtide.planner.day.DemandedTests;

/** Strand and patch tests the leaflets ask for that nobody has recorded in time. */
final class TestPart {
    private TestPart() {}

    /** What is open for the client of a bowl, in a line each, for the bowl itself. */
    static List<String> open(SheetDay day, int service) {
        return day.cards().stream()
                .filter(card -> card.service() == service)
                .flatMap(card -> card.tests().stream())
                .filter(DemandedTests::open)
                .map(test -> (test.state().equals("MISSING") ? "No " : "Too late: the ")
                        + test.kind().toLowerCase(Locale.ROOT) + " test"
                        + (test.state().equals("MISSING") ? " is recorded" : "")
                        + ", see TESTS below.")
                .distinct()
                .toList();
    }

    static void write(Page page, SheetDay day) {
        page.heading("TESTS");
        List<String> lines = day.cards().stream()
                .flatMap(card -> card.tests().stream()
                        .filter(DemandedTests::open)
                        .map(test -> Page.cell("service " + card.service(), 12) + test.sentence()))
                .toList();
        for (String line : lines) page.text(line.substring(0, 12), line.substring(12));
        page.text(
                "",
                (lines.isEmpty() ? "Every test the leaflets ask for is recorded. " : "All other tests are recorded. ")
                        + "What a test showed, and whether to go on, is for a licensed professional to judge.");
    }
}
