package stirtide.bar.panels.form;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.bar.keys.Key;

class GramsFieldTest {
    private final GramsField field = new GramsField("lightener", false);

    private String type(String text) {
        String last = "";
        for (char letter : text.toCharArray())
            last = field.press(Key.of(letter, 0), false).orElse("");
        return last;
    }

    @ParameterizedTest
    @CsvSource({"40.2,40200", "'40,2',40200", "7,7000", "500,500000", ".5,500", "12.,12000"})
    void takes_digits_with_one_point_or_comma(String typed, int milligrams) {
        type(typed);
        assertThat(field.milligrams()).hasValue(milligrams);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "0.0", ".", "500.1", "999"})
    void keeps_nothing_that_is_no_weight(String typed) {
        type(typed);
        assertThat(field.milligrams()).isEmpty();
        assertThat(field.problem()).isPresent();
    }

    @Test
    void says_why_a_key_is_not_taken() {
        assertThat(type("x")).contains("digits");
        assertThat(type("1.2.")).contains("has a point already");
        assertThat(type("34567")).contains("up to 6 characters");
        assertThat(field.text()).isEqualTo("1.2345");
    }

    @Test
    void erases_the_last_character() {
        type("40");
        field.press(Key.of(Key.Kind.ERASE, 0), false);
        assertThat(field.text()).isEqualTo("4");
    }

    @Test
    void ignores_the_unit_a_scale_sends() {
        type("40.2");
        assertThat(field.press(Key.of(' ', 0), true)).isEmpty();
        assertThat(field.press(Key.of('g', 0), true)).isEmpty();
        assertThat(field.milligrams()).hasValue(40_200);
    }

    @Test
    void the_usual_limit_is_a_twentieth_in_tenths_of_a_gram_and_at_least_a_gram() {
        assertThat(GramsField.usualLimit(42_700)).isEqualTo(2_100);
        assertThat(GramsField.usualLimit(40_000)).isEqualTo(2_000);
        assertThat(GramsField.usualLimit(21_300)).isEqualTo(1_000);
        assertThat(GramsField.usualLimit(4_300)).isEqualTo(1_000);
    }
}
