package stirtide.bar.keys;

import java.util.List;

/** Where a key is pressed. */
public enum KeyContext {
    /** The bar view itself. */
    BAR("the bar"),
    /** All clients over time. */
    FLOOR("the floor"),
    /** The day in grams. */
    DAY("the day"),
    /** What is in force: people, scales, bowls, products, menu. */
    SETUP("the setup"),
    SERVICES("the services"),
    ADVICE("the planner's advice"),
    COMPARED("the plans compared"),
    /** What is remembered of a client. */
    VISITS("the visits"),
    /** Test swatches and pH strips. */
    TESTS("the test mixes"),
    FIELDS("a panel with fields"),
    QUESTION("a question"),
    READING("a panel to read");

    /** The views, in the order of their keys. */
    public static final List<KeyContext> VIEWS = List.of(BAR, FLOOR, DAY, SETUP);

    private final String words;

    KeyContext(String words) {
        this.words = words;
    }

    /** The place in words. */
    public String words() {
        return words;
    }
}
