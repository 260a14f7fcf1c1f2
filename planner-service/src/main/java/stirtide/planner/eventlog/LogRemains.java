package stirtide.planner.eventlog;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Tells a log that was lost from one that was never there, before the database opens the file: to SQLite a file that is
 * missing, or shorter than one page, is a new one, and it deletes the write-ahead file beside it.
 */
final class LogRemains {
    /** Files that come into a data folder only after its log was made. */
    private static final List<String> LATER_THAN_LOG =
            List.of("anchor", "clients.keys", "clients.erased", "closed-days.db");

    private static final int HEADER_BYTES = 100;
    private static final int WAL_HEADER_BYTES = 32;
    private static final int FRAME_HEADER_BYTES = 24;

    private final Path log;
    private final Path writeAhead;
    private final long length;
    private final long writeAheadLength;

    private LogRemains(Path log) throws IOException {
        this.log = log;
        this.writeAhead = log.resolveSibling("log.db-wal");
        this.length = length(log);
        this.writeAheadLength = length(writeAhead);
    }

    /**
     * Requires that the log of a folder is there with all its pages, or that nothing in the folder is of a log.
     *
     * @throws LogFailure DAMAGED when the log is missing, empty or shortened; nothing was changed
     */
    static void requireWhole(LogFolder folder) {
        require(folder, true);
    }

    /**
     * Requires that anything is left of the log, so that opening it for reading changes nothing.
     *
     * @throws LogFailure DAMAGED when the log is missing or empty beside its remains
     */
    static void requireAny(LogFolder folder) {
        require(folder, false);
    }

    private static void require(LogFolder folder, boolean whole) {
        try {
            LogRemains remains = new LogRemains(folder.file());
            Optional<String> found = remains.lost();
            if (found.isEmpty() && whole) found = remains.shortened();
            if (found.isPresent())
                throw new LogFailure(
                        LogFailure.Kind.DAMAGED,
                        "the log " + folder.file() + " " + found.get()
                                + ". Nothing in the folder was changed; restore a"
                                + " backup into an empty folder, or name an empty folder to begin a new log");
        } catch (IOException unreadable) {
            throw new LogFailure(LogFailure.Kind.NO_PLACE, "cannot read " + folder.file(), unreadable);
        }
    }

    private static long length(Path file) throws IOException {
        return Files.exists(file) ? Files.size(file) : 0;
    }

    /** What is wrong when the database would take the file for a new one although it is not. */
    private Optional<String> lost() throws IOException {
        Optional<String> remains = remains();
        if (remains.isEmpty()) return Optional.empty();
        String beside = ", although " + remains.get() + " lies beside it";
        if (!Files.exists(log)) return Optional.of("is missing" + beside);
        if (length == 0) return Optional.of("is empty" + beside);
        if (length < HEADER_BYTES || length < pageBytes(header())) return Optional.of("is shortened" + beside);
        return writeAheadLength == 0 && header().getInt(60) == 0 && header().getInt(68) == 0
                ? Optional.of("holds nothing" + beside)
                : Optional.empty();
    }

    private Optional<String> remains() throws IOException {
        if (writeAheadLength > 0) return Optional.of(name(writeAhead));
        for (String name : LATER_THAN_LOG) if (Files.exists(log.resolveSibling(name))) return Optional.of(name);
        return Optional.empty();
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    /** Pages that the header counts and that are neither in the file nor in the write-ahead file. */
    private Optional<String> shortened() throws IOException {
        if (length < HEADER_BYTES) return Optional.empty();
        ByteBuffer header = header();
        int pageBytes = pageBytes(header);
        // As long as these two differ, the count is not kept.
        if (pageBytes == 0 || header.getInt(24) != header.getInt(92)) return Optional.empty();
        long pages = Integer.toUnsignedLong(header.getInt(28));
        long there = length / pageBytes;
        if (there >= pages) return Optional.empty();
        // A process that was killed while it moved pages leaves a file like that; the pages are in the other one.
        Set<Long> written = writtenAhead(pageBytes);
        for (long page = there + 1; page <= pages; page++)
            if (!written.contains(page))
                return Optional.of("is shortened: it has " + length + " bytes of " + pages * pageBytes);
        return Optional.empty();
    }

    /** Numbers of the pages in the write-ahead file, see sqlite.org/fileformat2.html. */
    private Set<Long> writtenAhead(int pageBytes) throws IOException {
        Set<Long> pages = new HashSet<>();
        long frameBytes = FRAME_HEADER_BYTES + (long) pageBytes;
        for (long at = WAL_HEADER_BYTES; at + frameBytes <= writeAheadLength; at += frameBytes)
            pages.add(
                    Integer.toUnsignedLong(bytes(writeAhead, at, Integer.BYTES).getInt(0)));
        return pages;
    }

    private ByteBuffer header() throws IOException {
        return bytes(log, 0, HEADER_BYTES);
    }

    /** Zero when it is no size of a page. */
    private static int pageBytes(ByteBuffer header) {
        int field = header.getShort(16) & 0xffff;
        int bytes = field == 1 ? 65_536 : field;
        return bytes >= 512 && Integer.bitCount(bytes) == 1 ? bytes : 0;
    }

    private static ByteBuffer bytes(Path file, long at, int count) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(count);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            while (bytes.hasRemaining() && channel.read(bytes, at + bytes.position()) > 0) continue;
        }
        return bytes;
    }
}
