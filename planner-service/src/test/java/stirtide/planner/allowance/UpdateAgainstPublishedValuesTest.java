package stirtide.planner.allowance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Update, prediction and quantiles against published worked examples and tables. */
class UpdateAgainstPublishedValuesTest {
    private static final double[] TAP_WATER = {
        34.38, 39.33, 108.63, 88, 81, 49.25, 75, 82.86, 85, 86.6, 70, 81, 17.46, 50, 70.5, 58.38, 35.3, 45, 53, 38.75,
        38, 31.69, 49, 34, 44, 50, 23.54, 35
    };
    private static final double[] MIDGE = {1.64, 1.70, 1.72, 1.74, 1.82, 1.82, 1.82, 1.90, 2.08};

    /**
     * Clyde et al., An Introduction to Bayesian Thinking, chapter 4 (data: statsr, tapwater). The book prints 28, 55.5,
     * 540.7, 53, 45.8, 52, 459.9; the digits beyond are computed from its data, so the tolerance is that of doubles.
     */
    @Test
    void tap_water_gives_the_printed_posterior() {
        WeightedSample sample = WeightedSample.of(TAP_WATER);
        assertThat(sample.mean()).isCloseTo(55.523928571428584, within(1e-12));
        assertThat(sample.squares() / 27).isCloseTo(540.7478691798941, within(1e-10));
        NormalInverseGamma after = new NormalInverseGamma(35, 25, 24, 156.25).updated(sample);
        assertThat(after.weight()).isEqualTo(53);
        assertThat(after.freedom()).isEqualTo(52);
        assertThat(after.mean()).isCloseTo(45.842830188679244, within(1e-12));
        assertThat(after.variance()).isCloseTo(459.8774860667635, within(1e-10)).isCloseTo(459.9, within(0.05));
    }

    /** Same source; P(Y > 80) is printed as approximately 0.06, the digits beyond are computed. */
    @Test
    void tap_water_gives_the_printed_prediction() {
        NormalInverseGamma after = new NormalInverseGamma(35, 25, 24, 156.25).updated(WeightedSample.of(TAP_WATER));
        assertThat(after.predictiveScale()).isCloseTo(21.646117891348, within(1e-11));
        assertThat(after.predictiveQuantile(0.05)).isCloseTo(9.592311336, within(5e-10));
        assertThat(after.predictiveQuantile(0.5)).isCloseTo(45.842830189, within(5e-10));
        assertThat(after.predictiveQuantile(0.8)).isCloseTo(64.211472163, within(5e-10));
        assertThat(after.predictiveQuantile(0.9)).isCloseTo(73.940465638, within(5e-10));
        assertThat(after.predictiveQuantile(0.95)).isCloseTo(82.093349042, within(5e-10));
        assertThat(after.probabilityAbove(80))
                .isCloseTo(0.060317293902, within(5e-13))
                .isCloseTo(0.06, within(0.005));
    }

    /**
     * Hoff, A First Course in Bayesian Statistical Methods, section 5.3. The posterior as printed (1.814, 0.015) is from
     * memory; the digits beyond are computed from the data.
     */
    @Test
    void midge_wings_give_the_printed_posterior_and_prediction() {
        NormalInverseGamma after = new NormalInverseGamma(1.9, 1, 1, 0.01).updated(WeightedSample.of(MIDGE));
        assertThat(WeightedSample.of(MIDGE).mean()).isCloseTo(1.8044444444444447, within(1e-14));
        assertThat(WeightedSample.of(MIDGE).squares() / 8).isCloseTo(0.016877777777777787, within(1e-14));
        assertThat(after.weight()).isEqualTo(10);
        assertThat(after.freedom()).isEqualTo(10);
        // alpha = v / 2 and beta = v s2 / 2 of the other notation (Murphy, Conjugate Bayesian analysis, 2007; from
        // memory)
        assertThat(after.freedom() / 2).isEqualTo(5);
        assertThat(after.freedom() * after.variance() / 2).isCloseTo(0.07662, within(1e-14));
        assertThat(after.mean()).isCloseTo(1.814, within(1e-14));
        assertThat(after.variance()).isCloseTo(0.015324, within(1e-14));
        assertThat(after.predictiveScale()).isCloseTo(0.129832199396, within(5e-13));
        assertThat(after.predictiveQuantile(0.05)).isCloseTo(1.578684186, within(5e-10));
        assertThat(after.predictiveQuantile(0.8)).isCloseTo(1.928130011, within(5e-10));
        assertThat(after.predictiveQuantile(0.9)).isCloseTo(1.992153620, within(5e-10));
        assertThat(after.predictiveQuantile(0.95)).isCloseTo(2.049315814, within(5e-10));
    }

    /** Two visits at once or one after the other teach the same: follows from the update formulas. */
    @Test
    void updates_one_by_one_and_at_once_agree() {
        NormalInverseGamma once = new NormalInverseGamma(1.9, 1, 1, 0.01).updated(WeightedSample.of(MIDGE));
        NormalInverseGamma step = new NormalInverseGamma(1.9, 1, 1, 0.01);
        for (double wing : MIDGE) step = step.updated(WeightedSample.of(wing));
        assertThat(step.mean()).isCloseTo(once.mean(), within(1e-13));
        assertThat(step.variance()).isCloseTo(once.variance(), within(1e-13));
    }

    /**
     * NIST/SEMATECH e-Handbook 1.3.6.7.2, upper critical values of Student's t; half the last printed digit. With mean 0,
     * weight 1 and variance 1/2 the next value is predicted by the standard Student t.
     */
    @ParameterizedTest
    @CsvSource({
        "1,3.078,6.314,12.706,31.821,63.657", "2,1.886,2.920,4.303,6.965,9.925", "5,1.476,2.015,2.571,3.365,4.032",
        "9,1.383,1.833,2.262,2.821,3.250", "10,1.372,1.812,2.228,2.764,3.169", "20,1.325,1.725,2.086,2.528,2.845",
        "30,1.310,1.697,2.042,2.457,2.750", "100,1.290,1.660,1.984,2.364,2.626"
    })
    void predictions_follow_the_printed_student_table(
            double freedom, double p90, double p95, double p975, double p99, double p995) {
        var standard = new NormalInverseGamma(0, 1, freedom, 0.5);
        assertThat(standard.predictiveQuantile(0.90)).isCloseTo(p90, within(0.0005));
        assertThat(standard.predictiveQuantile(0.95)).isCloseTo(p95, within(0.0005));
        assertThat(standard.predictiveQuantile(0.975)).isCloseTo(p975, within(0.0005));
        assertThat(standard.predictiveQuantile(0.99)).isCloseTo(p99, within(0.0005));
        assertThat(standard.predictiveQuantile(0.995)).isCloseTo(p995, within(0.0005));
    }
}
