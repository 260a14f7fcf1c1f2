package stirtide.planner.eventlog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.ContractJson;
import stirtide.planner.day.Evolver;
import stirtide.planner.privacy.ClientKeys;
import stirtide.planner.views.DayViews;

/**
 * Data folders as earlier versions wrote them. Every later version opens them, finds them sound, and shows the same day.
 * {@code log-0.1.0} is the demo day, played to its end.
 */
class StoredVersionsTest {
    private static final String DAY = "quillon-row/2027-06-11";
    private static final Instant SHOWN_AT = Instant.parse("2027-06-11T18:00:00Z");

    @TempDir
    Path folder;

    @BeforeEach
    void unpack() throws IOException {
        try (InputStream packed = Files.newInputStream(Path.of("src/test/resources/logs/log-0.1.0.zip"));
                ZipInputStream zip = new ZipInputStream(packed)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry())
                Files.copy(zip, folder.resolve(Path.of(entry.getName()).getFileName()));
        }
    }

    @Test
    void the_log_is_sound() {
        assertThat(LogMaintenance.verify(folder)).isEmpty();
    }

    @Test
    void every_event_is_exported_byte_for_byte() {
        StringBuilder lines = new StringBuilder();
        assertThat(LogMaintenance.export(
                        folder, Optional.empty(), line -> lines.append(line).append('\n')))
                .isEmpty();
        assertThat(digest(lines.toString())).isEqualTo(golden("export"));
    }

    @Test
    void every_event_is_read_and_written_again_byte_for_byte() {
        StringBuilder lines = new StringBuilder();
        for (StoredEvent event : events())
            lines.append(new String(EventEncoder.of(event), StandardCharsets.UTF_8))
                    .append('\n');
        assertThat(digest(lines.toString())).isEqualTo(golden("export"));
    }

    @Test
    void the_replayed_day_is_shown_byte_for_byte() throws IOException {
        String view = ContractJson.write(DayViews.of(Evolver.replay(events()), SHOWN_AT, 0));
        assertThat(digest(view)).isEqualTo(golden("view"));
        assertThat(digest(new ClientKeys(folder).shown(view))).isEqualTo(golden("view-with-clients"));
    }

    @Test
    void the_log_takes_further_events() {
        try (EventLog log = SqliteEventLog.open(folder)) {
            long head = log.head(DAY);
            EventLog.Append answer = log.append(DAY, head, "later-1", new byte[] {1}, List.of());
            assertThat(answer).isEqualTo(new EventLog.Append.Appended(head + 1, head));
        }
    }

    private List<StoredEvent> events() {
        try (EventLog log = SqliteEventLog.open(folder)) {
            assertThat(log.days()).containsExactly(DAY);
            List<StoredEvent> events = new ArrayList<>();
            while (events.size() < log.head(DAY)) events.addAll(log.read(DAY, events.size(), EventLog.READ_LIMIT));
            return events;
        }
    }

    /** A line of the file of digests: its name, a space, the digest. */
    private static String golden(String name) {
        try {
            return Files.readAllLines(Path.of("src/test/resources/logs/log-0.1.0.sha256")).stream()
                    .filter(line -> line.startsWith(name + " "))
                    .map(line -> line.substring(name.length() + 1))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    private static String digest(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException notInThisJava) {
            throw new IllegalStateException(notInThisJava);
        }
    }
}
