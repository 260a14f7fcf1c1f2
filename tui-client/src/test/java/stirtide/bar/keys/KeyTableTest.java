package stirtide.bar.keys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KeyTableTest {
    private static final Path HANDBOOK = Path.of("../docs/terminal.md");
    private static final String BEGIN = "<!-- keys: begin -->\n";
    private static final String END = "<!-- keys: end -->";

    @ParameterizedTest
    @EnumSource(KeyContext.class)
    void no_key_means_two_things_at_one_place(KeyContext place) {
        Set<Key> seen = new HashSet<>();
        for (KeyBinding binding : KeyTable.of(place, true, true)) {
            assertThat(seen.add(binding.press(0))).as(binding.shown()).isTrue();
        }
    }

    @Test
    void every_action_has_a_key_and_every_key_a_sentence() {
        List<KeyAction> bound =
                KeyTable.ALL.stream().map(KeyBinding::action).distinct().toList();
        assertThat(bound).containsExactlyInAnyOrder(KeyAction.values());
        assertThat(KeyTable.ALL)
                .allSatisfy(binding -> assertThat(binding.sentence()).isNotBlank());
    }

    @Test
    void every_key_is_found_at_its_place() {
        assertThat(KeyTable.ALL)
                .allSatisfy(binding -> assertThat(KeyTable.action(binding.context(), binding.press(5), true, true))
                        .contains(binding.action()));
    }

    @Test
    void who_may_only_read_has_no_key_that_writes() {
        assertThat(Arrays.stream(KeyContext.values()).flatMap(place -> KeyTable.of(place, false, true).stream()))
                .noneMatch(KeyBinding::writes);
        assertThat(KeyTable.action(KeyContext.BAR, Key.of('m', 0), false, false))
                .isEmpty();
    }

    @Test
    void a_clock_that_cannot_be_driven_has_no_keys() {
        assertThat(KeyTable.action(KeyContext.BAR, Key.of('p', 0), true, false)).isEmpty();
        assertThat(KeyTable.action(KeyContext.BAR, Key.of('p', 0), true, true)).contains(KeyAction.PAUSE);
    }

    /** A split escape sequence can leave these behind, so none of them may change anything. */
    @Test
    void rests_of_escape_sequences_do_nothing() {
        for (char rest : "[OABCDHFPQRS~;".toCharArray()) {
            assertThat(KeyTable.action(KeyContext.BAR, Key.of(rest, 0), true, true))
                    .as("" + rest)
                    .isEmpty();
        }
    }

    @Test
    void keys_of_shells_and_multiplexers_stay_free() {
        for (char letter : "abdesz".toCharArray()) {
            assertThat(KeyTable.action(KeyContext.BAR, Key.control(letter, 0), true, true))
                    .isEmpty();
        }
    }

    /** With {@code -Dframes.update=true} the handbook's table is written instead. */
    @Test
    void the_handbook_holds_this_table() throws IOException {
        String handbook = Files.readString(HANDBOOK);
        int begin = handbook.indexOf(BEGIN) + BEGIN.length();
        int end = handbook.indexOf(END);
        String table = table();
        if (Boolean.getBoolean("frames.update")) {
            Files.writeString(HANDBOOK, handbook.substring(0, begin) + table + handbook.substring(end));
        }
        assertThat(Files.readString(HANDBOOK)).contains(BEGIN + table + END);
    }

    private static String table() {
        var text = new StringBuilder("| in | key | does | |\n|---|---|---|---|\n");
        Map<String, String> keys = new LinkedHashMap<>();
        for (KeyBinding binding : KeyTable.ALL) {
            String note = binding.drivenClockOnly() ? "demo clock" : binding.writes() ? "writes" : "";
            keys.merge(
                    "| " + binding.context().words() + " | %s | " + binding.sentence() + " | " + note + " |\n",
                    "`" + binding.shown() + "`",
                    (all, next) -> all + " " + next);
        }
        keys.forEach((row, shown) -> text.append(row.replace("%s", shown)));
        return text.toString();
    }
}
