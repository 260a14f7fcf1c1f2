package stirtide.planner.eventlog;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Files that are open, and whether their paths still lead to them. What is written to a file whose folder was removed,
 * or moved away, reaches the disk as ever and is found by nobody.
 */
final class HeldFiles {
    private final Map<Path, Object> keys = new LinkedHashMap<>();

    /** Takes note of a file that was just opened; of a system that does not tell files apart nothing is noted. */
    void hold(Path file) {
        Object key = key(file);
        if (key != null) keys.put(file, key);
    }

    /** Forgets a file that is closed and may be made anew. */
    void release(Path file) {
        keys.remove(file);
    }

    /** The first file that is not at its path any more. */
    Optional<Path> lost() {
        return keys.keySet().stream()
                .filter(file -> !Objects.equals(keys.get(file), key(file)))
                .findFirst();
    }

    private static @Nullable Object key(Path file) {
        try {
            return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
        } catch (IOException gone) {
            return null;
        }
    }
}
