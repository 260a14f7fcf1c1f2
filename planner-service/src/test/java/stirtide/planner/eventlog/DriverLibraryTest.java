package stirtide.planner.eventlog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

/** The library of the driver lies beside the log as it is in the archive, and is written only when it does not. */
class DriverLibraryTest {
    private static final FileTime LONG_AGO = FileTime.from(Instant.parse("2020-01-01T00:00:00Z"));

    @TempDir
    Path folder;

    private byte[] archived() throws IOException {
        String path = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + LibraryLoaderUtil.getNativeLibName();
        try (var library = SQLiteJDBCLoader.class.getResourceAsStream(path)) {
            return library.readAllBytes();
        }
    }

    @Test
    void it_is_taken_out_once_and_then_left() throws Exception {
        Path file = DriverLibrary.provide(folder.resolve("native")).orElseThrow();
        assertThat(Files.readAllBytes(file)).isEqualTo(archived());
        Files.setLastModifiedTime(file, LONG_AGO);
        assertThat(DriverLibrary.provide(folder.resolve("native"))).contains(file);
        assertThat(Files.getLastModifiedTime(file)).isEqualTo(LONG_AGO);
    }

    @Test
    void one_that_differs_is_replaced_and_what_else_lies_there_goes() throws Exception {
        Path file = DriverLibrary.provide(folder).orElseThrow();
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 1;
        Files.write(file, bytes);
        Files.writeString(folder.resolve("leftover"), "of another release");
        assertThat(DriverLibrary.provide(folder)).contains(file);
        assertThat(Files.readAllBytes(file)).isEqualTo(archived());
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }
}
