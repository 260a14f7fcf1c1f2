package stirtide.demo.print;

import java.util.List;

/** The bowls of the day as plain text, for each person in the order of mixing. */
final class MixingSection {
    private static final int[] WIDTHS = {7, 6, 7, 19, 15, 16, -10};

    private MixingSection() {}

    static void write(TextPage page, PrepSheetDay day) {
        MixRows.byPerson(day).forEach((person, rows) -> {
            page.gap().text("MIX, IN THIS ORDER: ", person).line("-".repeat(TextPage.COLUMNS));
            if (rows.isEmpty()) page.line("Nothing to mix.");
            else bowls(page, rows);
        });
    }

    private static void bowls(TextPage page, List<MixRow> rows) {
        page.row(WIDTHS, "start", "bowl", "chair", "client", "use", "bowl, scale", "life ends");
        for (MixRow row : rows) {
            page.gap();
            page.row(WIDTHS, row.start(), row.bowl(), row.chair(), row.client(), row.use(), row.vessel(), row.ends());
            page.text("       ", row.zones());
            row.together().ifPresent(text -> page.text("       ", text));
            for (int i = 0; i < row.weights().size(); i++) {
                MixRow.Weight weight = row.weights().get(i);
                page.text(i == 0 ? "       " : "     + ", weight.grams() + " " + weight.what());
            }
            row.sum().ifPresent(text -> page.text("     = ", text));
            row.strength().ifPresent(text -> page.text("       ", text));
            row.divide().ifPresent(text -> page.text("       ", text));
            row.remarks().forEach(text -> page.text("     ! ", text));
            row.waiting().ifPresent(text -> page.text("       ", text));
        }
    }
}
