package stirtide.bar.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * From how far the bar can be read on a 24-inch screen of 16 to 9 with 36 rows, at 20 minutes of arc: the height ISO
 * 9241-303 prefers, as secondary sources quote it. A capital is taken as six tenths of its row, common practice.
 */
class ReadingDistanceTest {
    private static final double INCH_METERS = 0.0254;
    private static final double SCREEN_METERS = 24 * INCH_METERS * 9 / Math.hypot(16, 9);
    private static final double ROW_METERS = SCREEN_METERS / 36;
    private static final double CAPITAL_ROWS = 0.6;
    private static final double HALF_ANGLE = Math.toRadians(20.0 / 60 / 2);

    private static double reach(double rows) {
        return rows * ROW_METERS / (2 * Math.tan(HALF_ANGLE));
    }

    /** Rows a figure fills, to half a row: each character stands for the halves it fills. */
    private static double rows(Consumer<Pane> drawing) {
        Canvas canvas = new Canvas(12, 8, Glyphs.FULL);
        drawing.accept(Pane.of(canvas));
        int first = Integer.MAX_VALUE;
        int last = -1;
        for (int row = 0; row < canvas.height(); row++) {
            for (int column = 0; column < canvas.width(); column++) {
                char shown = canvas.character(column, row);
                if (shown == ' ') continue;
                first = Math.min(first, shown == '▄' ? 2 * row + 1 : 2 * row);
                last = Math.max(last, shown == '▀' ? 2 * row : 2 * row + 1);
            }
        }
        return (last - first + 1) / 2.0;
    }

    @Test
    void text_is_read_at_the_counter() {
        assertThat(reach(CAPITAL_ROWS)).isGreaterThanOrEqualTo(0.8);
    }

    @Test
    void the_time_to_the_next_mix_is_read_across_the_room() {
        double rows = rows(pane -> BlockDigits.tall(pane, 0, 0, "8", Style.STRONG));
        assertThat(rows).isEqualTo(3.5);
        assertThat(reach(rows)).isGreaterThanOrEqualTo(4.9);
    }

    @Test
    void what_is_left_of_a_live_bowl_is_read_from_the_next_chair() {
        double rows = rows(pane -> BlockDigits.small(pane, 0, 0, "8", Style.STRONG));
        assertThat(rows).isEqualTo(2.5);
        assertThat(reach(rows)).isGreaterThanOrEqualTo(3.5);
    }
}
