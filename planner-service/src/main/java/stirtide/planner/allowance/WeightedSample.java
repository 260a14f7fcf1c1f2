package stirtide.planner.allowance;

import java.util.Arrays;

/**
 * Weighted values boiled down to what an update needs.
 *
 * @param weight sum of weights
 * @param mean weighted mean, 0 when there are no values
 * @param squares weighted sum of squared distances from the mean
 */
record WeightedSample(double weight, double mean, double squares) {
    /** Two passes, so that values far from zero keep their spread. */
    static WeightedSample of(double[] values, double[] weights) {
        double weight = 0;
        double rough = 0;
        for (int i = 0; i < values.length; i++) {
            weight += weights[i];
            rough += weights[i] * (values[i] - values[0]);
        }
        if (weight == 0) return new WeightedSample(0, 0, 0);
        double mean = values[0] + rough / weight;
        double rest = 0;
        double squares = 0;
        for (int i = 0; i < values.length; i++) {
            double distance = values[i] - mean;
            rest += weights[i] * distance;
            squares += weights[i] * distance * distance;
        }
        return new WeightedSample(weight, mean + rest / weight, squares - rest * rest / weight);
    }

    static WeightedSample of(double... values) {
        double[] weights = new double[values.length];
        Arrays.fill(weights, 1);
        return of(values, weights);
    }
}
