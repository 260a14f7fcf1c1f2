package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.planner.service.ClosedDaySummaries.Resting;

class ClosedDayCacheTest {
    private static final String ONE = "quay-house/2027-03-09";
    private static final String OTHER = "quay-house/2027-03-10";

    @TempDir
    Path folder;

    @BeforeEach
    void write_two_days() {
        ClosedDayCache file = new ClosedDayCache(folder);
        file.keep(ONE, "3-ab", day(3, List.of()));
        file.keep(OTHER, "5-cd", day(5, List.of("c000001", "c000002")));
    }

    private static Resting day(long revision, List<String> erased) {
        String lessons = "{\"past\":{\"salonId\":\"quay-house\",\"date\":\"2027-03-09\",\"uses\":[],"
                + "\"visits\":[],\"swatches\":[],\"strips\":[]},\"clients\":[\"c000007\"]}";
        return new Resting(
                revision, Instant.parse("2027-03-09T18:00:00Z"), erased, lessons.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void a_day_is_found_by_its_seal_only() {
        ClosedDayCache file = new ClosedDayCache(folder);
        assertThat(file.find(OTHER, "5-cd")).hasValueSatisfying(found -> {
            assertThat(found.revision()).isEqualTo(5);
            assertThat(found.erased()).containsExactly("c000001", "c000002");
            assertThat(found.knows("c000007")).isTrue();
            assertThat(found.knows("c00000")).isFalse();
            assertThat(found.knows("c000001")).isFalse();
            assertThat(found.past().salonId()).isEqualTo("quay-house");
        });
        assertThat(file.find(OTHER, "6-cd")).isEmpty();
        assertThat(file.find("quay-house/2027-03-11", "5-cd")).isEmpty();
    }

    @Test
    void a_line_with_any_changed_byte_counts_as_absent() throws Exception {
        String text = Files.readString(folder.resolve("closed-days"));
        int length = text.indexOf('\n');
        for (int at = 0; at < length; at += 5) {
            char other = text.charAt(at) == 'x' ? 'y' : 'x';
            Files.writeString(folder.resolve("closed-days"), text.substring(0, at) + other + text.substring(at + 1));
            ClosedDayCache file = new ClosedDayCache(folder);
            assertThat(file.find(ONE, "3-ab")).as("byte %d", at).isEmpty();
            assertThat(file.find(OTHER, "5-cd")).isPresent();
        }
    }

    @Test
    void a_line_cut_short_takes_no_other_along() throws Exception {
        String text = Files.readString(folder.resolve("closed-days"));
        int length = text.indexOf('\n');
        for (int cut = 0; cut < length; cut += 5) {
            Files.writeString(folder.resolve("closed-days"), text.substring(0, cut) + text.substring(length));
            ClosedDayCache file = new ClosedDayCache(folder);
            assertThat(file.find(ONE, "3-ab")).as("cut at %d", cut).isEmpty();
            assertThat(file.find(OTHER, "5-cd")).isPresent();
            Files.writeString(folder.resolve("closed-days"), text.substring(0, length + 1 + cut));
            assertThat(new ClosedDayCache(folder).find(ONE, "3-ab")).isPresent();
        }
    }

    @Test
    void a_newer_line_of_a_day_wins_and_stale_lines_do_not_pile_up() throws Exception {
        ClosedDayCache file = new ClosedDayCache(folder);
        for (int revision = 6; revision < 60; revision++) file.keep(ONE, revision + "-ef", day(revision, List.of()));
        assertThat(Files.readAllLines(folder.resolve("closed-days"))).hasSizeLessThan(8);
        assertThat(new ClosedDayCache(folder).find(ONE, "59-ef")).isPresent();
        assertThat(new ClosedDayCache(folder).find(OTHER, "5-cd")).isPresent();
    }

    @Test
    void without_the_file_or_with_something_else_in_its_place_nothing_is_known() throws Exception {
        Files.write(folder.resolve("closed-days"), new byte[] {(byte) 0xff, 0, 1, 2, '\n'});
        assertThat(new ClosedDayCache(folder).find(ONE, "3-ab")).isEmpty();
        Files.delete(folder.resolve("closed-days"));
        assertThat(new ClosedDayCache(folder).find(ONE, "3-ab")).isEmpty();
    }
}
