package stirtide.demo.print;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordingTest {
    // 3 % = 10 vol: A Handbook of Useful Drugs, American Medical Association; 6 % = 20 vol and 9 % = 30 vol: product
    // characteristics of licensed peroxide solutions (UK); 12 % = 40 vol: Regulation (EC) No 1223/2009, Annex III, 12.
    @ParameterizedTest
    @CsvSource({"300, 10 vol (3 %)", "600, 20 vol (6 %)", "900, 30 vol (9 %)", "1200, 40 vol (12 %)"})
    void published_strengths_are_worded_with_volumes_and_per_cent(int strengthHundredths, String words) {
        assertThat(Wording.strength(strengthHundredths)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"450, 15 vol (4.5 %)", "748, 24.9 vol (7.48 %)"})
    void blended_strengths_keep_one_decimal_of_volumes(int strengthHundredths, String words) {
        assertThat(Wording.strength(strengthHundredths)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"40000, 40.0 g", "12340, 12.34 g", "5, 0.005 g", "0, 0.0 g"})
    void grams_keep_every_digit_of_the_milligrams(long milligrams, String words) {
        assertThat(Wording.grams(milligrams)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"2000, 1:2", "1500, 1:1.5", "1850, 1:1.85"})
    void ratios_name_the_lightener_first(int ratioThousandths, String words) {
        assertThat(Wording.ratio(ratioThousandths)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"2004, 1:2", "1995, 1:2", "2459, 1:2.46"})
    void ratios_of_a_mix_are_rounded_to_two_decimals(int ratioThousandths, String words) {
        assertThat(Wording.roundRatio(ratioThousandths)).isEqualTo(words);
    }
}
