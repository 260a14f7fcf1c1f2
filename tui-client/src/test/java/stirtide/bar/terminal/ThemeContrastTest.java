package stirtide.bar.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.TextColor;
import java.util.EnumSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stirtide.bar.canvas.Style;

/**
 * Contrast as W3C's WCAG 2.2 defines it (relative luminance and contrast ratio), for every ink on its ground. Limits: 4.5
 * for text (success criterion 1.4.3), 3 for rules (1.4.11), 7 for the high alarm in full color (1.4.6).
 */
class ThemeContrastTest {
    private static final double TEXT = 4.5;
    private static final double RULE = 3;
    private static final double ALARM = 7;

    @ParameterizedTest
    @CsvSource({"DARK, FULL", "LIGHT, FULL", "DARK, TABLE", "LIGHT, TABLE"})
    void every_ink_can_be_read_on_its_ground(Theme theme, ColorDepth depth) {
        for (Style style : Style.values()) {
            Theme.Look look = theme.look(style, depth);
            double least = style == Style.RULE ? RULE : TEXT;
            assertThat(ratio(look.ink(), look.ground()))
                    .as(theme + " " + depth + " " + style)
                    .isGreaterThanOrEqualTo(least);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Theme.class,
            names = {"DARK", "LIGHT"})
    void the_high_alarm_reaches_seven(Theme theme) {
        Theme.Look look = theme.look(Style.HIGH, ColorDepth.FULL);
        assertThat(ratio(look.ink(), look.ground())).isGreaterThanOrEqualTo(ALARM);
    }

    /** With sixteen colors the terminal decides what they are; here those of xterm, bright white on red and the others on black. */
    @ParameterizedTest
    @CsvSource({"HIGH, ffffff, cd0000", "MEDIUM, ffff00, 000000", "LOW, 00ffff, 000000"})
    void sixteen_colors_as_xterm_has_them_can_be_read(Style style, String ink, String ground) {
        Theme.Look look = Theme.TERM.look(style, ColorDepth.SIXTEEN);
        assertThat(look.ground() == TextColor.ANSI.RED).isEqualTo(ground.equals("cd0000"));
        assertThat(ratio(luminance(Integer.parseInt(ink, 16)), luminance(Integer.parseInt(ground, 16))))
                .isGreaterThanOrEqualTo(TEXT);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void no_alarm_is_told_by_color_alone(Theme theme) {
        for (Style style : EnumSet.of(Style.HIGH, Style.MEDIUM, Style.LOW))
            assertThat(theme.look(style, ColorDepth.NONE).marks())
                    .as(style.name())
                    .isNotEmpty();
    }

    /** White on black is 21 and gray #777777 on white 4.48 by the definition's own examples. */
    @ParameterizedTest
    @CsvSource({"ffffff, 000000, 21", "777777, ffffff, 4.48"})
    void the_measure_itself_gives_known_ratios(String ink, String ground, double known) {
        assertThat(ratio(luminance(Integer.parseInt(ink, 16)), luminance(Integer.parseInt(ground, 16))))
                .isBetween(known - 0.005, known + 0.005);
    }

    private static double ratio(TextColor ink, TextColor ground) {
        return ratio(luminance(rgb(ink)), luminance(rgb(ground)));
    }

    private static double ratio(double one, double other) {
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    private static int rgb(TextColor color) {
        return color.getRed() << 16 | color.getGreen() << 8 | color.getBlue();
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 0xff) + 0.7152 * linear(rgb >> 8 & 0xff) + 0.0722 * linear(rgb & 0xff);
    }

    private static double linear(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
