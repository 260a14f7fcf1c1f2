package stirtide.bar.panels.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.setup.Scale;
import stirtide.events.view.DayView;
import stirtide.mixing.weighing.ScaleErrors;
import stirtide.mixing.weighing.WeighedMix;

/** The terminal's word while weights are typed is the service's word when they are sent. Random scales and weights. */
class HintAgreesWithServiceTest {
    @ParameterizedTest
    @ValueSource(longs = {71, 72, 73})
    void both_call_the_same_weights_inside(long seed) {
        Random random = new Random(seed);
        int inside = 0;
        for (int round = 0; round < 4000; round++) {
            Scale scale = anyScale(random);
            int lightener = 100 * (1 + random.nextInt(700));
            List<Integer> liquids = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(3); i++) liquids.add(100 * (1 + random.nextInt(900)));
            boolean service = new WeighedMix(
                            scale,
                            lightener,
                            liquids.stream()
                                    .map(grams -> new WeighedMix.Part(600, grams))
                                    .toList())
                    .fault(new WeighedMix.Bounds(1500, 2500, 600))
                    .isEmpty();
            boolean hint = new RatioCheck(target(scale, liquids)).isInside(lightener, liquids);
            assertThat(hint).as("%s %d %s", scale, lightener, liquids).isEqualTo(service);
            if (hint) inside++;
        }
        assertThat(inside).isBetween(400, 3600);
    }

    private static Scale anyScale(Random random) {
        int interval = List.of(100, 200, 1000).get(random.nextInt(3));
        var ranges = new ArrayList<Scale.Range>();
        if (random.nextBoolean()) ranges.add(new Scale.Range(30_000 + random.nextInt(90_000), 100, interval));
        ranges.add(new Scale.Range(600_000, 200, 2 * interval));
        return new Scale(
                "any",
                Scale.AccuracyClass.values()[1 + random.nextInt(3)],
                random.nextBoolean(),
                random.nextBoolean() ? Scale.Weighing.TARE_BETWEEN : Scale.Weighing.RUNNING_TOTAL,
                0,
                ranges);
    }

    private static WeighTarget target(Scale scale, List<Integer> liquids) {
        var bands = new ScaleErrors(scale)
                .bands().stream()
                        .map(band -> new DayView.ScaleBand(band.above(), band.division(), band.errorHalfMilligrams()))
                        .toList();
        return new WeighTarget(
                "1a",
                1,
                "",
                List.of(),
                "Pale Clay",
                30_000,
                liquids.stream()
                        .map(grams -> new DayView.PartCard("dev-6", "Developer 6", 600, grams))
                        .toList(),
                2000,
                1500,
                2500,
                Optional.of(500_000),
                new DayView.ScaleCard("any", scale.weighing(), bands),
                Optional.empty());
    }
}
