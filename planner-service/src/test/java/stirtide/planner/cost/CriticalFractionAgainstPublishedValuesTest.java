package stirtide.planner.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The critical fraction against newsvendor examples of textbooks, and against two printed answers that are wrong. */
class CriticalFractionAgainstPublishedValuesTest {
    private static double fraction(String shortage, String over) {
        return CriticalFraction.of(new BigDecimal(shortage), new BigDecimal(over))
                .doubleValue();
    }

    /**
     * Cachon and Terwiesch, Matching Supply with Demand, 3rd ed., Q12.1 d: fraction 0.6667; the printed 235.2 comes from
     * rounding z up to 0.44 in a table, hence 0.8 of tolerance there (0.01 x 80); exact 234.458 is computed.
     */
    @Test
    void cachon_and_terwiesch_come_out() {
        double fraction = fraction("8", "4");
        assertThat(fraction).isCloseTo(0.6667, within(0.00005));
        double order = NormalDistribution.of(200, 80).inverseCumulativeProbability(fraction);
        assertThat(order).isCloseTo(234.458, within(0.0005)).isCloseTo(235.2, within(0.8));
    }

    /** Same solution, a to c: P(D > 400), P(D < 100), P(160 <= D <= 240), printed to four decimals. */
    @Test
    void cachon_and_terwiesch_probabilities_come_out() {
        NormalDistribution demand = NormalDistribution.of(200, 80);
        assertThat(demand.survivalProbability(400)).isCloseTo(0.0062, within(0.00005));
        assertThat(demand.cumulativeProbability(100)).isCloseTo(0.1056, within(0.00005));
        // 0.3829 exactly: the book adds up two figures rounded in its table, so one in the last digit is let be
        assertThat(demand.probability(160, 240)).isCloseTo(0.3830, within(0.0001));
    }

    /**
     * Nahmias, Production and Operations Analysis: N(11.73, 4.74), costs 0.50 and 0.15 (costs from memory); printed are a
     * fraction of 0.77 and an order of about 15.
     */
    @Test
    void nahmias_comes_out() {
        double fraction = fraction("0.50", "0.15");
        assertThat(fraction).isCloseTo(0.77, within(0.005));
        assertThat(NormalDistribution.of(11.73, 4.74).inverseCumulativeProbability(fraction))
                .isCloseTo(15, within(0.5));
    }

    /**
     * Snyder and Shen, example 4.3: expected cost 1.997605193176645 at the best order, 7.356131552870388 at 40,
     * 2.156131552870388 at 60; example 4.2 (revenue 1, cost 0.30, salvage 0.12): profit 33.002394806823354.
     */
    @Test
    void the_fraction_gives_the_printed_least_cost() {
        NormalDistribution demand = NormalDistribution.of(50, 8);
        double best = demand.inverseCumulativeProbability(fraction("0.70", "0.18"));
        assertThat(cost(demand, best, 0.70, 0.18)).isCloseTo(1.997605193176645, within(1e-10));
        assertThat(cost(demand, 40, 0.70, 0.18)).isCloseTo(7.356131552870388, within(1e-12));
        assertThat(cost(demand, 60, 0.70, 0.18)).isCloseTo(2.156131552870388, within(1e-12));
        assertThat(50 * 0.70 - cost(demand, best, 0.70, 0.18)).isCloseTo(33.002394806823354, within(1e-10));
    }

    private static double cost(NormalDistribution demand, double order, double shortage, double over) {
        double z = (order - demand.getMean()) / demand.getStandardDeviation();
        NormalDistribution standard = NormalDistribution.of(0, 1);
        double loss = standard.density(z) - z * standard.survivalProbability(z);
        return demand.getStandardDeviation() * (over * (z + loss) + shortage * loss);
    }

