package stirtide.bar.canvas;

/** What a cell means; a theme turns it into color or, without color, into bold, underline and reverse. */
public enum Style {
    /** Ordinary text. */
    TEXT,
    /** Units, labels and other things that may step back. */
    DIM,
    /** Lines between parts. */
    RULE,
    /** Headings and the figure that matters. */
    STRONG,
    /** Alarm that needs an action now. */
    HIGH,
    /** Alarm that needs an action soon. */
    MEDIUM,
    /** Something to know. */
    LOW,
    /** The row the next key acts on. */
    PICKED;
}
