package stirtide.planner.eventlog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.day.StoredEvent;

/** What is not as it was written is found, never read as if it were. */
class SqliteDamageTest {
    private static final String DAY = EventLogContract.DAY;
    private static final int EVENTS = 40;

    @TempDir
    Path written;

    @TempDir
    Path damaged;

    private static void append(EventLog log, long after) {
        String commandId = "command-" + after;
        log.append(DAY, after, commandId, EventLogContract.BODY, EventLogContract.events(DAY, after, 1, commandId));
    }

    private static List<StoredEvent> all() {
        return LongStream.range(0, EVENTS)
                .mapToObj(after -> EventLogContract.event(DAY, after + 1, "command-" + after))
                .toList();
    }

    private void copy(String... names) throws IOException {
        for (String name : names)
            Files.copy(written.resolve(name), damaged.resolve(name), StandardCopyOption.REPLACE_EXISTING);
    }

    private void cutTail(int bytes) throws IOException {
        Path wal = damaged.resolve("log.db-wal");
        byte[] whole = Files.readAllBytes(wal);
        Files.write(wal, Arrays.copyOf(whole, whole.length - bytes));
    }

    @Test
    void a_log_torn_in_an_append_that_was_never_answered_opens_with_all_before_it() throws Exception {
        try (EventLog log = SqliteEventLog.open(written)) {
            for (long after = 0; after < EVENTS - 1; after++) append(log, after);
            copy("anchor");
            append(log, EVENTS - 1);
            copy("log.db", "log.db-wal");
        }
        cutTail(700);
        try (EventLog torn = SqliteEventLog.open(damaged)) {
            assertThat(torn.read(DAY, 0, EventLog.READ_LIMIT)).isEqualTo(all().subList(0, EVENTS - 1));
            append(torn, EVENTS - 1);
            assertThat(torn.verify()).isEmpty();
        }
    }

    @Test
    void a_log_that_lost_an_answered_event_is_refused_with_its_place() throws Exception {
        try (EventLog log = SqliteEventLog.open(written)) {
            for (long after = 0; after < EVENTS; after++) append(log, after);
            copy("log.db", "log.db-wal", "anchor");
        }
        cutTail(700);
        assertThatThrownBy(() -> SqliteEventLog.open(damaged))
                .isInstanceOf(LogFailure.class)
                .hasMessageContaining(DAY + " revision " + EVENTS)
                .hasMessageContaining("is missing");
    }

    @Test
    void a_flipped_byte_is_found_or_harmless() throws Exception {
        try (EventLog log = SqliteEventLog.open(written)) {
            for (long after = 0; after < EVENTS; after++) append(log, after);
        }
        byte[] whole = Files.readAllBytes(written.resolve("log.db"));
        Random random = new Random(4);
        int found = 0;
        for (int trial = 0; trial < 150; trial++) {
            byte[] flipped = whole.clone();
            flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
            copy("anchor");
            Files.write(damaged.resolve("log.db"), flipped);
            try (EventLog log = SqliteEventLog.open(damaged)) {
                assertThat(log.read(DAY, 0, EventLog.READ_LIMIT)).isEqualTo(all());
                assertThat(log.command(DAY, "command-7")).isPresent();
            } catch (LogFailure refused) {
                found++;
                assertThat(refused.getMessage()).isNotBlank();
            }
        }
        assertThat(found).isGreaterThan(20);
    }

    @Test
    void an_event_of_another_wording_is_named() throws Exception {
        try (EventLog log = SqliteEventLog.open(written)) {
            for (long after = 0; after < EVENTS; after++) append(log, after);
        }
        String bytes = new String(Files.readAllBytes(written.resolve("log.db")), StandardCharsets.ISO_8859_1);
        String changed = bytes.replaceFirst("\"service\":17", "\"service\":71");
        Files.write(written.resolve("log.db"), changed.getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> SqliteEventLog.open(written))
                .isInstanceOf(LogFailure.class)
                .hasMessageContaining(DAY + " revision 17: is not what was written");
    }

