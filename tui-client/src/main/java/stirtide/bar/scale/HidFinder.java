package stirtide.bar.scale;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Finds scales among the raw USB devices of Linux by how their report descriptor begins. */
public final class HidFinder {
    private static final byte[][] SCALE_PAGE = {{0x05, (byte) 0x8D}, {0x06, (byte) 0x8D, 0x00}};

    private HidFinder() {}

    /**
     * The first scale.
     *
     * @param classFolder {@code /sys/class/hidraw} in earnest
     * @param devices {@code /dev} in earnest
     */
    public static Optional<Path> first(Path classFolder, Path devices) throws IOException {
        if (!Files.isDirectory(classFolder)) return Optional.empty();
        var found = new TreeSet<Path>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(classFolder)) {
            for (Path entry : entries) {
                if (isScale(entry.resolve("device/report_descriptor"))) found.add(devices.resolve(entry.getFileName()));
            }
        }
        return found.stream().findFirst();
    }

    private static boolean isScale(Path descriptor) throws IOException {
        if (!Files.isReadable(descriptor)) return false;
        byte[] bytes = Files.readAllBytes(descriptor);
        return List.of(SCALE_PAGE).stream().anyMatch(start -> startsWith(bytes, start));
    }

    private static boolean startsWith(byte[] bytes, byte[] start) {
        if (bytes.length < start.length) return false;
        for (int i = 0; i < start.length; i++) if (bytes[i] != start[i]) return false;
        return true;
    }
}
