package stirtide.planner.allowance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Update, prediction and quantiles against published worked examples, tables and certified data sets. */
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
        assertThat(after.meanQuantile(0.025)).isCloseTo(39.93192385, within(5e-9));
        assertThat(after.meanQuantile(0.975)).isCloseTo(51.75373652, within(5e-9));
        assertThat(after.predictiveQuantile(0.05)).isCloseTo(9.592311336, within(5e-10));
        assertThat(after.predictiveQuantile(0.5)).isCloseTo(45.842830189, within(5e-10));
        assertThat(after.predictiveQuantile(0.8)).isCloseTo(64.211472163, within(5e-10));
        assertThat(after.predictiveQuantile(0.9)).isCloseTo(73.940465638, within(5e-10));
        assertThat(after.predictiveQuantile(0.95)).isCloseTo(82.093349042, within(5e-10));
        assertThat(TDistribution.of(after.freedom()).inverseCumulativeProbability(0.975))
                .isCloseTo(2.006646805061688, within(1e-10));
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
        assertThat(after.meanQuantile(0.025)).isCloseTo(1.726777541628, within(5e-13));
        assertThat(after.meanQuantile(0.975)).isCloseTo(1.901222458372, within(5e-13));
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

    /** NIST/SEMATECH e-Handbook 1.3.6.7.2, upper critical values of Student's t; half the last printed digit. */
    @ParameterizedTest
    @CsvSource({
        "1,3.078,6.314,12.706,31.821,63.657", "2,1.886,2.920,4.303,6.965,9.925", "5,1.476,2.015,2.571,3.365,4.032",
        "9,1.383,1.833,2.262,2.821,3.250", "10,1.372,1.812,2.228,2.764,3.169", "20,1.325,1.725,2.086,2.528,2.845",
        "30,1.310,1.697,2.042,2.457,2.750", "100,1.290,1.660,1.984,2.364,2.626"
    })
    void student_quantiles_are_the_printed_ones(
            double freedom, double p90, double p95, double p975, double p99, double p995) {
        TDistribution student = TDistribution.of(freedom);
        assertThat(student.inverseSurvivalProbability(0.10)).isCloseTo(p90, within(0.0005));
        assertThat(student.inverseSurvivalProbability(0.05)).isCloseTo(p95, within(0.0005));
        assertThat(student.inverseSurvivalProbability(0.025)).isCloseTo(p975, within(0.0005));
        assertThat(student.inverseSurvivalProbability(0.01)).isCloseTo(p99, within(0.0005));
        assertThat(student.inverseSurvivalProbability(0.005)).isCloseTo(p995, within(0.0005));
    }

    /**
     * The 0.001 column of the same table and its last row, the normal. The column is printed less carefully: up to one in
     * the last digit off, and 318.313 where the exact value for one degree of freedom is 318.309.
     */
    @ParameterizedTest
    @CsvSource({
        "1,318.313,0.0045",
        "2,22.327,0.0015",
        "5,5.893,0.0015",
        "9,4.296,0.0015",
        "10,4.143,0.0015",
        "20,3.552,0.0015",
        "30,3.385,0.0015",
        "100,3.174,0.0015"
    })
    void student_quantiles_far_out_are_the_printed_ones(double freedom, double p999, double tolerance) {
        assertThat(TDistribution.of(freedom).inverseSurvivalProbability(0.001)).isCloseTo(p999, within(tolerance));
    }

    /** Fractions a manager may set, by the standard normal; computed, the table does not print them. */
    @ParameterizedTest
    @CsvSource({"0.75,0.6744897501960817", "0.80,0.8416212335729143", "0.85,1.0364333894937898"})
    void normal_quantiles_between_are_the_computed_ones(double probability, double computed) {
        assertThat(NormalDistribution.of(0, 1).inverseCumulativeProbability(probability))
                .isCloseTo(computed, within(1e-12));
    }

    /** Last row of the same table, three digits printed; the digits beyond are computed. */
    @ParameterizedTest
    @CsvSource({
        "0.90,1.282,1.2815515655446004", "0.95,1.645,1.6448536269514722", "0.975,1.960,1.959963984540054",
        "0.99,2.326,2.3263478740408408", "0.995,2.576,2.5758293035489004", "0.999,3.090,3.090232306167813"
    })
    void normal_quantiles_are_the_printed_ones(double probability, double printed, double computed) {
        double quantile = NormalDistribution.of(0, 1).inverseCumulativeProbability(probability);
        assertThat(quantile).isCloseTo(printed, within(0.0005)).isCloseTo(computed, within(1e-12));
    }

    /** NIST TN 1297, table B.1: two-sided, for the fractions of one, two and three standard deviations and 95 %. */
    @ParameterizedTest
    @CsvSource({"1,1.84,12.71,13.97,235.80", "10,1.05,2.23,2.28,3.96"})
    void coverage_factors_are_the_printed_ones(double freedom, double one, double p95, double two, double three) {
        assertThat(twoSided(freedom, sigmas(1))).isCloseTo(one, within(0.005));
        assertThat(twoSided(freedom, 0.95)).isCloseTo(p95, within(0.005));
        assertThat(twoSided(freedom, sigmas(2))).isCloseTo(two, within(0.005));
        assertThat(twoSided(freedom, sigmas(3))).isCloseTo(three, within(0.005));
    }

    /** Last row of the same table, for any number of observations: the normal. */
    @Test
    void coverage_factors_without_end_are_those_of_the_normal() {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        double[][] printed = {{0.6827, 1.000}, {0.95, 1.960}, {0.9545, 2.000}, {0.9973, 3.000}};
        for (double[] row : printed)
            assertThat(normal.inverseSurvivalProbability((1 - row[0]) / 2)).isCloseTo(row[1], within(0.0005));
    }

    private static double twoSided(double freedom, double fraction) {
        return TDistribution.of(freedom).inverseSurvivalProbability((1 - fraction) / 2);
    }

    private static double sigmas(double count) {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        return normal.cumulativeProbability(count) - normal.cumulativeProbability(-count);
    }

    /** R 2.9.2 values for 5 degrees of freedom, from the tests of a general statistics library; 14 digits. */
    @ParameterizedTest
    @CsvSource({
        "0.90,1.4758840488244804",
        "0.95,2.0150483733330224",
        "0.975,2.5705818356363137",
        "0.99,3.3649299989072174",
        "0.999,5.8934295313560083"
    })
    void student_quantiles_are_exact_to_many_digits(double probability, double quantile) {
        assertThat(TDistribution.of(5).inverseCumulativeProbability(probability))
                .isCloseTo(quantile, within(1e-10));
    }

    /** Same tests: variance 5/3 for 5 degrees of freedom; the function itself at 1 and 2 for variance 1.25, which is 10. */
    @Test
    void student_variance_and_probabilities_are_the_printed_ones() {
        assertThat(TDistribution.of(5).getVariance()).isCloseTo(5.0 / 3, within(1e-14));
        TDistribution ten = TDistribution.of(10);
        assertThat(ten.getVariance()).isCloseTo(1.25, within(1e-14));
        assertThat(ten.cumulativeProbability(1)).isCloseTo(0.829553433848969956621, within(1e-14));
        assertThat(ten.cumulativeProbability(2)).isCloseTo(0.963305982614629741079, within(1e-14));
    }

    /** R values for mean 2.1 and variance 1.96, and for a log-normal (1, 0.5), from the same tests. */
    @Test
    void normal_and_log_normal_values_are_the_printed_ones() {
        NormalDistribution normal = NormalDistribution.of(2.1, 1.4);
        assertThat(normal.inverseCumulativeProbability(0.90)).isCloseTo(3.89417219176244, within(1e-12));
        assertThat(normal.inverseCumulativeProbability(0.975)).isCloseTo(4.843949578356074, within(1e-12));
        assertThat(normal.inverseCumulativeProbability(0.95)).isCloseTo(4.40279507773206, within(1e-12));
        assertThat(normal.inverseCumulativeProbability(0.99)).isCloseTo(5.35688702365718, within(1e-12));
        assertThat(normal.inverseCumulativeProbability(0.999)).isCloseTo(6.42632522863494, within(1e-12));
        LogNormalDistribution grams = LogNormalDistribution.of(1, 0.5);
        assertThat(grams.getMean()).isCloseTo(3.080216848918031, within(1e-14));
        assertThat(grams.getVariance()).isCloseTo(2.694758124344946, within(1e-14));
        assertThat(grams.cumulativeProbability(1)).isCloseTo(0.022750131948179195, within(1e-14));
        assertThat(grams.cumulativeProbability(3)).isCloseTo(0.57817410080287324, within(1e-14));
        assertThat(grams.cumulativeProbability(2)).isCloseTo(0.26970493073490953, within(1e-14));
        assertThat(grams.cumulativeProbability(5)).isCloseTo(0.88855433670680750, within(1e-14));
    }
}
