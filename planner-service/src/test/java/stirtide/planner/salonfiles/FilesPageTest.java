package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples that people copy from the page about files are the files the tests read. */
class FilesPageTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "good/salon.json",
                "good/developers.json",
                "good/directions/dune-powder.json",
                "good/menu.json",
                "good/bookings.json",
                "good/history.json",
                "bookings.ics"
            })
    void an_example_on_the_page_is_a_file_that_is_accepted(String name) throws IOException {
        // A calendar ends its lines with CR LF, a page of the handbook with LF.
        assertThat(Files.readString(Path.of("../docs/files.md")))
                .contains(TestFolder.resource(name).replace("\r\n", "\n").strip());
    }
}
