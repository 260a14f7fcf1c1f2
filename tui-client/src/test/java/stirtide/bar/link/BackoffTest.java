package stirtide.bar.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BackoffTest {
    @Test
    void tries_are_spaced_wider_and_wider_up_to_a_quarter_minute() {
        var backoff = new Backoff(new Random(7), 1000);
        List<Long> seconds = IntStream.range(0, 7)
                .mapToObj(i -> backoff.next())
                .map(Duration::toMillis)
                .map(millis -> Math.round(millis / 1000.0))
                .toList();
        List<Integer> expected = List.of(1, 2, 4, 8, 15, 15, 15);
        for (int i = 0; i < 7; i++)
            assertThat(seconds.get(i)).isBetween((long) (expected.get(i) * 0.8), (long) (expected.get(i) * 1.2 + 1));
        backoff.succeeded();
        assertThat(backoff.next()).isLessThan(Duration.ofMillis(1201));
    }
}
