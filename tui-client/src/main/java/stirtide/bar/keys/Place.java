package stirtide.bar.keys;

/** Where a key is pressed. */
public enum Place {
    /** The bar view itself. */
    BAR("the bar"),
    /** All clients over time. */
    FLOOR("the floor"),
    /** The day in grams. */
    DAY("the day"),
    /** The list of services. */
    SERVICES("the services"),
    /** The planner's advice. */
    ADVICE("the planner's advice"),
    /** A panel with fields. */
    FIELDS("a panel with fields"),
    /** A question. */
    QUESTION("a question"),
    /** A panel to read. */
    READING("a panel to read");

    private final String words;

    Place(String words) {
        this.words = words;
    }

    /** The place in words. */
    public String words() {
        return words;
    }
}
