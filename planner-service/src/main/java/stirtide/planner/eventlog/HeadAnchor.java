package stirtide.planner.eventlog;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The newest stored event, noted outside the log file after its append is durable. A log that has lost its end is
 * consistent in itself; only this note shows it. It is not forced to the disk: after a power cut it may be older than the
 * log, which is harmless, but never newer. A note that is torn counts as absent.
 */
final class HeadAnchor implements AutoCloseable {
    private static final int LINE_LENGTH = 512;

    private final FileChannel file;

    HeadAnchor(Path path) throws IOException {
        this.file = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }

    /** An event by its place and digest. */
    record Note(String day, long revision, byte[] hash) {}

    void write(Note note) throws IOException {
        String text = note.day() + " " + note.revision() + " " + hex(note.hash());
        String line = text + " " + hex(HashChain.digest(text.getBytes(StandardCharsets.UTF_8)));
        byte[] padded = String.format("%-" + (LINE_LENGTH - 1) + "s%n", line).getBytes(StandardCharsets.UTF_8);
        ByteBuffer bytes = ByteBuffer.wrap(padded);
        long at = 0;
        while (bytes.hasRemaining()) at += file.write(bytes, at);
    }

    /** The note in a file, empty when there is none or it is torn. */
    static Optional<Note> read(Path path) throws IOException {
        if (!Files.exists(path)) return Optional.empty();
        String[] words = new String(Files.readAllBytes(path), StandardCharsets.UTF_8)
                .strip()
                .split(" ");
        if (words.length != 4) return Optional.empty();
        String text = words[0] + " " + words[1] + " " + words[2];
        if (!words[3].equals(hex(HashChain.digest(text.getBytes(StandardCharsets.UTF_8))))) return Optional.empty();
        return Optional.of(
                new Note(words[0], Long.parseLong(words[1]), HexFormat.of().parseHex(words[2])));
    }

    private static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
