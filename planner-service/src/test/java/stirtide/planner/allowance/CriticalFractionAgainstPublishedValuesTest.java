package stirtide.planner.allowance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import stirtide.planner.cost.CriticalFraction;

/** Fraction and planned quantity against newsvendor examples of textbooks, and against two printed answers that are wrong. */
class CriticalFractionAgainstPublishedValuesTest {
    private static double fraction(String shortage, String over) {
        return CriticalFraction.of(new BigDecimal(shortage), new BigDecimal(over))
                .doubleValue();
    }

    /**
     * What is planned for demand with this mean and standard deviation. So many earlier observations are assumed that
     * the Student t of the prediction is a normal distribution to about 1e-8.
     */
    private static double quantity(double mean, double deviation, double fraction) {
        double observations = 1e9;
        return new NormalInverseGamma(mean, observations, observations, deviation * deviation)
                .predictiveQuantile(fraction);
    }

    /**
     * Cachon and Terwiesch, Matching Supply with Demand, 3rd ed., Q12.1 d: fraction 0.6667; the printed 235.2 comes from
     * rounding z up to 0.44 in a table, hence 0.8 of tolerance there (0.01 x 80); exact 234.458 is computed.
     */
    @Test
    void cachon_and_terwiesch_come_out() {
        double fraction = fraction("8", "4");
        assertThat(fraction).isCloseTo(0.6667, within(0.00005));
        double order = quantity(200, 80, fraction);
        assertThat(order).isCloseTo(234.458, within(0.0005)).isCloseTo(235.2, within(0.8));
    }

    /**
     * Nahmias, Production and Operations Analysis: N(11.73, 4.74), costs 0.50 and 0.15 (costs from memory); printed are a
     * fraction of 0.77 and an order of about 15.
     */
    @Test
    void nahmias_comes_out() {
        double fraction = fraction("0.50", "0.15");
        assertThat(fraction).isCloseTo(0.77, within(0.005));
        assertThat(quantity(11.73, 4.74, fraction)).isCloseTo(15, within(0.5));
    }

    /** Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., example 4.3: h 0.18, p 0.70, N(50, 8). */
    @Test
    void snyder_and_shen_come_out_for_normal_demand() {
        double order = quantity(50, 8, fraction("0.70", "0.18"));
        // the fraction is kept to six decimals: 5e-7 / density(0.82) * 8 is below 2e-5
        assertThat(order).isCloseTo(56.60395592743389, within(2e-5));
    }

    /** Brandimarte, Quantitative Methods (title from memory): 5/12 is below one half, so order below the mean. */
    @Test
    void a_fraction_below_one_half_orders_below_the_mean() {
        double fraction = fraction("5", "7");
        assertThat(fraction).isCloseTo(5.0 / 12, within(1e-6));
        assertThat(quantity(10_000, 2_000, fraction)).isCloseTo(9579.14, within(0.01));
    }

    /** Printed wrong: qammunity.org/6843903 takes z = +0.3853 at 0.35, so 92.6; right is below the mean, 68.7. */
    @Test
    void the_wrong_sign_of_a_printed_answer_is_not_repeated() {
        double order = quantity(80, 30, 0.353);
        assertThat(order).isCloseTo(68.7, within(0.05)).isLessThan(80);
    }

    /** Printed wrong: jiskha.com/questions/1187030 uses over / (over + shortage) = 0.1111; right is 480/540, 273.2. */
    @Test
    void the_turned_fraction_of_a_printed_answer_is_not_repeated() {
        double fraction = fraction("480", "60");
        assertThat(fraction).isCloseTo(0.8889, within(0.00005));
        assertThat(quantity(200, 60, fraction)).isCloseTo(273.2, within(0.05));
    }

    @Test
    void costs_of_zero_are_refused() {
        assertThatThrownBy(() -> fraction("0", "1")).hasMessageContaining("above 0");
    }
}