    @Test
    void a_service_reads_what_is_before_the_damage_stores_nothing_and_changes_no_byte() throws Exception {
        try (EventLog log = SqliteEventLog.open(written)) {
            for (long after = 0; after < EVENTS; after++) append(log, after);
            copy("log.db", "log.db-wal", "anchor");
        }
        Path wal = damaged.resolve("log.db-wal");
        String bytes = Files.readString(wal, StandardCharsets.ISO_8859_1);
        // In the write-ahead file the page with it fails its checksum, so the end of the log is gone.
        Files.writeString(wal, bytes.replaceFirst("\"service\":37", "\"service\":73"), StandardCharsets.ISO_8859_1);
        byte[] before = Files.readAllBytes(damaged.resolve("log.db"));
        byte[] walBefore = Files.readAllBytes(wal);
        try (EventLog log = SqliteEventLog.openToServe(damaged)) {
            assertThat(log.readOnly()).hasValueSatisfying(why -> assertThat(why).contains(DAY + " revision"));
            assertThat(log.read(DAY, 0, EventLog.READ_LIMIT)).isEqualTo(all().subList(0, 36));
            assertThat(log.command(DAY, "command-7")).isPresent();
            assertThatThrownBy(() -> append(log, 36))
                    .isInstanceOf(LogFailure.class)
                    .extracting(failure -> ((LogFailure) failure).kind())
                    .isEqualTo(LogFailure.Kind.READ_ONLY);
        }
        assertThat(damaged.resolve("log.db")).hasBinaryContent(before);
        assertThat(wal).hasBinaryContent(walBefore);
    }

    @Test
    void a_damage_that_comes_while_the_log_is_in_use_ends_the_storing_at_the_first_reading() throws Exception {
        try (EventLog log = SqliteEventLog.open(written)) {
            for (long after = 0; after < EVENTS; after++) append(log, after);
        }
        try (EventLog log = SqliteEventLog.openToServe(written)) {
            assertThat(log.days()).containsExactly(DAY);
            String bytes = Files.readString(written.resolve("log.db"), StandardCharsets.ISO_8859_1);
            int at = bytes.indexOf("\"service\":17");
            try (var file =
                    new java.io.RandomAccessFile(written.resolve("log.db").toFile(), "rw")) {
                file.seek(at + 10);
                file.write("71".getBytes(StandardCharsets.US_ASCII));
            }
            assertThat(log.read(DAY, 0, EventLog.READ_LIMIT)).isEqualTo(all().subList(0, 16));
            assertThat(log.readOnly()).hasValueSatisfying(why -> assertThat(why).contains("revision 17"));
        }
        assertThatThrownBy(() -> SqliteEventLog.open(written)).hasMessageContaining("revision 17");
    }

    /** The header of its record says where a text ends; a changed one makes the day of an event no text at all. */
    @Test
    void an_event_that_has_lost_its_day_is_found_and_the_others_are_exported() throws Exception {
        try (EventLog log = SqliteEventLog.open(written)) {
            for (long after = 0; after < EVENTS; after++) append(log, after);
        }
        try (var connection = SqliteFile.open(written.resolve("log.db"));
                var statement = connection.createStatement()) {
            statement.execute("PRAGMA writable_schema=ON");
            statement.execute("UPDATE sqlite_schema SET sql=replace(replace(sql, 'day TEXT NOT NULL', 'day TEXT'),"
                    + " ') STRICT', ')') WHERE name='event'");
            statement.execute("DELETE FROM sqlite_schema WHERE type='trigger'");
        }
        try (var connection = SqliteFile.open(written.resolve("log.db"));
                var statement = connection.createStatement()) {
            statement.execute("UPDATE event SET day=NULL WHERE revision=30");
        }
        assertThatThrownBy(() -> SqliteEventLog.open(written))
                .isInstanceOf(LogFailure.class)
                .hasMessageContaining("an event has lost its day");
        List<String> lines = new java.util.ArrayList<>();
        assertThat(LogMaintenance.export(written, java.util.Optional.empty(), lines::add))
                .extracting(EventLog.Damage::what)
                .contains("an event has lost its day");
        assertThat(lines).hasSize(29);
    }
}
