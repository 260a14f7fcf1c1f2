package stirtide.planner.swatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.events.setup.MixStrip;

/** What two strips tell. */
class AlkalinityTest {
    private static Alkalinity.MoreAlkaline more(int first, int second, int step) {
        return (Alkalinity.MoreAlkaline)
                Alkalinity.compare(new StripReading(first, step), new StripReading(second, step));
    }

    /** Follows from the definition of pH (IUPAC Gold Book P04524): ten times a unit, a hundred times two units. */
    @ParameterizedTest
    @CsvSource({"100,90,10", "105,85,100", "85,105,100", "50,40,10", "60,40,100"})
    void a_unit_is_ten_times(int first, int second, int times) {
        assertThat(more(first, second, 5).times()).isEqualByComparingTo(BigDecimal.valueOf(times));
    }

    /**
     * OpenStax, Chemistry 2e, section 14.2: 1.2e-3 mol/L is pH 2.92 and 2.0e-6 is 5.70, a factor of 600. To the tenth a
     * strip could show, 2.9 and 5.7 give 10^2.8 = 631; rounding both to tenths may cost a factor of 10^0.1, a quarter.
     */
    @Test
    void printed_concentrations_have_the_printed_ratio() {
        assertThat(more(57, 29, 1).times().doubleValue()).isCloseTo(1.2e-3 / 2.0e-6, within(600 * 0.26));
        assertThat(more(57, 29, 1).atLeast().doubleValue()).isLessThan(600);
        assertThat(more(57, 29, 1).atMost().doubleValue()).isGreaterThan(600);
    }

    /** byjus.com, pH formula: 4.0e-8 mol/L is pH 7.40; pH 3.16 is 7.0e-4: a factor of 17,500 within the strip's range. */
    @Test
    void a_second_printed_pair_lies_within_the_range() {
        Alkalinity.MoreAlkaline answer = more(74, 32, 1);
        assertThat(7.0e-4 / 4.0e-8)
                .isBetween(answer.atLeast().doubleValue(), answer.atMost().doubleValue());
    }

    /**
     * Columns: pH in tenths and the printed concentration in mol/L of two mixes. OpenStax, Chemistry 2e, section 14.2 (7.3 is
     * 5e-8; 4e-3 is 2.4) and math.info, Calculating pH (4e-7 is 6.4; 3.1 is 7.94e-4). Rounding to a tenth costs a quarter
     * at each end, which is what the range of the answer says.
     */
    @ParameterizedTest
    @CsvSource({"73,5e-8,24,4e-3", "64,4e-7,31,7.94e-4", "73,5e-8,64,4e-7"})
    void printed_pairs_lie_within_the_range(int higher, double weaker, int lower, double stronger) {
        Alkalinity.MoreAlkaline answer = more(higher, lower, 1);
        assertThat(stronger / weaker)
                .isBetween(answer.atLeast().doubleValue(), answer.atMost().doubleValue());
    }

    @Test
    void the_sentence_gives_the_range_and_what_a_strip_cannot_tell() {
        assertThat(more(105, 95, 5).sentence())
                .startsWith("pH 10.5 is about 10 times as alkaline as pH 9.5, between 3.2 and 32 times")
                .contains("not how strong it is");
    }

    @Test
    void readings_closer_than_the_chart_are_not_compared() {
        Alkalinity answer = Alkalinity.compare(new StripReading(95, 10), new StripReading(100, 10));
        assertThat(answer)
                .isInstanceOfSatisfying(
                        Alkalinity.Indistinguishable.class,
                        not -> assertThat(not.sentence()).startsWith("The strips cannot tell"));
    }

    @Test
    void readings_out_of_range_are_refused() {
        assertThat(objection(141, 5)).contains("0 to 14");
        assertThat(objection(90, 0)).contains("0.1 to 2");
    }

    private static String objection(int tenths, int stepTenths) {
        return StripReading.objection(
                        new MixStrip(LocalDate.of(2027, 3, 1), "pale-clay", 2000, 600, tenths, stepTenths))
                .orElseThrow();
    }
}