    /**
     * Same book, 4.7 (Poisson 6: 3.570106945770946 at 8, 6.590296024616344 at 5), 4.8 a (Poisson 18: 786.0884409 at 19,
     * 1445.751063 at 13) and 4.7 b (table: 1,225,000 at 5, 1,725,000 at 3).
     */
    @Test
    void counted_demand_has_the_printed_costs() {
        assertThat(cost(poisson(6), 8, 4, 1)).isCloseTo(3.570106945770946, within(1e-12));
        assertThat(cost(poisson(6), 5, 4, 1)).isCloseTo(6.590296024616344, within(1e-12));
        assertThat(cost(poisson(18), 19, 270, 200)).isCloseTo(786.0884409, within(5e-8));
        assertThat(cost(poisson(18), 13, 270, 200)).isCloseTo(1445.751063, within(5e-7));
        double[] table = {0, .25, .05, .10, .20, .15, .10, .10, .05};
        assertThat(cost(table, 5, 1_000_000, 500_000)).isCloseTo(1_225_000, within(1e-6));
        assertThat(cost(table, 3, 1_000_000, 500_000)).isCloseTo(1_725_000, within(1e-6));
    }

    private static double[] poisson(double mean) {
        double[] probability = new double[200];
        for (int i = 0; i < probability.length; i++)
            probability[i] = PoissonDistribution.of(mean).probability(i);
        return probability;
    }

    private static double cost(double[] probability, int order, double shortage, double over) {
        double cost = 0;
        for (int demand = 0; demand < probability.length; demand++)
            cost += probability[demand] * (demand > order ? shortage * (demand - order) : over * (order - demand));
        return cost;
    }

    /** Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., example 4.3: h 0.18, p 0.70, N(50, 8). */
    @Test
    void snyder_and_shen_come_out_for_normal_demand() {
        double order = NormalDistribution.of(50, 8).inverseCumulativeProbability(fraction("0.70", "0.18"));
        // the fraction is kept to six decimals: 5e-7 / density(0.82) * 8 is below 2e-5
        assertThat(order).isCloseTo(56.60395592743389, within(2e-5));
    }

    /** Same book, examples 4.7 (h 1, p 4, Poisson 6) and problem 4.8 a (h 200, p 270, Poisson 18). */
    @ParameterizedTest
    @CsvSource({"4,1,6,8", "270,200,18,19"})
    void snyder_and_shen_come_out_for_counted_demand(String shortage, String over, double mean, int order) {
        assertThat(PoissonDistribution.of(mean).inverseCumulativeProbability(fraction(shortage, over)))
                .isEqualTo(order);
    }

    /** Same book, problem 4.7 b: order 5 from a printed table of demand. */
    @Test
    void snyder_and_shen_come_out_for_a_table_of_demand() {
        double[] probability = {.25, .05, .10, .20, .15, .10, .10, .05};
        double fraction = fraction("1000000", "500000");
        double below = 0;
        int order = 0;
        while (below < fraction) below += probability[order++];
        assertThat(order).isEqualTo(5);
    }

    /** Brandimarte, Quantitative Methods (title from memory): 5/12 is below one half, so order below the mean. */
    @Test
    void a_fraction_below_one_half_orders_below_the_mean() {
        double fraction = fraction("5", "7");
        assertThat(fraction).isCloseTo(5.0 / 12, within(1e-6));
        assertThat(NormalDistribution.of(10_000, 2_000).inverseCumulativeProbability(fraction))
                .isCloseTo(9579.14, within(0.01));
    }

    /** Printed wrong: qammunity.org/6843903 takes z = +0.3853 at 0.35, so 92.6; right is below the mean, 68.7. */
    @Test
    void the_wrong_sign_of_a_printed_answer_is_not_repeated() {
        double order = NormalDistribution.of(80, 30).inverseCumulativeProbability(0.353);
        assertThat(order).isCloseTo(68.7, within(0.05)).isLessThan(80);
    }

    /** Printed wrong: jiskha.com/questions/1187030 uses over / (over + shortage) = 0.1111; right is 480/540, 273.2. */
    @Test
    void the_turned_fraction_of_a_printed_answer_is_not_repeated() {
        double fraction = fraction("480", "60");
        assertThat(fraction).isCloseTo(0.8889, within(0.00005));
        assertThat(NormalDistribution.of(200, 60).inverseCumulativeProbability(fraction))
                .isCloseTo(273.2, within(0.05));
    }

    @Test
    void costs_of_zero_are_refused() {
        assertThatThrownBy(() -> fraction("0", "1")).hasMessageContaining("above 0");
    }
}
