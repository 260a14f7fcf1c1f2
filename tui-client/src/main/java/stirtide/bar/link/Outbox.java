package stirtide.bar.link;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import stirtide.events.command.CommandRequest;
import stirtide.events.json.ContractJson;

/**
 * Entries on their way to the service, in order, on disk before anything is sent. An entry leaves the file only when the
 * service has answered it; a crash in between sends it again under the same id, which the service takes once.
 */
final class Outbox implements AutoCloseable {
    private static final int MOST_TERMINALS = 9;
    private static final long NANOS_PER_MILLI = 1_000_000;

    private final Path file;
    private final FileChannel lockChannel;
    private final Deque<Entry> entries = new ArrayDeque<>();

    /** An entry: the request as it is sent, and what it is in words. */
    record Entry(CommandRequest request, String words) {}

    private Outbox(Path file, FileChannel lockChannel) {
        this.file = file;
        this.lockChannel = lockChannel;
    }

    /**
     * Opens the outbox of a day and person. Two terminals of the same person on one machine get a file each.
     *
     * @throws IOException when the folder cannot be written, or nine terminals are at it already
     */
    static Outbox open(Path folder, String name) throws IOException {
        Files.createDirectories(folder);
        for (int i = 1; i <= MOST_TERMINALS; i++) {
            FileChannel channel = lock(folder, name, i);
            if (holds(channel)) {
                var outbox = new Outbox(file(folder, name, i), channel);
                outbox.load();
                for (int other = 1; other <= MOST_TERMINALS; other++)
                    if (other != i && Files.exists(file(folder, name, other))) outbox.takeOver(folder, name, other);
                return outbox;
            }
            channel.close();
        }
        throw new IOException(MOST_TERMINALS + " terminals use " + folder + " already");
    }

    private static Path file(Path folder, String name, int number) {
        return folder.resolve("outbox-" + name + "-" + number + ".jsonl");
    }

    private static FileChannel lock(Path folder, String name, int number) throws IOException {
        Path lock = folder.resolve("outbox-" + name + "-" + number + ".lock");
        return FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }

    // The lock lives as long as its channel.
    private static boolean holds(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException sameProcess) {
            return false;
        }
    }

    /** Entries of a terminal that is gone would wait for a second terminal that may never be opened again. */
    private void takeOver(Path folder, String name, int number) throws IOException {
        try (FileChannel channel = lock(folder, name, number)) {
            if (!holds(channel)) return;
            var left = new Outbox(file(folder, name, number), channel);
            left.load();
            // Killed between the two lines, an entry stands in both files; its id makes sending it twice harmless.
            for (Entry entry : left.entries) add(entry);
            Files.delete(left.file);
        }
    }

    private void load() throws IOException {
        if (!Files.exists(file)) return;
        String text = Files.readString(file);
        // A line without its end was torn by a crash before it was ever sent.
        int complete = text.lastIndexOf('\n') + 1;
        for (String line : text.substring(0, complete).split("\n")) {
            if (!line.isBlank()) entries.add(read(line));
        }
        if (complete < text.length()) rewrite();
    }

    private Entry read(String line) throws IOException {
        try {
            return ContractJson.read(line, Entry.class);
        } catch (IllegalArgumentException unreadable) {
            throw new IOException(file + " holds a line that is no entry: " + unreadable.getMessage(), unreadable);
        }
    }

    synchronized void add(Entry entry) throws IOException {
        byte[] line = (ContractJson.write(entry) + "\n").getBytes(StandardCharsets.UTF_8);
        Files.write(file, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND, StandardOpenOption.DSYNC);
        entries.add(entry);
        notifyAll();
    }

    /** The oldest entry, waiting for one up to {@code millis}. */
    synchronized Optional<Entry> head(long millis) throws InterruptedException {
        if (entries.isEmpty()) wait(millis);
        return Optional.ofNullable(entries.peekFirst());
    }

    /** Takes the oldest entry out after its answer. */
    synchronized void removeHead() throws IOException {
        entries.removeFirst();
        rewrite();
        notifyAll();
    }

    /** Waits until nothing is left, {@code millis} at most; how many entries are left then. */
    synchronized int awaitEmpty(long millis) throws InterruptedException {
        long end = System.nanoTime() + millis * NANOS_PER_MILLI;
        // Ends: when nothing is left or the time is over.
        for (long left = millis; !entries.isEmpty() && left > 0; left = (end - System.nanoTime()) / NANOS_PER_MILLI)
            wait(left);
        return entries.size();
    }

    synchronized int size() {
        return entries.size();
    }

    private void rewrite() throws IOException {
        List<String> lines = entries.stream().map(ContractJson::write).toList();
        Path next = file.resolveSibling(file.getFileName() + ".new");
        Files.write(next, lines);
        Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    @Override
    public void close() throws IOException {
        lockChannel.close();
    }
}
