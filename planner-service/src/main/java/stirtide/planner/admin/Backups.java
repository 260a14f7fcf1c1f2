package stirtide.planner.admin;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.CheckedFile;
import stirtide.planner.cli.CommandException;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.EventLog.Damage;
import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.eventlog.LogMaintenance;
import stirtide.planner.eventlog.SqliteEventLog;
import stirtide.planner.http.AdminServer;
import stirtide.planner.privacy.ClientKeys;

/** One file that holds a whole log: the log itself and, as its last 64 bytes, the SHA-256 of all before in hex. */
final class Backups {
    private static final int DIGEST_CHARACTERS = 64;
    private static final int CHUNK_BYTES = 64 * 1024;

    /** The log last: what lies in a folder before it opens nothing. */
    private static final List<String> MOVED = List.of(
            "access-used.json", "access.lock", "access.json", "clients.erased", "clients.keys", "anchor", "log.db");

    private Backups() {}

    /** Of a running service the service itself copies the log, between its appends; of a stopped one this does. */
    static void backup(Path folder, Path file) throws IOException {
        if (Files.exists(file))
            throw new CommandException(
                    CommandException.CANNOT_CREATE, file + " is there already; name a file that is new");
        Path beside = Files.createTempDirectory(parent(file), "backing-up");
        try {
            Path copy = beside.resolve("log.db");
            if (AdminClient.post(folder, AdminServer.BACKUP, Map.of("file", copy.toString()))
                    .isEmpty()) LogMaintenance.copyTo(folder, copy);
            List<Damage> damages = LogMaintenance.verifyCopy(beside);
            if (!damages.isEmpty())
                throw new CommandException(CommandException.LOG_BROKEN, "the copy does not verify: " + damages.get(0));
            Files.write(copy, digest(copy, Files.size(copy)), StandardOpenOption.APPEND, StandardOpenOption.SYNC);
            Files.move(copy, file);
        } finally {
            remove(beside);
        }
    }

    private static Path parent(Path path) {
        Path parent = path.toAbsolutePath().getParent();
        if (parent == null)
            throw new CommandException(CommandException.CANNOT_CREATE, path + " is no place for a file");
        return parent;
    }

    /**
     * Verifies in a folder beside the wanted one, so that a refused backup leaves nothing behind.
     *
     * @param keys folder with copies of the clients' keys, of the list of the erased and of the access list, if they are
     *     to come back too
     * @param open whether a service on the restored log may let everybody in, as one does that never gave a token
     */
    static void restore(Path file, Path folder, Optional<Path> keys, boolean open) throws IOException {
        EventImport.requireEmpty(folder);
        long length = Files.size(file) - DIGEST_CHARACTERS;
        if (length <= 0) throw damaged(file, "it is too short");
        Path beside = Files.createTempDirectory(parent(folder), "restoring");
        try {
            boolean same = Arrays.equals(digest(file, length), copy(file, beside.resolve("log.db"), length));
            try (EventLog opened = SqliteEventLog.open(beside)) {
                if (!same) throw damaged(file, "every event is sound, but bytes outside of them are changed");
                if (keys.isPresent()) bringKeys(opened, keys.get(), beside);
            }
            if (!open) closeAccess(keys, beside);
            Files.createDirectories(folder);
            for (String name : MOVED)
                if (Files.exists(beside.resolve(name))) Files.move(beside.resolve(name), folder.resolve(name));
        } catch (LogFailure unsound) {
            // The part after "Found: " names the places. Without it the log could not even be opened, and the message
            // names a temporary folder.
            String[] words = String.valueOf(unsound.getMessage()).split("Found: ", 2);
            throw damaged(file, words.length == 2 ? words[1] : "it is cut or no log any more");
        } finally {
            remove(beside);
        }
    }

    /** The access list of a service is not in its backup, so it is not known whether it was open. */
    private static void closeAccess(Optional<Path> from, Path to) throws IOException {
        new AccessFile(to).close();
        Optional<Path> list = from.map(folder -> folder.resolve("access.json")).filter(Files::isRegularFile);
        if (list.isEmpty()) return;
        new AccessFile(from.orElseThrow()).read();
        CheckedFile.write(
                to.resolve("access.json"), CheckedFile.read(list.get()).text());
    }

    /** Keys of clients who were erased, by the list or by the log, do not come back. */
    private static void bringKeys(EventLog log, Path from, Path to) throws IOException {
        if (!Files.isRegularFile(from.resolve("clients.keys"))) {
            if (Files.isRegularFile(from.resolve("access.json"))) return;
            throw new CommandException(
                    CommandException.CANNOT_CREATE, from + " holds neither clients.keys nor access.json");
        }
        ClientKeys brought = new ClientKeys(from);
        for (String day : log.days()) forgetErased(log, day, brought);
        ClientKeys.Snapshot kept = brought.snapshot();
        brought.writeTo(to, kept);
    }

    private static void forgetErased(EventLog log, String day, ClientKeys keys) {
        long last = 0;
        for (List<StoredEvent> page = log.read(day, 0, EventLog.READ_LIMIT);
                !page.isEmpty();
                page = log.read(day, last, EventLog.READ_LIMIT))
            for (StoredEvent event : page) {
                last = event.revision();
                if (event.event() instanceof DayEvent.ClientErased erased) keys.forget(erased.clientId());
            }
    }

    private static CommandException damaged(Path file, String what) {
        return new CommandException(CommandException.LOG_BROKEN, "the backup " + file + " is damaged: " + what);
    }

    private static void remove(Path folder) throws IOException {
        try (var paths = Files.walk(folder)) {
            for (Path path : paths.sorted(java.util.Comparator.reverseOrder()).toList()) Files.deleteIfExists(path);
        }
    }

    /** Copies the first bytes of a file and gives the rest. */
    private static byte[] copy(Path file, Path to, long length) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                OutputStream out = Files.newOutputStream(to, StandardOpenOption.CREATE_NEW, StandardOpenOption.SYNC)) {
            for (long left = length; left > 0; ) {
                byte[] chunk = in.readNBytes((int) Math.min(CHUNK_BYTES, left));
                out.write(chunk);
                left -= chunk.length;
            }
            return in.readAllBytes();
        }
    }

    private static byte[] digest(Path file, long length) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            for (long left = length; left > 0; ) {
                byte[] chunk = in.readNBytes((int) Math.min(CHUNK_BYTES, left));
                sha.update(chunk);
                left -= chunk.length;
            }
            return HexFormat.of().formatHex(sha.digest()).getBytes(StandardCharsets.US_ASCII);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
