package stirtide.demo.print;

/** What the sections of a prep sheet write to: plain text, or a page for a printer. Both say the same. */
interface SheetWriter {
    /** Begins a section. */
    SheetWriter heading(String text);

    /** Adds a line of its own. */
    SheetWriter line(String text);

    /** Sets off what follows from what stands before. */
    SheetWriter gap();

    /**
     * Adds text that may be broken at blanks.
     *
     * @param lead what stands before it: blanks for how deep it stands, and a mark or a time, if any
     */
    SheetWriter text(String lead, String text);

    /** Adds a row of cells; a negative width aligns right. */
    SheetWriter row(int[] widths, String... cells);
}
