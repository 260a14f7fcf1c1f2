package stirtide.bar.panels.form;

import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;

/** A field to type into, or a choice to step through. */
public interface FormField {
    /** Label in front. */
    String label();

    /** Takes a key; the answer is why it was not taken, empty when it was or when it is not for fields. */
    Optional<String> press(Key key, boolean machine);

    /** Why the content cannot be kept, empty when it can. */
    Optional<String> problem();

    /** The content. */
    String text();

    /** Draws the content with room for {@code columns} characters. */
    default void draw(Pane pane, int column, int row, int columns, boolean focused) {
        String shown = Pane.cut(text(), columns);
        pane.put(column, row, "[" + " ".repeat(columns) + "]", focused ? Style.STRONG : Style.DIM);
        pane.put(column + 1, row, shown, focused ? Style.STRONG : Style.TEXT);
        if (focused) pane.cursor(column + 1 + Math.min(shown.length(), columns - 1), row);
    }
}
