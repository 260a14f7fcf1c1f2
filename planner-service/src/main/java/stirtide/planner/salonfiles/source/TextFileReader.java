package stirtide.planner.salonfiles.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Reads a file as UTF-8 text, within bounds. */
public final class TextFileReader {
    /** Largest file that is read, in bytes. */
    private static final int LARGEST_BYTES = 1024 * 1024;

    private static final String SAVE_AS = "a text file in UTF-8";

    private TextFileReader() {}

    /** The text of a file without its byte order mark, or empty after its problem was reported. */
    public static Optional<String> read(Path file, SourceFile source) {
        if (!Files.exists(file)) return refused(source, FileProblem.MISSING, "a file of this name in the folder");
        if (!Files.isRegularFile(file)) return refused(source, "(not a file)", "a file of this name in the folder");
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(LARGEST_BYTES + 1);
        } catch (IOException | SecurityException unreadable) {
            return refused(source, "(cannot be read)", "a file that this program may read");
        }
        if (bytes.length > LARGEST_BYTES) {
            return refused(source, "(more than " + LARGEST_BYTES + " bytes)", "at most " + LARGEST_BYTES + " bytes");
        }
        return decoded(bytes, source);
    }

    private static Optional<String> decoded(byte[] bytes, SourceFile source) {
        if (startsWith(bytes, 0xfe, 0xff) || startsWith(bytes, 0xff, 0xfe)) {
            return refused(source, "(UTF-16 text)", SAVE_AS);
        }
        ByteBuffer in = ByteBuffer.wrap(bytes);
        if (startsWith(bytes, 0xef, 0xbb, 0xbf)) in.position(3);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) return badByte(source, text, bytes[in.position()] & 0xff);
        if (text.isBlank()) return refused(source, "(empty)", SAVE_AS + " that is not empty");
        return Optional.of(text);
    }

    private static Optional<String> badByte(SourceFile source, String before, int value) {
        int line =
                1 + (int) before.chars().filter(character -> character == '\n').count();
        int column = before.length() - before.lastIndexOf('\n');
        source.refuse(line, column, at(line, column), String.format("(byte 0x%02x)", value), SAVE_AS);
        return Optional.empty();
    }

    private static Optional<String> refused(SourceFile source, String value, String accepted) {
        source.refuse(value, accepted);
        return Optional.empty();
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        if (bytes.length < start.length) return false;
        for (int i = 0; i < start.length; i++) if ((bytes[i] & 0xff) != start[i]) return false;
        return true;
    }

    /** A place in a file as people read it. */
    public static String at(int line, int column) {
        return "line " + line + ":" + column;
    }
}
