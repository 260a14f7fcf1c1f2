package stirtide.mixing.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.mixing.strength.LegalLimits;

class AmountTextTest {
    /**
     * Regulation (EC) 1223/2009, Annex III, entry 12 (a): 12 % = 40 volumes. UK product texts: 6 % BP = 20 vol, 9 % = 30 vol.
     * AMA, A Handbook of Useful Drugs: 3 % = 10 vol.
     */
    @ParameterizedTest
    @CsvSource({"300,10 vol (3 %)", "600,20 vol (6 %)", "900,30 vol (9 %)", "1200,40 vol (12 %)"})
    void volumes_are_the_printed_ones(int hundredths, String text) {
        assertThat(AmountText.strength(hundredths)).isEqualTo(text);
        assertThat(LegalLimits.ON_HAIR_HUNDREDTHS).isEqualTo(1200);
    }

    @ParameterizedTest
    @CsvSource({
        "450,15 vol (4.5 %)",
        "550,18.3 vol (5.5 %)",
        "1050,35 vol (10.5 %)",
        "50,1.7 vol (0.5 %)",
        "0,0 vol (0 %)"
    })
    void volumes_are_rounded_to_tenths(int hundredths, String text) {
        assertThat(AmountText.strength(hundredths)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "52300,52.3 g,52.3 g,52.3 g",
        "40000,40 g,40.0 g,40.0 g",
        "12340,12.34 g,12.34 g,12.3 g",
        "5,0.005 g,0.005 g,0.0 g",
        "0,0 g,0.0 g,0.0 g",
        "12350,12.35 g,12.35 g,12.4 g",
        "-1500,-1.5 g,-1.5 g,-1.5 g"
    })
    void grams_are_exact_as_on_a_scale_or_rounded(long milligrams, String exact, String scale, String rounded) {
        assertThat(AmountText.grams(milligrams)).isEqualTo(exact);
        assertThat(AmountText.scaleGrams(milligrams)).isEqualTo(scale);
        assertThat(AmountText.roundedGrams(milligrams)).isEqualTo(rounded);
    }

    @ParameterizedTest
    @CsvSource({"1500,1:1.5", "2000,1:2", "1850,1:1.85", "1667,1:1.667", "10000,1:10"})
    void ratios_have_no_needless_zeros(int thousandths, String text) {
        assertThat(AmountText.ratio(thousandths)).isEqualTo(text);
    }
}
