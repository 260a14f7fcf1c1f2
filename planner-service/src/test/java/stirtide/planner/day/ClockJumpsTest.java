package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.command.DayCommand.RecordLevels;
import stirtide.events.day.StoredEvent;

/** A wall clock that is set an hour forward and back again and again, as somebody who corrects it may do. */
class ClockJumpsTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void the_day_never_runs_backwards_and_what_falls_due_is_noted_once(long seed) {
        var random = new SplittableRandom(seed);
        var scene = Scene.begun().does(Scene.weigh("1a", 30_000, 60_000));
        var start = scene.now;
        for (int step = 0; step < 60; step++) {
            scene.now = start.plus(Duration.ofMinutes(step)).plus(Duration.ofHours(random.nextInt(3) - 1));
            var before = scene.day.time();
            scene.ticks();
            scene.does(new RecordLevels(1, "crown", Optional.of(10 + step), Optional.empty()));
            assertThat(scene.day.time()).isAfterOrEqualTo(before);
        }
        assertThat(scene.log)
                .extracting(StoredEvent::revision)
                .doesNotHaveDuplicates()
                .isSorted();
        assertThat(scene.log.stream()
                        .map(StoredEvent::event)
                        .filter(event -> event.getClass().getSimpleName().startsWith("Life")))
                .doesNotHaveDuplicates()
                .hasSize(2);
        assertThat(Evolver.replay(scene.log)).isEqualTo(scene.day);
    }
}
