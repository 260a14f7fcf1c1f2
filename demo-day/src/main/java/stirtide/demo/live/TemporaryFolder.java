package stirtide.demo.live;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import stirtide.planner.cli.CommandException;

/** A folder for the log of a demo; closing it removes it with its content. May be closed twice. */
final class TemporaryFolder implements AutoCloseable {
    /** Contains the process id, which tells whether the owner of a folder still runs. */
    private static final String PREFIX =
            "stirtide-demo-" + ProcessHandle.current().pid() + "-";

    private final Path path;

    private TemporaryFolder(Path path) {
        this.path = path;
    }

    static TemporaryFolder make() {
        try {
            return new TemporaryFolder(Files.createTempDirectory(PREFIX));
        } catch (IOException full) {
            throw new CommandException(
                    CommandException.UNAVAILABLE, "no temporary folder can be made: " + full.getMessage());
        }
    }

    Path path() {
        return path;
    }

    @Override
    public synchronized void close() {
        if (!Files.exists(path)) return;
        try (Stream<Path> inside = Files.walk(path)) {
            List<Path> deepestFirst = inside.sorted(Comparator.reverseOrder()).toList();
            for (Path each : deepestFirst) Files.deleteIfExists(each);
        } catch (IOException stays) {
            throw new UncheckedIOException("the temporary folder " + path + " cannot be removed", stays);
        }
    }
}
