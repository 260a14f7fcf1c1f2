package stirtide.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Where the demo salon lies, and copies of it that a test may break. */
public final class DemoFolders {
    public static final Path SALON = Path.of("salon").toAbsolutePath();

    private DemoFolders() {}

    public static Path copyOfSalon(Path into) {
        try (Stream<Path> all = Files.walk(SALON)) {
            for (Path from : all.toList()) {
                Path to = into.resolve(SALON.relativize(from).toString());
                if (Files.isDirectory(from)) Files.createDirectories(to);
                else Files.copy(from, to);
            }
            return into;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
