package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.CloudEvent;

/**
 * Days of commands by chance, 1,000 and more in all. Whatever is asked in whatever order, the day keeps what it
 * promises.
 */
class RandomDaysTest {
    private static final int DAYS_PER_SEED = 130;
    private static final int STEPS = 30;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatever_is_asked_the_day_keeps_its_promises(long seed) {
        var random = new SplittableRandom(seed);
        int accepted = 0;
        int refused = 0;
        long divided = 0;
        for (int i = 0; i < DAYS_PER_SEED; i++) {
            var played = new RandomDay(random.split());
            for (int step = 0; step < STEPS; step++) {
                played.step();
                Promises.check(played.scene.day, "seed " + seed + ", day " + i + ", step " + step);
            }
            Promises.checkView(played.scene.day, "seed " + seed + ", day " + i);
            eachInstantOnce(played.scene.log);
            assertThat(Evolver.replay(played.scene.log)).isEqualTo(played.scene.day);
            accepted += played.accepted;
            refused += played.refused;
            divided += played.scene.log.stream()
                    .filter(stored -> stored.event() instanceof DayEvent.BatchDivided)
                    .count();
        }
        // The play is worth something only if it both carries out and refuses a lot.
        assertThat(accepted).isGreaterThan(DAYS_PER_SEED * 4);
        assertThat(refused).isGreaterThan(DAYS_PER_SEED * 4);
        assertThat(divided).isPositive();
    }

    private static void eachInstantOnce(List<StoredEvent> log) {
        var taken = new HashSet<Long>();
        for (var event : log)
            if (event.event() instanceof DayEvent.ActionTakenBack back) taken.add(back.takenBackRevision());
        // A bowl that was taken back may be begun again and lives anew; within one life each word is said once.
        var said = new HashSet<DayEvent>();
        for (var event : log)
            if (event.event() instanceof DayEvent.BowlDue
                    || event.event() instanceof DayEvent.BowlLate
                    || event.event() instanceof DayEvent.LifeEnding
                    || event.event() instanceof DayEvent.LifeEnded)
                assertThat(said.add(event.event()) || !taken.isEmpty())
                        .as("%s", event)
                        .isTrue();
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void every_prefix_of_a_log_is_a_day_and_the_log_survives_its_wire_form(long seed) {
        var played = new RandomDay(new SplittableRandom(seed));
        for (int step = 0; step < 40; step++) played.step();
        var log = played.scene.log;
        for (int length = 1; length <= log.size(); length++) {
            var where = "seed " + seed + ", prefix " + length;
            Promises.check(Evolver.replay(log.subList(0, length)), where);
            Promises.checkView(Evolver.replay(log.subList(0, length)), where);
        }
        var wire = log.stream().map(event -> CloudEvent.of(event).write()).toList();
        assertThat(Evolver.replay(wire.stream()
                        .map(text -> CloudEvent.read(text).toStored())
                        .toList()))
                .isEqualTo(played.scene.day);
    }

    @Test
    void the_same_seed_plays_the_same_day() {
        var one = new RandomDay(new SplittableRandom(5));
        var other = new RandomDay(new SplittableRandom(5));
        for (int step = 0; step < 50; step++) {
            one.step();
            other.step();
        }
        assertThat(one.scene.log).isEqualTo(other.scene.log);
    }

    /** A log of a hundred thousand events with thousands of actions taken back: far beyond any day. */
    @Test
    void a_very_long_log_is_replayed_at_once() {
        var first = Scene.open(Given.booking("one", "foils", 1, "10:00"));
        var log = new ArrayList<>(first.log);
        while (log.size() < 100_000) {
            long next = log.size() + 1L;
            DayEvent event = next % 10 == 0
                    ? new DayEvent.ActionTakenBack(next - 1)
                    : new DayEvent.ServiceMoved(1, Given.at("10:00").plusSeconds(next % 3600), 1, "");
            log.add(new StoredEvent("e" + next, Given.DAY, next, first.now, "ilka", "c" + next, event));
        }
        var day = Evolver.replay(log);
        assertThat(day.revision()).isEqualTo(100_000);
        // Revision 100,000 takes 99,999 back, so the last move that counts is 99,998.
        assertThat(day.service(1).orElseThrow().booking().start())
                .isEqualTo(Given.at("10:00").plusSeconds(99_998 % 3600));
    }
}
