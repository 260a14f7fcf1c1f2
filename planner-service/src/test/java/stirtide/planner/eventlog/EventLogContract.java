package stirtide.planner.eventlog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;

/** What every log promises. */
abstract class EventLogContract {
    static final String DAY = "quay-house/2027-03-09";
    static final byte[] BODY = {1, 2, 3};

    private EventLog log;

    abstract EventLog open();

    @BeforeEach
    void open_the_log() {
        log = open();
    }

    @AfterEach
    void close_the_log() {
        log.close();
    }

    static StoredEvent event(String day, long revision, String commandId) {
        return new StoredEvent(
                day + "#" + revision,
                day,
                revision,
                Instant.parse("2027-03-09T08:00:00Z").plusSeconds(revision),
                "mika",
                commandId,
                new DayEvent.ServiceStarted((int) revision));
    }

    static List<StoredEvent> events(String day, long after, int count, String commandId) {
        return LongStream.rangeClosed(after + 1, after + count)
                .mapToObj(revision -> event(day, revision, commandId))
                .toList();
    }

    @Test
    void appended_events_are_read_back_in_order() {
        assertThat(log.append(DAY, 0, "command-1", BODY, events(DAY, 0, 3, "command-1")))
                .isEqualTo(new EventLog.Append.Appended(1, 3));
        assertThat(log.read(DAY, 0, 10)).isEqualTo(events(DAY, 0, 3, "command-1"));
        assertThat(log.read(DAY, 1, 1)).isEqualTo(List.of(event(DAY, 2, "command-1")));
        assertThat(log.head(DAY)).isEqualTo(3);
    }

    @Test
    void a_repeated_command_gets_its_first_answer_and_stores_nothing() {
        log.append(DAY, 0, "command-1", BODY, events(DAY, 0, 2, "command-1"));
        assertThat(log.append(DAY, 2, "command-1", BODY, events(DAY, 2, 2, "command-1")))
                .isEqualTo(new EventLog.Append.Repeated(1, 2));
        assertThat(log.head(DAY)).isEqualTo(2);
    }

    @Test
    void a_command_id_with_another_request_is_refused() {
        log.append(DAY, 0, "command-1", BODY, events(DAY, 0, 1, "command-1"));
        assertThat(log.append(DAY, 1, "command-1", new byte[] {9}, events(DAY, 1, 1, "command-1")))
                .isEqualTo(new EventLog.Append.Reused());
        assertThat(log.head(DAY)).isEqualTo(1);
    }

    @Test
    void an_append_on_another_revision_than_the_newest_is_refused() {
        log.append(DAY, 0, "command-1", BODY, events(DAY, 0, 2, "command-1"));
        assertThat(log.append(DAY, 1, "command-2", BODY, events(DAY, 1, 1, "command-2")))
                .isEqualTo(new EventLog.Append.Conflict(2));
        assertThat(log.append(DAY, 5, "command-3", BODY, events(DAY, 5, 1, "command-3")))
                .isEqualTo(new EventLog.Append.Conflict(2));
        assertThat(log.command(DAY, "command-2")).isEmpty();
    }

    @Test
    void a_command_without_events_is_known_afterwards() {
        log.append(DAY, 0, "command-1", BODY, events(DAY, 0, 1, "command-1"));
        assertThat(log.append(DAY, 1, "command-2", BODY, List.of())).isEqualTo(new EventLog.Append.Appended(2, 1));
        assertThat(log.append(DAY, 1, "command-2", BODY, List.of())).isEqualTo(new EventLog.Append.Repeated(2, 1));
    }

    @Test
    void events_of_no_command_leave_no_command_behind() {
        log.append(DAY, 0, EventLog.NO_COMMAND, new byte[0], events(DAY, 0, 1, ""));
        assertThat(log.append(DAY, 1, EventLog.NO_COMMAND, new byte[0], events(DAY, 1, 1, "")))
                .isEqualTo(new EventLog.Append.Appended(2, 2));
    }

    @Test
    void the_seals_of_all_days_are_those_of_each_and_change_with_every_event() {
        String later = "quay-house/2027-03-10";
        log.append(later, 0, "command-1", BODY, events(later, 0, 1, "command-1"));
        log.append(DAY, 0, "command-1", BODY, events(DAY, 0, 2, "command-1"));
        assertThat(log.seals())
                .containsExactly(Map.entry(DAY, log.seal(DAY)), Map.entry(later, log.seal(later)))
                .hasEntrySatisfying(DAY, seal -> assertThat(seal).startsWith("2-"));
        String before = log.seal(later);
        log.append(later, 1, "command-2", BODY, events(later, 1, 1, "command-2"));
        assertThat(log.seals().get(later)).startsWith("2-").isNotEqualTo(before);
    }

    @Test
    void days_are_apart_and_sorted() {
        String later = "quay-house/2027-03-10";
        log.append(later, 0, "command-1", BODY, events(later, 0, 1, "command-1"));
        log.append(DAY, 0, "command-1", BODY, events(DAY, 0, 2, "command-1"));
        assertThat(log.days()).containsExactly(DAY, later);
        assertThat(log.head(later)).isEqualTo(1);
        assertThat(log.read("nowhere/2027-03-09", 0, 10)).isEmpty();
        assertThat(log.head("nowhere/2027-03-09")).isZero();
    }

    @Test
    void events_that_do_not_continue_the_stream_are_a_callers_mistake() {
        assertThatThrownBy(() -> log.append(DAY, 0, "command-1", BODY, events(DAY, 1, 1, "command-1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("does not continue");
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void any_series_of_appends_gives_the_answers_of_a_plain_model(long seed) {
        Random random = new Random(seed);
        long head = 0;
        for (int step = 0; step < 120; step++) {
            String commandId = "command-" + random.nextInt(60);
            long expected = random.nextInt(4) == 0 ? random.nextInt(50) : head;
            boolean known = log.command(DAY, commandId).isPresent();
            int count = random.nextInt(3);
            EventLog.Append answer =
                    log.append(DAY, expected, commandId, BODY, events(DAY, expected, count, commandId));
            if (known) assertThat(answer).isInstanceOf(EventLog.Append.Repeated.class);
            else if (expected != head) assertThat(answer).isEqualTo(new EventLog.Append.Conflict(head));
            else assertThat(answer).isEqualTo(new EventLog.Append.Appended(head + 1, head += count));
        }
        assertThat(log.head(DAY)).isEqualTo(head);
        assertThat(log.read(DAY, 0, 500))
                .extracting(StoredEvent::revision)
                .containsExactlyElementsOf(
                        LongStream.rangeClosed(1, head).boxed().toList());
        assertThat(log.verify()).isEmpty();
    }
}
