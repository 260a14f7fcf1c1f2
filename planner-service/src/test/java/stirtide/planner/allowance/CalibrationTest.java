package stirtide.planner.allowance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** On 2,000 simulated salons with known truth the share of zones that run short is the one that was set. */
class CalibrationTest {
    private static final List<SimulatedSalons.Salon> SALONS = SimulatedSalons.salons(2000, 20, 7);

    @ParameterizedTest
    @ValueSource(ints = {700, 800, 900})
    void zones_run_short_as_often_as_set(int permille) {
        AllowanceSettings settings = new AllowanceSettings(permille, 1, 3, 200, 500, 0);
        double set = 1 - permille / 1000.0;
        assertThat(SimulatedSalons.shareShort(SALONS, 20, settings)).isCloseTo(set, within(0.01));
        assertThat(SimulatedSalons.shareShort(SALONS, 5, settings)).isCloseTo(set, within(0.04));
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 20})
    void learned_allowances_leave_less_over_than_a_fixed_amount_that_runs_short_as_often(int visits) {
        AllowanceSettings settings = new AllowanceSettings(800, 1, 3, 200, 500, 0);
        double fixed =
                SimulatedSalons.fixedAmountWithShare(SALONS, SimulatedSalons.shareShort(SALONS, visits, settings));
        double[] saved = SimulatedSalons.savedGrams(SALONS, fixed, visits, settings);
        assertThat(saved[0] - saved[1]).isPositive();
    }

    /** However much clients differ: the share set for it is only where learning starts. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.5, 0.7})
    void a_client_who_comes_again_runs_short_as_often_as_set(double trueShare) {
        AllowanceSettings settings = new AllowanceSettings(800, 1, 3, 200, 500, 0);
        assertThat(SimulatedClients.shareShort(1000, 5, trueShare, settings, 9)).isCloseTo(0.2, within(0.04));
        assertThat(SimulatedClients.shareShort(600, 20, trueShare, settings, 9)).isCloseTo(0.2, within(0.01));
    }
}
