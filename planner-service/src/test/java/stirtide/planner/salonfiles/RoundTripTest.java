package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.day.Booking;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.planner.salonfiles.export.SetupFiles;
import stirtide.planner.salonfiles.json.BookingsFile;
import stirtide.planner.salonfiles.json.DevelopersFile;
import stirtide.planner.salonfiles.json.FileJson;
import stirtide.planner.salonfiles.json.FileSchema;
import stirtide.planner.salonfiles.json.HistoryFile;
import stirtide.planner.salonfiles.json.MenuFile;
import stirtide.planner.salonfiles.json.SalonFile;
import stirtide.planner.salonfiles.source.ProblemCollector;
import stirtide.planner.salonfiles.source.SourceFile;

/** What is written is read back as it was, and what is read is written as it stood. */
class RoundTripTest {
    private static final JsonMapper DECIMALS = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    @TempDir
    Path temp;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_setup_written_as_files_is_read_back_as_the_same_setup(long seed) {
        SeededSetups seeded = new SeededSetups(seed);
        DaySetup setup = seeded.setup();
        List<Booking> bookings = seeded.bookings(setup);
        TestFolder folder = TestFolder.empty(temp);
        var files = SetupFiles.of(setup, bookings);
        files.forEach(folder::write);
        FolderResult.Read back = folder.accepted(Optional.empty());
        assertThat(back.setup()).isEqualTo(setup);
        assertThat(back.bookings()).isEqualTo(bookings);
        assertThat(SetupFiles.of(back.setup(), back.bookings())).isEqualTo(files);
        assertThat(SetupCheck.problems(setup)).isEmpty();
    }

    static Stream<Arguments> files() {
        return Stream.of(
                Arguments.of("salon.json", FileSchema.SALON, SalonFile.class),
                Arguments.of("developers.json", FileSchema.DEVELOPERS, DevelopersFile.class),
                Arguments.of("directions/dune-powder.json", FileSchema.DIRECTIONS, Directions.class),
                Arguments.of("menu.json", FileSchema.MENU, MenuFile.class),
                Arguments.of("bookings.json", FileSchema.BOOKINGS, BookingsFile.class),
                Arguments.of("history.json", FileSchema.HISTORY, HistoryFile.class));
    }

    @ParameterizedTest
    @MethodSource("files")
    <T> void a_file_read_into_its_record_is_written_as_it_stood(String name, FileSchema schema, Class<T> type)
            throws IOException {
        String text = TestFolder.resource("good/" + name);
        ProblemCollector problems = new ProblemCollector();
        T record = FileJson.read(text, new SourceFile(name, 0, problems), schema, type)
                .orElseThrow()
                .value();
        assertThat(problems.none()).isTrue();
        assertThat(comparable(FileJson.write(record))).isEqualTo(comparable(text));
    }

    /** Keys that are only checked, and values that say the same as nothing, are left out; numbers lose trailing zeros. */
    private static JsonNode comparable(String text) throws IOException {
        return comparable(DECIMALS.readTree(text));
    }

    private static JsonNode comparable(JsonNode node) {
        if (node.isNumber()) return DecimalNode.valueOf(node.decimalValue().stripTrailingZeros());
        if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) list.set(i, comparable(list.get(i)));
        } else if (node instanceof ObjectNode object) {
            object.remove(List.of("volumes", "highestVolumes", "ratioBy", "$schema"));
            if (object.path("gapMinutes").asInt() == 0) object.remove("gapMinutes");
            if (object.path("breaks").isEmpty()) object.remove("breaks");
            List<String> keys = new ArrayList<>();
            object.fieldNames().forEachRemaining(keys::add);
            keys.forEach(key -> object.set(key, comparable(object.get(key))));
        }
        return node;
    }
}
