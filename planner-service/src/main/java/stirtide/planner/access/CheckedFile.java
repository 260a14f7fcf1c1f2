package stirtide.planner.access;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Owner-only text files whose last line is the SHA-256 of all before it, so that none is read that was changed or cut. */
public final class CheckedFile {
    private static final Pattern LAST_LINE = Pattern.compile("(?s)(.*)\nsha256 ([0-9a-f]{64})\n");

    private CheckedFile() {}

    /**
     * What a file holds.
     *
     * @param text all but the last line
     * @param checked whether there was such a line; files of earlier releases have none
     */
    public record Content(String text, boolean checked) {}

    /**
     * Reads a file.
     *
     * @throws IOException when it cannot be read, is no UTF-8, or is not what was written
     */
    public static Content read(Path file) throws IOException {
        String whole;
        try {
            whole = Files.readString(file);
        } catch (CharacterCodingException noText) {
            throw new IOException(file + " is not what was written: it is no text", noText);
        }
        Matcher parts = LAST_LINE.matcher(whole);
        if (!parts.matches()) return new Content(whole, false);
        if (!Secrets.sha256(parts.group(1)).equals(parts.group(2)))
            throw new IOException(file + " is not what was written: it has another digest");
        return new Content(parts.group(1), true);
    }

    /** Replaces a file; when this returns the new content is on the disk. */
    public static void write(Path file, String text) throws IOException {
        OwnerOnlyFile.write(file, withDigest(text));
    }

    /** Replaces a file and writes zeros over what stood in it before. */
    public static void writeOver(Path file, String text) throws IOException {
        OwnerOnlyFile.writeOver(file, withDigest(text));
    }

    private static String withDigest(String text) {
        return text + "\nsha256 " + Secrets.sha256(text) + "\n";
    }
}
