package stirtide.bar.panels.list;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The selected row of a list. It follows its row when the list changes; when that row is gone, the first one is selected.
 *
 * @param <T> kind of a row
 */
public final class ListCursor<T> {
    private final Function<T, Object> key;
    private Optional<Object> selected = Optional.empty();

    /** Draws one row. */
    public interface RowPainter<T> {
        /** Draws a row at a place of the list's window, from 0. */
        void paint(int place, T row, boolean selected);
    }

    /** A cursor on the first row; {@code key} tells rows apart. */
    public ListCursor(Function<T, Object> key) {
        this.key = key;
    }

    /** Selects the row of that key. */
    public void select(Object rowKey) {
        selected = Optional.of(rowKey);
    }

    /** The selected row, empty when there is none. */
    public Optional<T> in(List<T> rows) {
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(place(rows)));
    }

    private int place(List<T> rows) {
        for (int i = 0; i < rows.size(); i++)
            if (selected.isPresent() && key.apply(rows.get(i)).equals(selected.get())) return i;
        return 0;
    }

    /** Moves by some rows; stops at both ends. */
    public void move(int step, List<T> rows) {
        if (rows.isEmpty()) return;
        int next = Math.max(0, Math.min(rows.size() - 1, place(rows) + step));
        select(key.apply(rows.get(next)));
    }

    /**
     * Draws the part of the list that holds the selected row.
     *
     * @param height rows of the window
     * @param above most rows shown above the selected one while there are more below
     * @return how many rows stand below the window
     */
    public int draw(List<T> rows, int height, int above, RowPainter<T> painter) {
        int at = place(rows);
        int first = Math.max(0, Math.min(at - above, rows.size() - height));
        for (int i = 0; i < height && first + i < rows.size(); i++)
            painter.paint(i, rows.get(first + i), first + i == at);
        return Math.max(0, rows.size() - first - height);
    }
}
