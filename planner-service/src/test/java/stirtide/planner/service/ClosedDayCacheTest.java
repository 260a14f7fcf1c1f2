package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClosedDayCacheTest {
    private static final String ONE = "quay-house/2027-03-09";
    private static final String OTHER = "quay-house/2027-03-10";
    private static final String THIRD = "quay-house/2027-03-11";

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void write_two_days() {
        file = folder.resolve("closed-days.db");
        try (ClosedDayCache cache = new ClosedDayCache(folder)) {
            cache.store(ONE, "3-ab", day(3, List.of()));
            cache.store(OTHER, "5-cd", day(5, List.of("c000001", "c000002")));
        }
    }

    private static ClosedDaySummary day(long revision, List<String> erased) {
        String content = "{\"past\":{\"salonId\":\"quay-house\",\"date\":\"2027-03-09\",\"uses\":[],"
                + "\"visits\":[],\"swatches\":[],\"strips\":[]},\"clients\":[\"c000007\"]}";
        return new ClosedDaySummary(
                revision, Instant.parse("2027-03-09T18:00:00Z"), erased, content.getBytes(StandardCharsets.UTF_8));
    }

    /** Whether a summary is there; one that is there is the one that was stored. */
    private static boolean holds(ClosedDayCache cache, String name, String seal, ClosedDaySummary stored) {
        var found = cache.find(name, seal);
        found.ifPresent(one -> assertThat(one).usingRecursiveComparison().isEqualTo(stored));
        return found.isPresent();
    }

    private boolean holdsOne(ClosedDayCache cache) {
        return holds(cache, ONE, "3-ab", day(3, List.of()));
    }

    private boolean holdsOther(ClosedDayCache cache) {
        return holds(cache, OTHER, "5-cd", day(5, List.of("c000001", "c000002")));
    }

    @Test
    void a_day_is_found_by_its_seal_only() {
        try (ClosedDayCache cache = new ClosedDayCache(folder)) {
            assertThat(cache.find(OTHER, "5-cd")).hasValueSatisfying(found -> {
                assertThat(found.revision()).isEqualTo(5);
                assertThat(found.erased()).containsExactly("c000001", "c000002");
                assertThat(found.knows("c000007")).isTrue();
                assertThat(found.knows("c00000")).isFalse();
                assertThat(found.knows("c000001")).isFalse();
                assertThat(found.past().salonId()).isEqualTo("quay-house");
            });
            assertThat(cache.find(OTHER, "6-cd")).isEmpty();
            assertThat(cache.find(THIRD, "5-cd")).isEmpty();
        }
    }

    @Test
    void a_day_with_a_changed_byte_counts_as_absent_and_a_damaged_file_never_shows_another_day() throws Exception {
        byte[] whole = Files.readAllBytes(file);
        int absent = 0;
        for (int at = 0; at < whole.length; at += 7) {
            byte[] changed = whole.clone();
            changed[at] ^= 0x15;
            Files.write(file, changed);
            try (ClosedDayCache cache = new ClosedDayCache(folder)) {
                if (!holdsOne(cache)) absent++;
                holdsOther(cache);
                cache.store(THIRD, "7-ef", day(7, List.of()));
            }
        }
        assertThat(absent).isPositive();
    }

    @Test
    void a_changed_byte_in_the_content_of_one_day_takes_no_other_along() throws Exception {
        String text = Files.readString(file, StandardCharsets.ISO_8859_1);
        int first = text.indexOf("c000007");
        int second = text.indexOf("c000007", first + 1);
        for (int at : List.of(first, second)) {
            Files.writeString(file, text.substring(0, at) + "d" + text.substring(at + 1), StandardCharsets.ISO_8859_1);
            try (ClosedDayCache cache = new ClosedDayCache(folder)) {
                assertThat(holdsOne(cache)).isNotEqualTo(holdsOther(cache));
            }
        }
    }

    @Test
    void a_file_cut_short_is_used_as_far_as_it_is_sound_and_written_anew() throws Exception {
        byte[] whole = Files.readAllBytes(file);
        for (int length = 0; length < whole.length; length += 97) {
            Files.write(file, Arrays.copyOf(whole, length));
            try (ClosedDayCache cache = new ClosedDayCache(folder)) {
                holdsOne(cache);
                holdsOther(cache);
                cache.store(ONE, "3-ab", day(3, List.of()));
            }
            // Damage that shows at writing only makes the file start anew once.
            try (ClosedDayCache cache = new ClosedDayCache(folder)) {
                cache.store(ONE, "3-ab", day(3, List.of()));
            }
            try (ClosedDayCache cache = new ClosedDayCache(folder)) {
                assertThat(holdsOne(cache)).as("cut at %d", length).isTrue();
            }
        }
    }

    @Test
    void a_newer_summary_of_a_day_wins_and_older_ones_do_not_pile_up() throws Exception {
        long before = Files.size(file);
        try (ClosedDayCache cache = new ClosedDayCache(folder)) {
            for (int revision = 6; revision < 60; revision++)
                cache.store(ONE, revision + "-ef", day(revision, List.of()));
        }
        assertThat(Files.size(file)).isEqualTo(before);
        try (ClosedDayCache cache = new ClosedDayCache(folder)) {
            assertThat(holds(cache, ONE, "59-ef", day(59, List.of()))).isTrue();
            assertThat(holdsOther(cache)).isTrue();
        }
    }

    @Test
    void what_was_replaced_is_overwritten() throws Exception {
        assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).contains("c000001,c000002");
        try (ClosedDayCache cache = new ClosedDayCache(folder)) {
            cache.store(OTHER, "6-cd", day(6, List.of()));
        }
        assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).doesNotContain("c000001");
    }

    @Test
    void without_the_file_or_with_something_else_in_its_place_nothing_is_known_and_it_is_written_anew()
            throws Exception {
        Files.write(file, new byte[] {(byte) 0xff, 0, 1, 2, '\n'});
        try (ClosedDayCache cache = new ClosedDayCache(folder)) {
            assertThat(holdsOne(cache)).isFalse();
            cache.store(ONE, "3-ab", day(3, List.of()));
        }
        try (ClosedDayCache cache = new ClosedDayCache(folder)) {
            assertThat(holdsOne(cache)).isTrue();
        }
        Files.delete(file);
        Files.createDirectories(file.resolve("taken"));
        try (ClosedDayCache cache = new ClosedDayCache(folder)) {
            assertThat(holdsOne(cache)).isFalse();
            cache.store(ONE, "3-ab", day(3, List.of()));
        }
    }

    @Test
    void the_file_of_an_earlier_release_is_removed() throws Exception {
        Path earlier = Files.writeString(folder.resolve("closed-days"), "00000000 00000000 quay-house\n");
        new ClosedDayCache(folder).close();
        assertThat(earlier).doesNotExist();
    }
}
