package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A good folder that a test breaks in one place. */
final class TestFolder {
    private static final List<String> NAMES = List.of(
            "salon.json",
            "developers.json",
            "directions/dune-powder.json",
            "directions/reef-clay.json",
            "menu.json",
            "bookings.json");

    private final Path path;

    TestFolder(Path path) {
        this(path, NAMES);
    }

    private TestFolder(Path path, List<String> names) {
        this.path = path;
        names.forEach(name -> write(name, resource("good/" + name)));
    }

    /** A folder without files. */
    static TestFolder empty(Path path) {
        return new TestFolder(path, List.of());
    }

    /** Replaces the only occurrence of a text in a file. */
    TestFolder with(String name, String from, String to) {
        String text = text(name);
        assertThat(text).containsOnlyOnce(from);
        return write(name, text.replace(from, to));
    }

    TestFolder write(String name, String text) {
        return write(name, text.getBytes(StandardCharsets.UTF_8));
    }

    TestFolder write(String name, byte[] bytes) {
        try {
            Files.createDirectories(path.resolve(name).getParent());
            Files.write(path.resolve(name), bytes);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        return this;
    }

    TestFolder without(String name) {
        try {
            Files.delete(path.resolve(name));
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        return this;
    }

    /** Replaces the list of bookings by the good calendar. */
    TestFolder withCalendar() {
        return withCalendar(resource("bookings.ics"));
    }

    /** Replaces the list of bookings by a calendar. */
    TestFolder withCalendar(String calendar) {
        if (Files.exists(path.resolve("bookings.json"))) without("bookings.json");
        return write("bookings.ics", calendar);
    }

    String text(String name) {
        try {
            return Files.readString(path.resolve(name));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    FolderResult.Read accepted(Optional<LocalDate> date) {
        FolderResult answer = SalonFolder.read(path, date);
        if (answer instanceof FolderResult.Rejected rejected)
            assertThat(rejected.lines()).isEmpty();
        return (FolderResult.Read) answer;
    }

    FolderResult.Rejected rejected(Optional<LocalDate> date) {
        FolderResult answer = SalonFolder.read(path, date);
        assertThat(answer).isInstanceOf(FolderResult.Rejected.class);
        return (FolderResult.Rejected) answer;
    }

    static String resource(String name) {
        try (InputStream in = TestFolder.class.getResourceAsStream("/files/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
