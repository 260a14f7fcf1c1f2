package stirtide.planner.eventlog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static stirtide.planner.eventlog.EventLogContract.BODY;
import static stirtide.planner.eventlog.EventLogContract.DAY;
import static stirtide.planner.eventlog.EventLogContract.events;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteErrorCode;
import stirtide.planner.eventlog.EventLog.Append;

/** After a failed append the file is opened anew, and what it then says decides the answer. */
class FailingDiskTest {
    private static final int FULL_MOMENTS = 100;

    @TempDir
    Path folder;

    private final FailingDisk disk = new FailingDisk();
    private EventLog log;
    private long head;

    @BeforeEach
    void open_the_log() {
        log = SqliteEventLog.open(folder, disk);
    }

    @AfterEach
    void close_the_log() {
        log.close();
    }

    private Append append(int count) {
        String commandId = "command-" + head;
        Append answer = log.append(DAY, head, commandId, BODY, events(DAY, head, count, commandId));
        if (answer instanceof Append.Appended now) head = now.last();
        return answer;
    }

    private void fails(int count, LogFailure.Kind kind) {
        assertThatThrownBy(() -> append(count))
                .isInstanceOf(LogFailure.class)
                .extracting(failed -> ((LogFailure) failed).kind())
                .isEqualTo(kind);
    }

    @Test
    void a_disk_full_at_a_hundred_random_appends_refuses_stores_nothing_half_and_goes_on_when_there_is_space()
            throws SQLException {
        Random random = new Random(507);
        int refused = 0;
        while (refused < FULL_MOMENTS) {
            for (int sound = random.nextInt(3); sound >= 0; sound--) append(1 + random.nextInt(4));
            disk.leaveFree(random.nextInt(3));
            long before = head;
            try {
                append(1 + random.nextInt(60));
            } catch (LogFailure full) {
                refused++;
                assertThat(full.kind()).isEqualTo(LogFailure.Kind.FULL);
                assertThat(full).hasMessageContaining("nothing was stored");
                assertThat(log.head(DAY)).isEqualTo(before);
                assertThat(log.command(DAY, "command-" + before)).isEmpty();
            }
            disk.freeAll();
            append(1);
        }
        assertThat(log.head(DAY)).isEqualTo(head);
        assertThat(log.verify()).isEmpty();
    }

    @Test
    void a_write_that_failed_before_it_was_durable_is_not_answered_and_can_be_sent_again() {
        append(2);
        disk.failNext(FailingDisk.Moment.BEFORE_COMMIT, SQLiteErrorCode.SQLITE_IOERR_WRITE);
        fails(3, LogFailure.Kind.UNAVAILABLE);
        assertThat(append(3)).isEqualTo(new Append.Appended(3, 5));
    }

    @Test
    void a_write_that_was_reported_as_failed_and_is_in_the_file_is_answered_as_stored() {
        append(2);
        disk.failNext(FailingDisk.Moment.AFTER_COMMIT, SQLiteErrorCode.SQLITE_IOERR_WRITE);
        assertThat(append(3)).isEqualTo(new Append.Appended(3, 5));
        assertThat(log.read(DAY, 2, 10)).isEqualTo(events(DAY, 2, 3, "command-2"));
        disk.failNext(FailingDisk.Moment.AFTER_COMMIT, SQLiteErrorCode.SQLITE_IOERR_WRITE);
        assertThat(log.append(DAY, 5, EventLog.NO_COMMAND, new byte[0], events(DAY, 5, 1, "")))
                .isEqualTo(new Append.Appended(6, 6));
    }

    @Test
    void a_disk_that_could_not_keep_what_was_written_is_not_trusted_again_before_a_restart() {
        append(2);
        disk.failNext(FailingDisk.Moment.BEFORE_COMMIT, SQLiteErrorCode.SQLITE_IOERR_FSYNC);
        fails(1, LogFailure.Kind.READ_ONLY);
        fails(1, LogFailure.Kind.READ_ONLY);
        assertThat(log.readOnly()).hasValueSatisfying(why -> assertThat(why).contains("send it again"));
        assertThat(log.read(DAY, 0, 10)).isEqualTo(events(DAY, 0, 2, "command-0"));
        log.close();
        log = SqliteEventLog.open(folder, disk);
        assertThat(append(1)).isEqualTo(new Append.Appended(3, 3));
    }

    @Test
    void every_setting_that_durability_rests_on_is_in_force() throws SQLException {
        log.close();
        try (var connection = SqliteFile.open(folder.resolve("log.db"));
                var statement = connection.createStatement()) {
            assertThat(SqliteFile.text(statement, "PRAGMA journal_mode")).isEqualTo("wal");
            // 2 is FULL: the write-ahead file is forced to the disk at every commit, sqlite.org/pragma.html
            assertThat(SqliteFile.text(statement, "PRAGMA synchronous")).isEqualTo("2");
            assertThat(SqliteFile.text(statement, "PRAGMA locking_mode")).isEqualTo("exclusive");
        }
    }
}
