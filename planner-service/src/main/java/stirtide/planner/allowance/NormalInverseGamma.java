package stirtide.planner.allowance;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * What is known of a normal quantity whose mean and variance are both unknown. Update and prediction as in Clyde et
 * al., An Introduction to Bayesian Thinking, chapter 4.
 *
 * @param mean expected mean
 * @param weight observations the knowledge of the mean is worth, more than 0
 * @param freedom observations the knowledge of the variance is worth, more than 0
 * @param variance expected variance (squared scale of the Student t), more than 0
 */
record NormalInverseGamma(double mean, double weight, double freedom, double variance) {
    NormalInverseGamma {
        if (!(weight > 0 && freedom > 0 && variance > 0))
            throw new IllegalArgumentException(
                    "weight, freedom and variance must be above 0: " + weight + ", " + freedom + ", " + variance);
    }

    NormalInverseGamma updated(WeightedSample sample) {
        double nextWeight = weight + sample.weight();
        double nextFreedom = freedom + sample.weight();
        double away = sample.mean() - mean;
        double spread = sample.squares() + variance * freedom + weight * sample.weight() / nextWeight * away * away;
        return new NormalInverseGamma(
                (sample.weight() * sample.mean() + weight * mean) / nextWeight,
                nextWeight,
                nextFreedom,
                spread / nextFreedom);
    }

    /** Scale of the Student t that predicts the next value. */
    double predictiveScale() {
        return Math.sqrt(variance * (1 + 1 / weight));
    }

    /** Value that the next one stays below with this probability, 0 < probability < 1. */
    double predictiveQuantile(double probability) {
        return mean + predictiveScale() * TDistribution.of(freedom).inverseCumulativeProbability(probability);
    }

    /** Probability that the next value is above this one. */
    double probabilityAbove(double value) {
        return TDistribution.of(freedom).survivalProbability((value - mean) / predictiveScale());
    }
}
