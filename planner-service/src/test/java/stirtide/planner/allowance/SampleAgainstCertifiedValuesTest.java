package stirtide.planner.allowance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Means and standard deviations against the certified values of NIST StRD, univariate summary statistics. */
class SampleAgainstCertifiedValuesTest {
    private static final String MAVRO =
            "180 170 180 190 180 170 150 140 150 150 170 180 180 190 190 210 200 160 140 130"
                    + " 130 150 150 160 150 140 130 140 150 140 150 160 150 160 190 200 200 210 220 230 240 250 270 260 260 260"
                    + " 270 260 250 240";
    private static final String MICHELSO =
            "85 74 90 107 93 85 95 98 98 88 100 98 93 65 76 81 100 100 96 96 96 94 96 94 88"
                    + " 80 85 88 90 84 83 79 81 88 88 83 80 79 76 80 88 88 88 86 72 72 62 86 97 95 88 91 85 87 84 84 85 84 84 84"
                    + " 89 81 81 82 80 77 76 74 75 76 91 92 89 86 88 72 84 85 85 78 89 84 78 81 76 81 79 81 82 85 87 87 81 74 81"
                    + " 94 95 80 81 87";

    private static double[] values(String text, double base, double unit) {
        return Arrays.stream(text.split(" "))
                .mapToDouble(digits -> base + Integer.parseInt(digits) * unit)
                .toArray();
    }

    private static double deviation(WeightedSample sample) {
        return Math.sqrt(sample.squares() / (sample.weight() - 1));
    }

    /** Certified to 15 digits; the values themselves are rounded to doubles, so 1e-12 is asked of the deviation. */
    @Test
    void mavro_has_the_certified_mean_and_deviation() {
        WeightedSample sample = WeightedSample.of(values(MAVRO, 2.0, 1e-5));
        assertThat(sample.weight()).isEqualTo(50);
        assertThat(sample.mean()).isCloseTo(2.001856, within(1e-14));
        assertThat(deviation(sample)).isCloseTo(0.000429123454003053, within(1e-14));
    }

    @Test
    void michelso_has_the_certified_mean_and_deviation() {
        WeightedSample sample = WeightedSample.of(values(MICHELSO, 299.0, 0.01));
        assertThat(sample.weight()).isEqualTo(100);
        assertThat(sample.mean()).isCloseTo(299.8524, within(1e-12));
        assertThat(deviation(sample)).isCloseTo(0.0790105478190518, within(1e-12));
    }

    @Test
    void numacc1_is_exact() {
        WeightedSample sample = WeightedSample.of(10000001, 10000003, 10000002);
        assertThat(sample.mean()).isEqualTo(10000002);
        assertThat(deviation(sample)).isEqualTo(1);
    }

    /**
     * NumAcc2, 3 and 4: one value x.2, then 500 pairs x.1 and x.3 (the pattern is from memory). A double holds
     * 10000000.1 to 1e-9 only, so the certified 0.1 can be met to about 1e-8 there and no better.
     */
    @ParameterizedTest
    @CsvSource({"1,1e-14,1e-14", "1000000,1e-9,1e-10", "10000000,1e-8,2e-9"})
    void numacc_sets_keep_their_deviation_far_from_zero(double base, double meanTolerance, double deviationTolerance) {
        double[] values = new double[1001];
        values[0] = base + 0.2;
        for (int i = 1; i < values.length; i++) values[i] = base + (i % 2 == 1 ? 0.1 : 0.3);
        WeightedSample sample = WeightedSample.of(values);
        assertThat(sample.mean()).isCloseTo(base + 0.2, within(meanTolerance));
        assertThat(deviation(sample)).isCloseTo(0.1, within(deviationTolerance));
    }
}
