package stirtide.bar.canvas;

/** What a cell means; a theme turns it into color or, without color, into bold, underline and reverse. */
public enum Style {
    /** Ordinary text. */
    TEXT('.'),
    /** Units, labels and other things that may step back. */
    DIM('d'),
    /** Lines between parts. */
    RULE('r'),
    /** Headings and the figure that matters. */
    STRONG('s'),
    /** Alarm that needs hands now. */
    HIGH('H'),
    /** Alarm that needs hands soon. */
    MEDIUM('M'),
    /** Something to know. */
    LOW('L'),
    /** The row the next key acts on. */
    PICKED('p');

    private final char letter;

    Style(char letter) {
        this.letter = letter;
    }

    /** One letter for golden frames. */
    public char letter() {
        return letter;
    }
}
