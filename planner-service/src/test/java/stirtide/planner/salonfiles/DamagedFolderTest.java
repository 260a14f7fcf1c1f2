package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Good files damaged at random places: the answer is always a folder read whole, or problems with their places. */
class DamagedFolderTest {
    private static final List<String> PIECES = List.of(
            "\"",
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "-",
            "0",
            "9999999999",
            "1.5",
            "null",
            "true",
            "\n",
            ";",
            "TZID=",
            "\\",
            "Z",
            "T",
            "END:VEVENT\n",
            "BEGIN:VEVENT\n",
            "RRULE:FREQ=DAILY\n",
            "\u00e9",
            "\u0000");

    @TempDir
    Path temp;

    static Stream<Arguments> files() {
        return Stream.of(
                        "salon.json",
                        "developers.json",
                        "directions/dune-powder.json",
                        "menu.json",
                        "bookings.json",
                        "bookings.ics")
                .flatMap(name -> Stream.of(11L, 12L, 13L).map(seed -> Arguments.of(name, seed)));
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_damaged_file_never_ends_in_anything_but_an_answer(String name, long seed) {
        Random random = new Random(seed);
        TestFolder folder = new TestFolder(temp);
        if (name.endsWith(".ics")) folder.withCalendar();
        byte[] good = folder.text(name).getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 40; i++) {
            folder.write(name, damaged(good, random));
            FolderResult answer = SalonFolder.read(temp, Optional.of(LocalDate.of(2027, 5, 14)));
            if (answer instanceof FolderResult.Rejected rejected) {
                assertThat(rejected.problems()).isNotEmpty().allSatisfy(problem -> {
                    assertThat(problem.file()).isNotBlank();
                    assertThat(problem.value()).isNotBlank();
                    assertThat(problem.accepted()).isNotBlank().doesNotContain("Exception");
                    assertThat(problem.toString().chars()).noneMatch(Character::isISOControl);
                });
            } else {
                assertThat(((FolderResult.Read) answer).bookings()).isNotEmpty();
            }
        }
    }

    private static byte[] damaged(byte[] good, Random random) {
        int at = random.nextInt(good.length);
        int until = Math.min(good.length, at + random.nextInt(4));
        List<byte[]> parts = new ArrayList<>(List.of(Arrays.copyOfRange(good, 0, at)));
        if (random.nextInt(5) > 0) {
            parts.add(PIECES.get(random.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8));
            parts.add(Arrays.copyOfRange(good, until, good.length));
        }
        byte[] all = new byte[parts.stream().mapToInt(part -> part.length).sum()];
        int end = 0;
        for (byte[] part : parts) {
            System.arraycopy(part, 0, all, end, part.length);
            end += part.length;
        }
        return all;
    }
}
