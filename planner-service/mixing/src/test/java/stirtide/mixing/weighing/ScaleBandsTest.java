package stirtide.mixing.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.setup.Scale;
import stirtide.events.view.ScaleCard;
import stirtide.mixing.weighing.WeighedMix.Bounds;
import stirtide.mixing.weighing.WeighedMix.Part;

/** What a client works out from the bands of a scale is what the service works out from the scale. Random scales and weights. */
class ScaleBandsTest {
    @ParameterizedTest
    @ValueSource(longs = {71, 72, 73})
    void both_call_the_same_weights_inside(long seed) {
        Random random = new Random(seed);
        int inside = 0;
        for (int round = 0; round < 4000; round++) {
            Scale scale = anyScale(random);
            int lightener = 100 * (1 + random.nextInt(700));
            List<Part> liquids = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(3); i++) liquids.add(new Part(600, 100 * (1 + random.nextInt(900))));
            ScaleErrors errors = new ScaleErrors(scale);
            var service = new WeighedMix(errors, lightener, liquids).fault(new Bounds(1500, 2500, 600));
            ScaleBands bands = new ScaleBands(new ScaleCard("any", scale.weighing(), errors.bands()));
            var client = new WeighedMix(bands, lightener, liquids).fault(new Bounds(1500, 2500, 600));
            assertThat(client).as("%s %d %s", scale, lightener, liquids).isEqualTo(service);
            if (client.isEmpty()) inside++;
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
}
