package stirtide.demo.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stirtide.bar.scale.ScaleReading;
import stirtide.bar.scale.SerialDialect;
import stirtide.bar.scale.SteadyWeight;

/** The played scale, read by the code of the terminal that reads real ones. */
class PlayedWeightsTest {
    private static final long NANOS_PER_MILLI = 1_000_000;

    private static SerialDialect dialect() throws IOException {
        Properties settings = new Properties();
        settings.load(new StringReader(PlayedWeights.DIALECT));
        Map<String, String> map = new TreeMap<>();
        settings.stringPropertyNames().forEach(name -> map.put(name, settings.getProperty(name)));
        return ((SerialDialect.Answer.Understood) SerialDialect.read(map)).dialect();
    }

    @Test
    void each_part_comes_to_rest_once_a_round_and_no_weight_on_its_way_can_be_taken() throws IOException {
        SerialDialect dialect = dialect();
        PlayedWeights scale = new PlayedWeights(List.of(28_600, 57_100));
        SteadyWeight steady = new SteadyWeight();
        List<Integer> taken = new ArrayList<>();
        int turn = 0;
        for (long millis = 0; millis < 42_000; millis += 100) {
            ScaleReading reading = dialect.reading(scale.at(millis)).orElseThrow();
            steady.take(reading, millis * NANOS_PER_MILLI);
            if (steady.turn() != turn) taken.add(steady.milligrams().orElseThrow());
            turn = steady.turn();
        }
        assertThat(taken).containsExactly(28_600, 0, 57_100, 0, 28_600, 0, 57_100, 0);
    }

    @Test
    void a_weight_on_its_way_says_that_it_moves() throws IOException {
        assertThat(dialect().reading(new PlayedWeights(List.of(40_000)).at(1250)))
                .contains(new ScaleReading.Weight(20_000, false));
    }

    @Test
    void with_nothing_on_it_it_lies_at_zero() throws IOException {
        assertThat(dialect().reading(new PlayedWeights(List.of()).at(5))).contains(new ScaleReading.Weight(0, true));
    }
}
