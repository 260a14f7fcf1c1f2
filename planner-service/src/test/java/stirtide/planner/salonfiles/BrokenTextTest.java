package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that cannot be read as text or as JSON at all. */
class BrokenTextTest {
    private static final int MEBIBYTE = 1024 * 1024;

    @TempDir
    Path temp;

    static Stream<BrokenFolder> texts() {
        return Stream.of(
                new BrokenFolder(
                        "missing", f -> f.without("menu.json"), "menu.json", "", "(missing)", "a file of this name"),
                new BrokenFolder("empty", f -> f.write("menu.json", ""), "menu.json", "", "(empty)", "not empty"),
                new BrokenFolder(
                        "only blanks", f -> f.write("menu.json", " \n\n"), "menu.json", "", "(empty)", "not empty"),
                new BrokenFolder(
                        "truncated",
                        f -> f.write("menu.json", f.text("menu.json").substring(0, 400)),
                        "menu.json",
                        "line 14:25",
                        "(the file ends here)",
                        "complete to its last bracket"),
                new BrokenFolder(
                        "1 MiB of random bytes",
                        f -> f.write("menu.json", noise(MEBIBYTE)),
                        "menu.json",
                        "line 1:",
                        "(byte 0x",
                        "UTF-8"),
                new BrokenFolder(
                        "1 MiB of brackets",
                        f -> f.write("menu.json", "[".repeat(MEBIBYTE)),
                        "menu.json",
                        "line 1:",
                        "(too long or too deep)",
                        "at most 16 levels"),
                new BrokenFolder(
                        "1 MiB of letters",
                        f -> f.write("menu.json", "x".repeat(MEBIBYTE)),
                        "menu.json",
                        "line 1:",
                        "xxx",
                        "JSON"),
                new BrokenFolder(
                        "more than 1 MiB",
                        f -> f.write("menu.json", " ".repeat(MEBIBYTE) + "{}"),
                        "menu.json",
                        "",
                        "(more than 1048576 bytes)",
                        "at most 1048576 bytes"),
                new BrokenFolder(
                        "UTF-16",
                        f -> f.write("menu.json", f.text("menu.json").getBytes(StandardCharsets.UTF_16)),
                        "menu.json",
                        "",
                        "(UTF-16 text)",
                        "UTF-8"),
                new BrokenFolder(
                        "Latin-1",
                        f -> f.write("salon.json", f.text("salon.json").getBytes(StandardCharsets.ISO_8859_1)),
                        "salon.json",
                        "line 12:18",
                        "(byte 0xea)",
                        "UTF-8"),
                new BrokenFolder(
                        "a key twice",
                        f -> f.with("salon.json", "\"chairs\": 4,", "\"chairs\": 4, \"chairs\": 5,"),
                        "salon.json",
                        "/chairs line 6:",
                        "\"chairs\" a second time",
                        "each key once"),
                new BrokenFolder(
                        "more after the end",
                        f -> f.write("menu.json", f.text("menu.json") + "{}"),
                        "menu.json",
                        "/ line 5",
                        "(more after the end)",
                        "nothing after it"),
                new BrokenFolder(
                        "a comma too many",
                        f -> f.with("salon.json", "\"washMinutes\": 8,", "\"washMinutes\": 8,,"),
                        "salon.json",
                        "line 8:",
                        ",",
                        "JSON (RFC 8259)"),
                new BrokenFolder(
                        "a number with exponent",
                        f -> f.with("salon.json", "\"washMinutes\": 8", "\"washMinutes\": 1e999999999"),
                        "salon.json",
                        "/washMinutes line 8:18",
                        "1e999999999",
                        "without exponent"),
                new BrokenFolder(
                        "a number that is none",
                        f -> f.with("salon.json", "\"washMinutes\": 8", "\"washMinutes\": NaN"),
                        "salon.json",
                        "line 8:",
                        "NaN",
                        "JSON (RFC 8259)"),
                new BrokenFolder(
                        "a very long number",
                        f -> f.with("salon.json", "\"washMinutes\": 8", "\"washMinutes\": " + "8".repeat(30)),
                        "salon.json",
                        "line 8:",
                        "(too long or too deep)",
                        "numbers of at most 20 digits"),
                new BrokenFolder(
                        "an escape sequence for terminals",
                        f -> f.with("salon.json", "Kelp & Comb", "Kelp\\u001b[2J"),
                        "salon.json",
                        "/name line 3:11",
                        "Kelp\\u001b[2J",
                        "without control characters"),
                new BrokenFolder(
                        "no directions",
                        f -> f.without("directions/dune-powder.json")
                                .without("directions/reef-clay.json")
                                .write("directions/.keep", ""),
                        "directions",
                        "",
                        "(empty)",
                        "one file of directions"),
                new BrokenFolder(
                        "a stray file beside the directions",
                        f -> f.write("directions/sand.jsn", "{}"),
                        "directions",
                        "",
                        "sand.jsn",
                        ".json"),
                new BrokenFolder(
                        "no bookings",
                        f -> f.without("bookings.json"),
                        ".",
                        "",
                        "no file of bookings",
                        "exactly one of"),
                new BrokenFolder(
                        "bookings twice",
                        f -> f.write("bookings.ics", TestFolder.resource("bookings.ics")),
                        "bookings.ics",
                        "",
                        "both files of bookings",
                        "exactly one of"));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void a_file_that_cannot_be_read_is_refused_with_its_place(BrokenFolder broken) {
        broken.check(temp, Optional.empty());
    }

    @Test
    void what_is_missing_is_said_to_be_missing() {
        TestFolder folder = new TestFolder(temp);
        folder.without("menu.json");
        assertThat(folder.rejected(Optional.empty()).problems().get(0))
                .hasToString("menu.json is missing; accepted: a file of this name in the folder");
    }

    @Test
    void a_folder_that_does_not_exist_is_refused() {
        FolderResult answer = SalonFolder.read(temp.resolve("nowhere"), Optional.empty());
        assertThat(answer).isInstanceOfSatisfying(FolderResult.Rejected.class, rejected -> {
            assertThat(rejected.lines()).hasSize(1);
            assertThat(rejected.problems().get(0).accepted()).isEqualTo("a folder that exists");
        });
    }

    @Test
    void a_byte_order_mark_of_utf_8_is_skipped() {
        TestFolder folder = new TestFolder(temp);
        folder.write("menu.json", "\ufeff" + folder.text("menu.json"));
        assertThat(folder.accepted(Optional.empty()).bookings()).hasSize(2);
    }

    private static byte[] noise(int length) {
        byte[] bytes = new byte[length];
        new Random(7).nextBytes(bytes);
        return bytes;
    }
}
