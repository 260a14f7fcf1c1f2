package stirtide.planner.admin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.planner.cli.CommandException;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.SqliteEventLog;

class CareTest {
    private static final String DAY = "quay-house/2027-03-09";
    private static final int EVENTS = 40;

    @TempDir
    Path place;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    void write_a_log() {
        try (EventLog log = SqliteEventLog.open(place.resolve("log"))) {
            for (int after = 0; after < EVENTS; after++)
                log.append(DAY, after, "command-" + after, new byte[] {1}, List.of(event(after + 1)));
        }
    }

    private static StoredEvent event(int revision) {
        Instant time = Instant.parse("2027-03-09T08:00:00Z").plusSeconds(revision);
        return new StoredEvent(
                DAY + "#" + revision,
                DAY,
                revision,
                time,
                "mika",
                "command-" + (revision - 1),
                new DayEvent.ServiceStarted(revision));
    }

    private int run(String task, String... names) {
        out.reset();
        err.reset();
        List<String> words = new java.util.ArrayList<>(List.of(task));
        for (String name : names) words.add(place.resolve(name).toString());
        return CareMain.run(words, new PrintStream(out), new PrintStream(err));
    }

    private List<String> lines() {
        return out.toString(StandardCharsets.UTF_8).lines().toList();
    }

    @Test
    void a_sound_log_verifies_and_exports_every_event() {
        assertThat(run("verify", "log")).isZero();
        assertThat(run("export", "log")).isZero();
        assertThat(lines()).hasSize(EVENTS).allMatch(line -> line.contains("\"specversion\":\"1.0\""));
    }

    @Test
    void a_lost_anchor_is_told_with_74_and_an_old_one_in_words() throws Exception {
        Path anchor = place.resolve("log/anchor");
        byte[] older = Files.readAllBytes(anchor);
        try (EventLog log = SqliteEventLog.open(place.resolve("log"))) {
            log.append(DAY, EVENTS, "command-" + EVENTS, new byte[] {1}, List.of(event(EVENTS + 1)));
        }
        Files.write(anchor, older);
        assertThat(run("verify", "log")).isZero();
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("the file anchor is older than the log");
        Files.delete(anchor);
        assertThat(run("verify", "log")).isEqualTo(CommandException.LOG_BROKEN);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("damaged: anchor: is missing");
        assertThat(run("backup", "log", "copy")).isZero();
        assertThat(run("restore", "copy", "other")).isZero();
        assertThat(run("verify", "other")).isZero();
    }

    @Test
    void a_changed_event_is_named_and_what_is_before_it_is_exported() throws Exception {
        Path file = place.resolve("log/log.db");
        String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
        Files.writeString(file, bytes.replaceFirst("\"service\":17", "\"service\":71"), StandardCharsets.ISO_8859_1);
        assertThat(run("verify", "log")).isEqualTo(CommandException.LOG_BROKEN);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains(DAY + " revision 17: is not what was written");
        assertThat(run("export", "log")).isEqualTo(CommandException.LOG_BROKEN);
        assertThat(lines()).hasSize(16);
    }

    @Test
    void a_backup_restores_to_the_same_events_and_only_into_an_empty_place() {
        run("export", "log");
        List<String> before = lines();
        assertThat(run("backup", "log", "copy")).isZero();
        assertThat(run("restore", "copy", "other")).isZero();
        assertThat(run("export", "other")).isZero();
        assertThat(lines()).isEqualTo(before);
        assertThat(run("restore", "copy", "other")).isEqualTo(CommandException.CANNOT_CREATE);
        assertThat(run("backup", "log", "copy")).isEqualTo(CommandException.CANNOT_CREATE);
    }

    @Test
    void a_backup_with_any_flipped_byte_is_refused_and_leaves_nothing() throws Exception {
        run("backup", "log", "copy");
        byte[] whole = Files.readAllBytes(place.resolve("copy"));
        Random random = new Random(6);
        for (int trial = 0; trial < 30; trial++) {
            byte[] flipped = whole.clone();
            flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
            Files.write(place.resolve("flipped"), flipped);
            assertThat(run("restore", "flipped", "other")).isEqualTo(CommandException.LOG_BROKEN);
            assertThat(err.toString(StandardCharsets.UTF_8))
                    .contains("is damaged")
                    .doesNotContain("\tat ");
            assertThat(place.resolve("other")).doesNotExist();
        }
    }

