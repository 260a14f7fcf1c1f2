package stirtide.planner.eventlog;

import java.io.IOException;
import java.io.InputStream;
import java.net.JarURLConnection;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * The native library of the database driver in a folder of its own. The driver would take it out of its archive at every
 * start and compare it byte by byte, which takes longer than to open a log of years.
 */
final class DriverLibrary {
    private DriverLibrary() {}

    /**
     * Has the driver of this process load the library from a folder, unless it has a place already.
     *
     * @throws IOException when the folder cannot be written
     */
    static void keepIn(Path folder) throws IOException {
        if (System.getProperty("org.sqlite.lib.path") != null || System.getProperty("org.sqlite.tmpdir") != null)
            return;
        Optional<Path> library = provide(folder);
        if (library.isEmpty()) {
            // None for this machine in the archive: the driver knows other places, and says so if it finds none there.
            System.setProperty("org.sqlite.tmpdir", folder.toString());
            return;
        }
        System.setProperty("org.sqlite.lib.path", folder.toString());
        System.setProperty("org.sqlite.lib.name", String.valueOf(library.get().getFileName()));
    }

    /** The library in a folder. One that is there as it is in the archive is left; else the folder is emptied first. */
    static Optional<Path> provide(Path folder) throws IOException {
        Files.createDirectories(folder);
        String name = LibraryLoaderUtil.getNativeLibName();
        URL archived = SQLiteJDBCLoader.class.getResource(LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name);
        if (archived == null || !(archived.openConnection() instanceof JarURLConnection entry)) return Optional.empty();
        Path file = folder.resolve(name);
        if (!holds(file, entry)) takeOut(archived, folder, file);
        return Optional.of(file);
    }

    private static boolean holds(Path file, JarURLConnection entry) throws IOException {
        if (!Files.isRegularFile(file)
                || Files.size(file) != entry.getJarEntry().getSize()) return false;
        CRC32 sum = new CRC32();
        sum.update(Files.readAllBytes(file));
        return sum.getValue() == entry.getJarEntry().getCrc();
    }

    private static void takeOut(URL archived, Path folder, Path file) throws IOException {
        try (Stream<Path> leftovers = Files.list(folder)) {
            for (Path leftover : leftovers.toList()) Files.deleteIfExists(leftover);
        }
        Path fresh = folder.resolve("library.new");
        try (InputStream library = archived.openStream()) {
            Files.copy(library, fresh);
        }
        Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
    }
}
