package stirtide.demo.print;

import java.util.Locale;

/** Sections of a prep sheet as HTML: headings, paragraphs, and rows that follow one another as a table. */
final class HtmlSections implements SheetWriter {
    private static final int DEEPEST = 3;

    private final HtmlWriter html;
    private boolean inTable;
    private boolean afterGap;

    /** Sections on {@code html}; {@link #end} must follow the last. */
    HtmlSections(HtmlWriter html) {
        this.html = html;
    }

    @Override
    public HtmlSections heading(String text) {
        end();
        html.element("h2", text.substring(0, 1) + text.substring(1).toLowerCase(Locale.ROOT))
                .text("\n");
        return this;
    }

    @Override
    public HtmlSections line(String text) {
        return text("", text);
    }

    @Override
    public HtmlSections gap() {
        end();
        afterGap = true;
        return this;
    }

    @Override
    public HtmlSections text(String lead, String text) {
        end();
        int depth = Math.min(DEEPEST, (lead.length() - lead.stripLeading().length()) / 2);
        html.open("p", "class", afterGap ? "head" : "in" + depth);
        afterGap = false;
        if (!lead.isBlank()) html.element("b", lead.strip()).text(" ");
        html.text(text).closeLine();
        return this;
    }

    @Override
    public HtmlSections row(int[] widths, String... cells) {
        String cell = inTable ? "td" : "th";
        if (!inTable) html.open("table", "class", "list");
        inTable = true;
        html.open("tr");
        for (int i = 0; i < cells.length; i++)
            if (widths[i] < 0) html.element(cell, cells[i], "class", "number");
            else html.element(cell, cells[i]);
        html.closeLine();
        return this;
    }

    /** Ends a table, if one is open. */
    void end() {
        if (inTable) html.closeLine();
        inTable = false;
    }
}
