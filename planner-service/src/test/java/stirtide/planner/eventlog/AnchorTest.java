package stirtide.planner.eventlog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file anchor knows the end of every day, and it shows when it is lost itself. */
class AnchorTest {
    private static final List<String> DAYS =
            List.of("quay-house/2027-03-09", "quay-house/2027-03-10", "quay-house/2027-03-11");

    @TempDir
    Path folder;

    @TempDir
    Path shorter;

    private static void append(EventLog log, String day, int from, int to) {
        for (long after = from; after < to; after++)
            log.append(
                    day,
                    after,
                    "command-" + after,
                    EventLogContract.BODY,
                    EventLogContract.events(day, after, 1, "command-" + after));
    }

    @BeforeEach
    void three_days_of_which_the_last_is_the_newest() {
        try (EventLog log = SqliteEventLog.open(folder)) {
            for (String day : DAYS) append(log, day, 0, 5);
        }
    }

    private Path anchor() {
        return folder.resolve("anchor");
    }

    /** A sound log in which some ends, or whole days, were never written takes the place of this one. */
    private void replaceLog(int first, int second, int third) throws IOException {
        Path place = Files.createTempDirectory(shorter, "log");
        try (EventLog log = SqliteEventLog.open(place)) {
            append(log, DAYS.get(0), 0, first);
            append(log, DAYS.get(1), 0, second);
            append(log, DAYS.get(2), 0, third);
        }
        Files.write(folder.resolve("log.db"), Files.readAllBytes(place.resolve("log.db")));
    }

    private List<String> found() {
        return LogMaintenance.verify(folder).stream()
                .map(EventLog.Damage::toString)
                .toList();
    }

    private void tellsLoss(String what) throws IOException {
        assertThat(found())
                .singleElement()
                .satisfies(damage -> assertThat(damage).contains("anchor: ").contains(what));
        try (SqliteEventLog log = SqliteEventLog.openToServe(folder)) {
            assertThat(log.anchorLoss())
                    .hasValueSatisfying(loss -> assertThat(loss).contains(what));
            assertThat(log.readOnly()).isEmpty();
            append(log, DAYS.get(0), 5, 6);
        }
        assertThat(found()).isEmpty();
        try (SqliteEventLog log = SqliteEventLog.openToServe(folder)) {
            assertThat(log.anchorLoss()).isEmpty();
        }
    }

    @Test
    void a_sound_log_has_nothing_to_tell() {
        assertThat(found()).isEmpty();
        assertThat(LogMaintenance.anchorNews(folder)).isEmpty();
        try (SqliteEventLog log = SqliteEventLog.openToServe(folder)) {
            assertThat(log.anchorLoss()).isEmpty();
        }
    }

    @Test
    void the_end_of_a_day_that_is_not_the_newest_is_missed() throws Exception {
        replaceLog(4, 5, 5);
        assertThat(found())
                .containsExactly(DAYS.get(0) + " revision 5: was stored (the file anchor says so) and is missing");
        byte[] before = Files.readAllBytes(anchor());
        try (SqliteEventLog log = SqliteEventLog.openToServe(folder)) {
            assertThat(log.readOnly()).isPresent();
        }
        assertThat(anchor()).hasBinaryContent(before);
    }

    @Test
    void a_whole_day_is_missed() throws Exception {
        replaceLog(5, 0, 5);
        assertThat(found())
                .containsExactly(DAYS.get(1) + " revision 5: was stored (the file anchor says so) and is missing");
    }

    @Test
    void a_day_opened_later_is_missed_too() throws Exception {
        String later = "quay-house/2027-03-12";
        try (EventLog log = SqliteEventLog.open(folder)) {
            append(log, later, 0, 2);
            append(log, DAYS.get(0), 5, 6);
        }
        replaceLog(6, 5, 5);
        assertThat(found()).containsExactly(later + " revision 2: was stored (the file anchor says so) and is missing");
    }

    @Test
    void a_missing_anchor_is_told_once_and_made_anew() throws Exception {
        Files.delete(anchor());
        tellsLoss("is missing");
    }

    @Test
    void an_emptied_anchor_is_told_once_and_made_anew() throws Exception {
        Files.write(anchor(), new byte[0]);
        tellsLoss("is empty");
    }

    @Test
    void a_shortened_anchor_is_told_once_and_made_anew() throws Exception {
        byte[] whole = Files.readAllBytes(anchor());
        for (int length : new int[] {whole.length - 512, 512, whole.length - 7, 100}) {
            Files.write(anchor(), Arrays.copyOf(whole, length));
            assertThat(found()).as("cut to " + length).isNotEmpty();
        }
        tellsLoss("is torn");
    }

    @Test
    void a_changed_byte_in_the_anchor_is_told() throws Exception {
        byte[] whole = Files.readAllBytes(anchor());
        for (int at = 0; at < whole.length; at += 97) {
            byte[] changed = whole.clone();
            changed[at] ^= 1;
            Files.write(anchor(), changed);
            assertThat(found()).as("byte " + at).isNotEmpty();
        }
    }

    @Test
    void an_older_anchor_is_told_and_carried_on() throws Exception {
        byte[] older = Files.readAllBytes(anchor());
        try (EventLog log = SqliteEventLog.open(folder)) {
            append(log, DAYS.get(0), 5, 9);
        }
        Files.write(anchor(), older);
        assertThat(found()).isEmpty();
        assertThat(LogMaintenance.anchorNews(folder))
                .hasValueSatisfying(news ->
                        assertThat(news).contains("is older than the log").contains(DAYS.get(0) + " from revision 6"));
        SqliteEventLog.open(folder).close();
        assertThat(LogMaintenance.anchorNews(folder)).isEmpty();
        replaceLog(8, 5, 5);
        assertThat(found()).hasSize(1);
    }

    @Test
    void an_anchor_of_an_earlier_release_is_checked_and_then_covers_every_day() throws Exception {
        String text;
        try (var connection = SqliteFile.openToRead(folder.resolve("log.db"))) {
            SqliteStatements.Head head = new SqliteStatements(connection).head(DAYS.get(2));
            text = DAYS.get(2) + " " + head.revision() + " " + HexFormat.of().formatHex(head.hash());
        }
        String digest = HexFormat.of().formatHex(HashChain.digest(text.getBytes(StandardCharsets.UTF_8)));
        Files.writeString(anchor(), String.format("%-511s%n", text + " " + digest));
        byte[] log = Files.readAllBytes(folder.resolve("log.db"));
        assertThat(found()).isEmpty();
        assertThat(LogMaintenance.anchorNews(folder))
                .hasValueSatisfying(news -> assertThat(news).contains("earlier release"));
        byte[] old = Files.readAllBytes(anchor());
        replaceLog(5, 5, 4);
        assertThat(found()).hasSize(1);
        Files.write(folder.resolve("log.db"), log);
        Files.write(anchor(), old);
        try (SqliteEventLog opened = SqliteEventLog.openToServe(folder)) {
            assertThat(opened.anchorLoss()).isEmpty();
            assertThat(opened.readOnly()).isEmpty();
        }
        replaceLog(5, 0, 5);
        assertThat(found()).hasSize(1);
    }
}
