package stirtide.planner.access;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** Files that only their owner may read, replaced whole or not at all. */
public final class OwnerOnlyFile {
    private static final String OWNER_ONLY = "rw-------";

    private OwnerOnlyFile() {}

    /** Replaces a file; when this returns the new content is on the disk. */
    public static void write(Path file, String content) throws IOException {
        Path fresh = file.resolveSibling(file.getFileName() + ".new");
        Files.deleteIfExists(fresh);
        boolean posix = Files.getFileStore(folder(file)).supportsFileAttributeView("posix");
        var options = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try (FileChannel channel = posix
                ? FileChannel.open(
                        fresh,
                        options,
                        PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(OWNER_ONLY)))
                : FileChannel.open(fresh, options)) {
            ByteBuffer bytes = ByteBuffer.wrap(content.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) channel.write(bytes);
            channel.force(true);
        }
        Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        syncFolder(file);
    }

    /** Replaces a file and writes zeros over what stood in it before. */
    public static void writeOver(Path file, String content) throws IOException {
        if (!Files.exists(file)) {
            write(file, content);
            return;
        }
        try (FileChannel old = FileChannel.open(file, StandardOpenOption.WRITE)) {
            write(file, content);
            ByteBuffer zeros = ByteBuffer.allocate(Math.toIntExact(old.size()));
            while (zeros.hasRemaining()) old.write(zeros, zeros.position());
            old.force(true);
        }
    }

    private static void syncFolder(Path file) throws IOException {
        if (!Files.getFileStore(folder(file)).supportsFileAttributeView("posix")) return;
        try (FileChannel folder = FileChannel.open(folder(file), StandardOpenOption.READ)) {
            folder.force(true);
        }
    }

    private static Path folder(Path file) {
        Path parent = file.toAbsolutePath().getParent();
        if (parent == null) throw new IllegalArgumentException("a file in a folder, not " + file);
        return parent;
    }
}
