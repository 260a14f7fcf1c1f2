package stirtide.mixing.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.AccuracyClass;
import stirtide.events.setup.Scale.Range;
import stirtide.events.setup.Scale.Weighing;

/** The fast search gives exactly what trying every weighing gives. No outside source: a check against brute force. */
class FormulaSearchAgainstEveryWeighingTest {
    private static final int[][] WINDOWS = {
        {1000, 1000, 2000}, {1500, 2000, 3000}, {1900, 2000, 2100}, {500, 3000, 3000}
    };

    @ParameterizedTest
    @EnumSource(Weighing.class)
    void every_small_mix_on_a_one_gram_scale_is_the_best_one(Weighing weighing) {
        int compared = 0;
        for (boolean inService : new boolean[] {false, true})
            for (int[] window : WINDOWS)
                for (int need = 1; need <= 90; need += 1)
                    for (int usable : new int[] {need, need + 1, need + 6}) {
                        compare(FormulaSamples.scale(1000, inService, weighing), window, need * 1000, usable * 1000);
                        compared++;
                    }
        assertThat(compared).isEqualTo(2 * WINDOWS.length * 90 * 3);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void random_scales_windows_and_needs_give_the_best_mix(long seed) {
        Random random = new Random(seed);
        int weighed = 0;
        for (int round = 0; round < 400; round++) {
            int low = 500 + random.nextInt(2000);
            int high = low + random.nextInt(1500);
            int wanted = low + random.nextInt(high - low + 1);
            int need = 1 + random.nextInt(400);
            if (compare(anyScale(random), new int[] {low, wanted, high}, need, need + random.nextInt(120))) weighed++;
        }
        assertThat(weighed).isGreaterThan(100);
    }

    @Test
    void a_window_of_one_ratio_is_never_weighable() {
        FormulaAnswer answer = FormulaSearch.find(FormulaSamples.question(
                FormulaSamples.directions(2000, 2000, 1200, false),
                600,
                2000,
                60_000,
                200_000,
                FormulaSamples.scale(100, false, Weighing.TARE_BETWEEN)));
        assertThat(answer).isInstanceOf(FormulaAnswer.Impossible.class);
    }

    private static Scale anyScale(Random random) {
        int division = List.of(1, 1, 2, 5).get(random.nextInt(4));
        int interval = division * List.of(1, 1, 2).get(random.nextInt(3));
        List<Range> ranges = new ArrayList<>();
        if (random.nextBoolean()) ranges.add(new Range(50 + random.nextInt(100), division, interval));
        ranges.add(new Range(600, division * 2, interval * 2));
        AccuracyClass accuracy =
                List.of(AccuracyClass.II, AccuracyClass.III, AccuracyClass.IIII).get(random.nextInt(3));
        Weighing weighing = random.nextBoolean() ? Weighing.TARE_BETWEEN : Weighing.RUNNING_TOTAL;
        return new Scale("any", accuracy, random.nextBoolean(), weighing, random.nextInt(20), ranges);
    }

    private static boolean compare(Scale scale, int[] window, int need, int usable) {
        FormulaAnswer answer = FormulaSearch.find(FormulaSamples.question(
                FormulaSamples.directions(window[0], window[2], 1200, false), 600, window[1], need, usable, scale));
        Optional<long[]> expected = new EveryWeighing(scale, window[0], window[2]).pair(need, usable, window[1]);
        if (answer instanceof FormulaAnswer.Weigh weigh) {
            assertThat(expected).as("%s", answer).isPresent();
            assertThat(new long[] {
                        weigh.formula().lightenerMilligrams(), weigh.formula().developerMilligrams()
                    })
                    .as("%s need %d usable %d %s", scale, need, usable, java.util.Arrays.toString(window))
                    .isEqualTo(expected.orElseThrow());
            assertThat(weigh.surplusMilligrams())
                    .isEqualTo(weigh.formula().totalMilligrams() - need)
                    .isNotNegative();
            return true;
        }
        assertThat(expected).as("%s %d %d", scale, need, usable).isEmpty();
        return false;
    }
}
