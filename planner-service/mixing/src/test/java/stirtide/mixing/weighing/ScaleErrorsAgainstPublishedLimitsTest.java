package stirtide.mixing.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.AccuracyClass;
import stirtide.events.setup.Scale.Range;
import stirtide.events.setup.Scale.Weighing;
import stirtide.events.view.ScaleCard.ScaleBand;
import stirtide.mixing.formula.FormulaSamples;

/** Largest permissible errors at the borders of OIML R 76-1:2006, table 6. */
class ScaleErrorsAgainstPublishedLimitsTest {
    /** Columns: class, load in e, limit in tenths of e. Exact. */
    @ParameterizedTest
    @CsvSource({
        "I,0,5",
        "I,50000,5",
        "I,50001,10",
        "I,200000,10",
        "I,200001,15",
        "II,0,5",
        "II,5000,5",
        "II,5001,10",
        "II,20000,10",
        "II,20001,15",
        "II,100000,15",
        "III,0,5",
        "III,500,5",
        "III,501,10",
        "III,2000,10",
        "III,2001,15",
        "III,10000,15",
        "IIII,0,5",
        "IIII,50,5",
        "IIII,51,10",
        "IIII,200,10",
        "IIII,201,15",
        "IIII,1000,15"
    })
    void limits_are_those_of_table_6(AccuracyClass accuracyClass, long intervals, long tenths) {
        long initial = ScaleErrors.permissibleHalfMilligrams(accuracyClass, 100, intervals * 100, false);
        assertThat(initial).isEqualTo(tenths * 100 * 2 / 10);
        // UK SI 1995/1907, schedule 2, 4.2: in service twice the limits of verification
        assertThat(ScaleErrors.permissibleHalfMilligrams(accuracyClass, 100, intervals * 100, true))
                .isEqualTo(2 * initial);
    }

    /** Computed from table 6 for two usual bar scales of class III; limits in milligrams, initial and in service. */
    @ParameterizedTest
    @CsvSource({
        "1000,30000,500,1000",
        "1000,500000,500,1000",
        "1000,501000,1000,2000",
        "1000,2000000,1000,2000",
        "1000,2001000,1500,3000",
        "100,50000,50,100",
        "100,60000,100,200",
        "100,200000,100,200",
        "100,201000,150,300"
    })
    void usual_scales_have_these_limits(int interval, long load, long initial, long inService) {
        assertThat(ScaleErrors.permissibleHalfMilligrams(AccuracyClass.III, interval, load, false))
                .isEqualTo(2 * initial);
        assertThat(ScaleErrors.permissibleHalfMilligrams(AccuracyClass.III, interval, load, true))
                .isEqualTo(2 * inService);
    }

    /** R 76-1 limits the error with rounding taken out; half a division comes on top of it here. */
    @Test
    void a_reading_is_off_by_the_limit_and_the_rounding() {
        ScaleErrors errors = new ScaleErrors(FormulaSamples.scale(100, false, Weighing.TARE_BETWEEN));
        assertThat(errors.errorHalfMilligrams(50_000)).isEqualTo(2 * (50 + 50));
        assertThat(errors.errorHalfMilligrams(50_100)).isEqualTo(2 * (100 + 50));
    }

    /** Table 6 ends at 10,000 intervals for class III: beyond it nothing is known of the error. */
    @Test
    void a_reading_beyond_the_table_is_not_used() {
        Scale scale = new Scale(
                "long", AccuracyClass.III, false, Weighing.TARE_BETWEEN, 0, List.of(new Range(2_000_000, 100, 100)));
        assertThat(new ScaleErrors(scale).shows(1_000_000)).isTrue();
        assertThat(new ScaleErrors(scale).shows(1_000_100)).isFalse();
    }

    /** What is told to a terminal gives the same error and step for every load, on scales with one and two ranges. */
    @Test
    void the_bands_say_the_same_of_every_reading() {
        List<Range> two = List.of(new Range(130_000, 100, 200), new Range(6_000_000, 500, 500));
        for (AccuracyClass accuracy : AccuracyClass.values())
            for (List<Range> ranges : List.of(two, two.subList(1, 2), two.subList(0, 1))) {
                ScaleErrors errors =
                        new ScaleErrors(new Scale("told", accuracy, true, Weighing.TARE_BETWEEN, 0, ranges));
                for (int reading = 1; reading <= 6_000_000; reading += reading < 140_000 ? 99 : 4_999) {
                    int at = reading;
                    ScaleBand band = errors.bands().stream()
                            .filter(one -> one.aboveMilligrams() < at)
                            .reduce((first, second) -> second)
                            .orElseThrow();
                    assertThat(band.errorHalfMilligrams())
                            .as("%s %d", accuracy, at)
                            .isEqualTo((int) errors.errorHalfMilligrams(at));
                }
                assertThat(errors.bands().get(0).divisionMilligrams())
                        .isEqualTo(ranges.get(0).divisionMilligrams());
            }
    }

    @Test
    void a_reading_takes_the_division_of_its_range() {
        Scale scale = new Scale(
                "two",
                AccuracyClass.III,
                false,
                Weighing.TARE_BETWEEN,
                0,
                List.of(new Range(200_000, 100, 100), new Range(1_000_000, 500, 500)));
        ScaleErrors errors = new ScaleErrors(scale);
        assertThat(errors.shows(199_900)).isTrue();
        assertThat(errors.shows(200_100)).isFalse();
        assertThat(errors.shows(200_500)).isTrue();
        assertThat(errors.shows(1_000_500)).isFalse();
    }
}
