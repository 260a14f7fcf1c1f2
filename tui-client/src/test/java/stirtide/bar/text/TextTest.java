package stirtide.bar.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.mixing.text.AmountText;

class TextTest {
    private static final Instant NOON = Instant.parse("2027-05-14T11:00:00Z");

    @ParameterizedTest
    @CsvSource({"34000,34.0", "34250,34.25", "34001,34.001", "1840000,1 840.0", "0,0.0", "1234567000,1 234 567.0"})
    void grams_keep_what_the_scale_gives(int milligrams, String text) {
        assertThat(WeightText.grams(milligrams)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"1840499,1 840", "1840500,1 841", "499,0", "500,1"})
    void whole_grams_round_half_up(int milligrams, String text) {
        assertThat(WeightText.wholeGrams(milligrams)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"2000,1:2", "1500,1:1.5", "2053,1:2.053"})
    void ratios_name_lightener_first(int thousandths, String text) {
        assertThat(AmountText.ratio(thousandths)).isEqualTo(text);
    }

    /** 10 volume for 3 %: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"600,20 vol (6 %)", "900,30 vol (9 %)", "190,6.3 vol (1.9 %)", "0,water"})
    void strengths_are_told_both_ways(int hundredths, String text) {
        assertThat(WeightText.strength(hundredths)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"40.2,40200", "'40,2',40200", ".5,500", "500,500000"})
    void point_and_comma_mean_the_same(String typed, int milligrams) {
        assertThat(WeightText.milligrams(typed)).isEqualTo(milligrams);
    }

    @ParameterizedTest
    @CsvSource({
        "240000,04:00",
        "239999,03:59",
        "1,00:00",
        "0,00:00",
        "-1,+00:01",
        "-1000,+00:01",
        "-130000,+02:10",
        "3599999,59:59",
        "3600000,1:00 h",
        "-3900000,+1:05 h"
    })
    void a_countdown_never_tells_more_than_there_is(long millisLeft, String text) {
        assertThat(TimeText.left(NOON.plusMillis(millisLeft), NOON)).isEqualTo(text);
    }

    @Test
    void times_are_told_in_the_salons_zone() {
        ZoneId london = ZoneId.of("Europe/London");
        assertThat(TimeText.minute(NOON, london)).isEqualTo("12:00");
        assertThat(TimeText.clock(NOON, london)).isEqualTo("Fri 14 May  12:00:00");
    }

    @Test
    void long_sentences_break_at_blanks_and_long_words_in_pieces() {
        assertThat(LineWrap.wrap("one two three", 7)).containsExactly("one two", "three");
        assertThat(LineWrap.wrap("abcdefghij k", 4)).containsExactly("abcd", "efgh", "ij k");
        assertThat(LineWrap.wrap("  ", 4)).isEmpty();
    }
}