    @Test
    void a_backup_cut_anywhere_is_refused_and_leaves_nothing() throws Exception {
        run("backup", "log", "copy");
        byte[] whole = Files.readAllBytes(place.resolve("copy"));
        Random random = new Random(74);
        for (int trial = 0; trial < 60; trial++) {
            int cut = trial < 20 ? 1 + 13 * trial : 1 + random.nextInt(whole.length);
            Files.write(place.resolve("cut"), Arrays.copyOf(whole, whole.length - cut));
            assertThat(run("restore", "cut", "other")).as("cut by " + cut).isEqualTo(CommandException.LOG_BROKEN);
            assertThat(err.toString(StandardCharsets.UTF_8))
                    .contains("cut is damaged: ")
                    .doesNotContain("restoring");
            assertThat(place.resolve("other")).doesNotExist();
        }
    }

    @Test
    void one_day_alone_is_exported() {
        String later = "quay-house/2027-03-10";
        try (EventLog log = SqliteEventLog.open(place.resolve("log"))) {
            StoredEvent first = event(1);
            log.append(
                    later,
                    0,
                    "command-0",
                    new byte[] {1},
                    List.of(new StoredEvent(
                            later + "#1", later, 1, first.time(), first.actor(), "command-0", first.event())));
        }
        String folder = place.resolve("log").toString();
        out.reset();
        assertThat(CareMain.run(List.of("export", folder, "--day", later), new PrintStream(out), new PrintStream(err)))
                .isZero();
        assertThat(lines()).singleElement().satisfies(line -> assertThat(line).contains("\"subject\":\"2027-03-10\""));
        out.reset();
        assertThat(CareMain.run(
                        List.of("export", folder, "--day", "quay-house/2027-03-11"),
                        new PrintStream(out),
                        new PrintStream(err)))
                .isZero();
        assertThat(lines()).isEmpty();
    }

    @Test
    void what_was_exported_is_brought_into_an_empty_place_and_exports_the_same() throws Exception {
        Files.write(place.resolve("lines"), days());
        assertThat(run("import", "lines", "other")).isZero();
        assertThat(err.toString(StandardCharsets.UTF_8)).contains(days().size() + " events imported and verified");
        assertThat(run("verify", "other")).isZero();
        assertThat(run("export", "other")).isZero();
        assertThat(lines()).isEqualTo(days());
        assertThat(run("import", "lines", "other")).isEqualTo(CommandException.CANNOT_CREATE);
    }

    @Test
    void events_that_do_not_follow_from_each_other_are_not_brought() throws Exception {
        run("export", "log");
        Files.write(place.resolve("lines"), lines());
        assertThat(run("import", "lines", "other")).isEqualTo(CommandException.BAD_INPUT);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains(DAY + " revision 1 does not follow from the events before it");
        assertThat(place.resolve("other")).doesNotExist();
    }

    /** Lines of a day that can have happened: closing is all that happens on a day nobody opened. */
    private static List<String> days() {
        return java.util.stream.Stream.of("2027-03-09", "2027-03-10")
                .map(date -> stirtide.events.json.CloudEvent.of(new StoredEvent(
                                date,
                                "quay-house/" + date,
                                1,
                                Instant.parse(date + "T18:00:00Z"),
                                "mika",
                                "close-" + date,
                                new DayEvent.DayClosed()))
                        .write())
                .toList();
    }

    @Test
    void exported_lines_that_miss_one_are_refused_with_the_line() throws Exception {
        run("export", "log");
        List<String> some = new java.util.ArrayList<>(lines());
        some.remove(4);
        Files.write(place.resolve("lines"), some);
        assertThat(run("import", "lines", "other")).isEqualTo(CommandException.BAD_INPUT);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("line 5: revision 6")
                .contains("accepted is 5");
        assertThat(place.resolve("other")).doesNotExist();
    }

    @Test
    void words_that_are_not_understood_and_folders_without_a_log_are_refused() {
        assertThat(run("mend", "log")).isEqualTo(CommandException.USAGE);
        assertThat(run("verify", "nowhere")).isEqualTo(CommandException.CANNOT_CREATE);
    }
}
