package stirtide.bar.views;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.TerminalTextUtils;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stirtide.bar.Samples;
import stirtide.bar.canvas.Canvas;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.UiState;
import stirtide.bar.model.ViewState;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.terminal.Theme;

class FramePropertiesTest {
    private static final int[][] SIZES = {{80, 24}, {100, 30}, {120, 36}, {200, 60}, {60, 20}, {20, 5}, {2, 2}, {1, 1}};

    @ParameterizedTest
    @EnumSource(Glyphs.class)
    void no_state_at_any_size_holds_a_character_that_is_not_one_cell_wide(Glyphs glyphs) {
        for (Map.Entry<String, Supplier<UiState>> state : BarFramesTest.states().entrySet()) {
            for (int[] size : SIZES) {
                Canvas canvas = ScreenView.draw(state.getValue().get(), size[0], size[1], glyphs);
                String all = String.join("", canvas.rows());
                assertThat(all).as(state.getKey()).hasSize(size[0] * size[1]);
                assertThat(all.chars().filter(letter -> isForbidden((char) letter)))
                        .as(state.getKey())
                        .isEmpty();
                if (glyphs == Glyphs.ASCII) assertThat(all.chars()).allMatch(letter -> letter < 127);
            }
        }
    }

    /** What a panel says about its keys is worth nothing when its end is cut off. */
    @Test
    void no_panel_cuts_the_words_about_its_keys() {
        for (Map.Entry<String, Supplier<UiState>> state : BarFramesTest.states().entrySet()) {
            for (String row :
                    ScreenView.draw(state.getValue().get(), 80, 24, Glyphs.FULL).rows()) {
                int escape = row.indexOf("Esc ");
                boolean inPanel = escape > 0 && row.contains("│");
                if (inPanel)
                    assertThat(row.substring(escape)).as(state.getKey()).containsPattern("^Esc (leaves|back|no)\\b");
            }
        }
    }

    private static boolean isForbidden(char letter) {
        return Character.isISOControl(letter)
                || Character.isSurrogate(letter)
                || TerminalTextUtils.isCharDoubleWidth(letter);
    }

    @Test
    void a_name_with_letters_from_everywhere_stays_in_its_cells() {
        for (char letter = 0; letter < Character.MAX_VALUE; letter++) {
            char shown = Glyphs.FULL.map(letter);
            assertThat(isForbidden(shown)).as("U+%04X", (int) letter).isFalse();
            assertThat(shown).isLessThanOrEqualTo(Glyphs.LAST);
        }
        assertThat(Glyphs.ASCII.map('é')).isEqualTo('e');
    }

    @Test
    void a_calm_day_holds_no_alarm_style() {
        for (int[] size : SIZES) {
            for (KeyContext page : List.of(KeyContext.BAR, KeyContext.DAY)) {
                UiState scene = Samples.scene(Samples.calm()).withPages(ViewState.BAR.to(page));
                Canvas canvas = ScreenView.draw(scene, size[0], size[1], Glyphs.FULL);
                assertThat(String.join("", StyleLetters.rows(canvas))).doesNotContain("H", "M", "L");
            }
        }
    }

    @Test
    void every_alarm_has_symbol_and_word_beside_its_color() {
        List<String> rows = ScreenView.draw(Samples.scene(Samples.busy()), 120, 36, Glyphs.FULL)
                .rows();
        assertThat(rows.get(1)).startsWith("■ HIGH  bowl 3b  chair 1  PAST LIFE +02:00");
        assertThat(rows.get(2)).startsWith("▲ MEDIUM  bowl 4a  chair 2  LOW LIFE 04:00");
    }

    @Test
    void without_color_no_cell_has_a_color() throws IOException {
        Canvas canvas = ScreenView.draw(Samples.scene(Samples.busy()), 80, 24, Glyphs.FULL);
        Stream<TextCharacter> cells =
                GoldenFrames.cells(canvas, Theme.MONO, ColorDepth.NONE).stream().flatMap(List::stream);
        assertThat(cells).allSatisfy(cell -> {
            assertThat(cell.getForegroundColor()).isEqualTo(TextColor.ANSI.DEFAULT);
            assertThat(cell.getBackgroundColor()).isEqualTo(TextColor.ANSI.DEFAULT);
        });
    }

    @Test
    void a_second_changes_few_cells() {
        UiState scene = Samples.scene(Samples.crowded());
        UiState later = scene.withClock(new UiState.ClockReading(scene.now().plusSeconds(1), 0, 1000, false));
        Canvas before = ScreenView.draw(scene, 120, 36, Glyphs.FULL);
        Canvas after = ScreenView.draw(later, 120, 36, Glyphs.FULL);
        int changed = 0;
        for (int row = 0; row < 36; row++)
            for (int column = 0; column < 120; column++)
                if (before.character(column, row) != after.character(column, row)) changed++;
        assertThat(changed).isBetween(1, 200);
    }

    @Test
    void too_small_a_terminal_says_so_and_keeps_the_next_bowl() {
        List<String> rows = ScreenView.draw(Samples.scene(Samples.calm()), 60, 20, Glyphs.FULL)
                .rows();
        assertThat(rows.get(0)).startsWith("80x24 needed, now 60x20");
        assertThat(rows.get(1)).startsWith("next: bowl 7a in 04:00");
    }
}
