package stirtide.mixing.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.AccuracyClass;
import stirtide.events.setup.Scale.Range;
import stirtide.events.setup.Scale.Weighing;

/** Blends of two developers are as small as any blend can be. No outside source: a check against brute force. */
class BlendAgainstEveryBlendTest {
    private static final int[][] STRENGTHS = {{900, 300, 600}, {1200, 300, 600}, {1200, 600, 900}, {600, 0, 400}};

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void random_blends_are_the_smallest_ones(long seed) {
        Random random = new Random(seed);
        int weighed = 0;
        for (int round = 0; round < 25; round++) {
            int[] strength = STRENGTHS[random.nextInt(STRENGTHS.length)];
            int low = 800 + random.nextInt(1200);
            int high = low + 300 + random.nextInt(1500);
            int need = 40 + random.nextInt(90);
            int wanted = low + random.nextInt(high - low + 1);
            if (compare(anyScale(random), new int[] {low, high}, strength, need, wanted, random.nextBoolean()))
                weighed++;
        }
        assertThat(weighed).isGreaterThan(5);
    }

    private static boolean compare(Scale scale, int[] ratio, int[] strength, int need, int wanted, boolean tight) {
        int ceiling = tight ? strength[2] : 1200;
        FormulaQuestion question = new FormulaQuestion(
                FormulaSamples.directions(ratio[0], ratio[1], ceiling, false),
                "foil",
                strength[2],
                wanted,
                FormulaSamples.shelf(strength[0], strength[1]),
                need,
                0,
                need + 30,
                scale);
        int[] accepted = {Math.max(0, strength[2] - 30), Math.min(ceiling, strength[2] + 30)};
        Optional<int[]> expected =
                new EveryBlend(scale, ratio, accepted, strength[0], strength[1]).smallest(need, need + 30, wanted);
        FormulaAnswer answer = FormulaSearch.find(question);
        if (answer instanceof FormulaAnswer.Weigh weigh) {
            assertThat(expected).as("%s", question).isPresent();
            assertThat(new int[] {
                        weigh.formula().lightenerMilligrams(), weigh.formula().totalMilligrams()
                    })
                    .as("%s", question)
                    .isEqualTo(expected.orElseThrow());
            return true;
        }
        assertThat(expected).as("%s %s", question, answer).isEmpty();
        return false;
    }

    private static Scale anyScale(Random random) {
        return new Scale(
                "any",
                List.of(AccuracyClass.II, AccuracyClass.IIII).get(random.nextInt(2)),
                random.nextInt(4) == 0,
                random.nextBoolean() ? Weighing.TARE_BETWEEN : Weighing.RUNNING_TOTAL,
                0,
                List.of(new Range(500, 1, 1)));
    }
}
