package stirtide.planner.eventlog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteEventLogTest extends EventLogContract {
    @TempDir
    Path folder;

    @TempDir
    Path other;

    @Override
    EventLog open() {
        return SqliteEventLog.open(folder);
    }

    @Test
    void what_was_stored_is_there_after_closing_and_opening() {
        try (EventLog first = SqliteEventLog.open(other)) {
            first.append(DAY, 0, "command-1", BODY, events(DAY, 0, 3, "command-1"));
        }
        try (EventLog second = SqliteEventLog.open(other)) {
            assertThat(second.read(DAY, 0, 10)).isEqualTo(events(DAY, 0, 3, "command-1"));
            assertThat(second.append(DAY, 3, "command-1", BODY, List.of()))
                    .isEqualTo(new EventLog.Append.Repeated(1, 3));
        }
    }

    @Test
    void a_second_opener_is_refused_with_the_folder() {
        assertThatThrownBy(() -> SqliteEventLog.open(folder))
                .isInstanceOf(LogFailure.class)
                .hasMessageContaining("another process has the log in " + folder)
                .extracting(failure -> ((LogFailure) failure).kind())
                .isEqualTo(LogFailure.Kind.IN_USE);
    }

    @Test
    void a_folder_that_is_a_file_is_refused() throws Exception {
        Path file = Files.writeString(other.resolve("plain"), "not a folder");
        assertThatThrownBy(() -> SqliteEventLog.open(file))
                .isInstanceOf(LogFailure.class)
                .hasMessageContaining("cannot be made or written");
    }

    @Test
    void a_log_file_of_somebody_else_is_refused_and_left_alone() throws Exception {
        Files.writeString(other.resolve("log.db"), "grocery list, grocery list, grocery list");
        assertThatThrownBy(() -> SqliteEventLog.open(other)).isInstanceOf(LogFailure.class);
        assertThat(other.resolve("log.db")).hasContent("grocery list, grocery list, grocery list");
    }

    @Test
    void the_file_itself_forbids_changing_or_deleting_an_event() throws Exception {
        try (EventLog log = SqliteEventLog.open(other)) {
            log.append(DAY, 0, "command-1", BODY, events(DAY, 0, 1, "command-1"));
        }
        for (String change : List.of("UPDATE event SET revision=7", "DELETE FROM event", "DELETE FROM command")) {
            try (Connection connection = SqliteFile.open(other.resolve("log.db"));
                    Statement statement = connection.createStatement()) {
                assertThatThrownBy(() -> statement.execute(change)).hasMessageContaining("what is stored stays");
            }
        }
    }
}
