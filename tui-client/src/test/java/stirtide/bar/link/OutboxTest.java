package stirtide.bar.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;

class OutboxTest {
    @TempDir
    Path folder;

    private static Outbox.Entry entry(int number) {
        return new Outbox.Entry(
                new CommandRequest("command-" + number, "tamsin", new DayCommand.HandOverBowl(number + "a")),
                "words " + number);
    }

    @Test
    void what_was_not_answered_is_there_after_a_restart_in_order() throws Exception {
        try (Outbox outbox = Outbox.open(folder, "x")) {
            for (int i = 1; i <= 3; i++) outbox.add(entry(i));
            outbox.removeHead();
        }
        try (Outbox again = Outbox.open(folder, "x")) {
            assertThat(again.size()).isEqualTo(2);
            assertThat(again.head(1)).contains(entry(2));
        }
    }

    @Test
    void a_torn_last_line_was_never_an_entry() throws Exception {
        try (Outbox outbox = Outbox.open(folder, "x")) {
            outbox.add(entry(1));
        }
        Files.writeString(folder.resolve("outbox-x-1.jsonl"), "{\"requ", StandardOpenOption.APPEND);
        try (Outbox again = Outbox.open(folder, "x")) {
            assertThat(again.size()).isEqualTo(1);
            again.add(entry(2));
        }
        try (Outbox again = Outbox.open(folder, "x")) {
            assertThat(again.size()).isEqualTo(2);
        }
    }

    @Test
    void a_whole_line_that_is_no_entry_is_told_and_not_thrown_away() throws IOException {
        Path file = folder.resolve("outbox-x-1.jsonl");
        Files.writeString(file, "nonsense\n");
        assertThatThrownBy(() -> Outbox.open(folder, "x"))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("outbox-x-1.jsonl");
        assertThat(file).hasContent("nonsense\n");
    }

    @Test
    void two_terminals_have_a_file_each() throws Exception {
        try (Outbox one = Outbox.open(folder, "x");
                Outbox other = Outbox.open(folder, "x")) {
            one.add(entry(1));
            assertThat(other.size()).isZero();
            other.add(entry(2));
            assertThat(one.size()).isEqualTo(1);
        }
    }

    @Test
    void what_a_terminal_that_is_gone_left_is_sent_by_the_next_one_that_opens() throws Exception {
        try (Outbox one = Outbox.open(folder, "x")) {
            one.add(entry(1));
            try (Outbox other = Outbox.open(folder, "x")) {
                other.add(entry(2));
            }
        }
        try (Outbox again = Outbox.open(folder, "x")) {
            assertThat(again.size()).isEqualTo(2);
            assertThat(again.head(1)).contains(entry(1));
            again.removeHead();
            assertThat(again.head(1)).contains(entry(2));
        }
        assertThat(folder.resolve("outbox-x-2.jsonl")).doesNotExist();
        try (Outbox last = Outbox.open(folder, "x")) {
            assertThat(last.size()).isEqualTo(1);
        }
    }
}
