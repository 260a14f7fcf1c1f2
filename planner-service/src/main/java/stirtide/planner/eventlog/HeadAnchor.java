package stirtide.planner.eventlog;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.planner.eventlog.SqliteStatements.Head;

/**
 * The newest event of every day, noted outside the log file after its append is durable. A log that has lost an end or a
 * whole day is consistent in itself; only these notes show it. Each day has a slot of its own, as long as a sector of a
 * disk, behind a first slot with their number. A note is not forced to the disk: after a power cut it may be older than
 * the log, which is harmless, but never newer. A slot that is new is forced.
 */
final class HeadAnchor implements AutoCloseable {
    static final int SLOT_BYTES = 512;
    static final String FIRST_WORD = "stirtide-anchor-2";

    private static final Logger LOG = LoggerFactory.getLogger("stirtide.log");

    private final Path path;
    private final Map<String, Head> heads = new LinkedHashMap<>();
    private final Map<String, Integer> slots = new HashMap<>();
    private @Nullable FileChannel file;
    private volatile @Nullable String loss;

    HeadAnchor(Path path) {
        this.path = path;
    }

    /**
     * Tells what the notes no longer say, and has them say all again.
     *
     * @param newest heads of all days
     * @param mayWrite whether the file may be changed
     */
    void takeUp(Map<String, Head> newest, boolean mayWrite) {
        try {
            AnchorNotes there = AnchorNotes.read(path);
            loss = there.loss(newest).orElse(null);
            if (loss != null) LOG.error("the file {} {}", path, loss);
            there.behind(newest).ifPresent(how -> LOG.warn("the file {} {}", path, how));
            heads.putAll(newest);
            if (!mayWrite) return;
            if (there.equalTo(newest)) {
                there.heads().keySet().forEach(this::addSlot);
                file = FileChannel.open(path, StandardOpenOption.WRITE);
            } else {
                replace();
            }
        } catch (IOException noPlace) {
            // The events are durable; older notes only find less.
            LOG.warn("the file {} is not written: {}", path, noPlace.toString());
        }
    }

    /** What the file could not tell any more when it was taken up, as a sentence about it. */
    Optional<String> loss() {
        return Optional.ofNullable(loss);
    }

    /** Notes the newest event of a day. */
    void note(String day, Head head) {
        boolean fresh = heads.put(day, head) == null;
        try {
            if (file == null) replace();
            else write(file, day, head, fresh);
        } catch (IOException noPlace) {
            LOG.warn("the file {} is not written: {}", path, noPlace.toString());
        }
    }

    private void write(FileChannel open, String day, Head head, boolean fresh) throws IOException {
        if (fresh) addSlot(day);
        put(open, slots.getOrDefault(day, 0), line(day, head));
        if (!fresh) return;
        open.force(true);
        put(open, 0, firstLine());
        open.force(true);
    }

    private void addSlot(String day) {
        slots.put(day, slots.size() + 1);
    }

    private void replace() throws IOException {
        close();
        slots.clear();
        heads.keySet().forEach(this::addSlot);
        Path next = path.resolveSibling("anchor.new");
        try (FileChannel fresh = FileChannel.open(
                next, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer all = ByteBuffer.allocate((slots.size() + 1) * SLOT_BYTES);
            all.put(padded(firstLine()));
            heads.forEach((day, head) -> all.put(padded(line(day, head))));
            all.flip();
            while (all.hasRemaining()) fresh.write(all);
            fresh.force(true);
        }
        Files.move(next, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        file = FileChannel.open(path, StandardOpenOption.WRITE);
    }

    private String firstLine() {
        return FIRST_WORD + " " + slots.size();
    }

    private static String line(String day, Head head) {
        return day + " " + head.revision() + " " + HexFormat.of().formatHex(head.hash());
    }

    private static void put(FileChannel file, int slot, String text) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(padded(text));
        long start = (long) slot * SLOT_BYTES;
        while (bytes.hasRemaining()) file.write(bytes, start + bytes.position());
    }

    private static byte[] padded(String text) {
        String line = text + " " + digest(text);
        return String.format("%-" + (SLOT_BYTES - 1) + "s\n", line).getBytes(StandardCharsets.UTF_8);
    }

    /** Digest with which the text of a slot ends. */
    static String digest(String text) {
        return HexFormat.of().formatHex(HashChain.digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    @Override
    public void close() throws IOException {
        FileChannel open = file;
        file = null;
        if (open != null) open.close();
    }
}
