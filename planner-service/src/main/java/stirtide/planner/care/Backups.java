package stirtide.planner.care;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import stirtide.planner.log.EventLog;
import stirtide.planner.log.LogCare;
import stirtide.planner.log.LogFailure;
import stirtide.planner.log.SqliteEventLog;

/** One file that holds a whole log: the log itself and, as its last 64 bytes, the SHA-256 of all before in hex. */
final class Backups {
    private static final int DIGEST_CHARACTERS = 64;

    private Backups() {}

    static void backup(Path folder, Path file) throws IOException {
        if (Files.exists(file))
            throw new CareFailure(CareFailure.NO_PLACE, file + " is there already; name a file that is new");
        LogCare.copyTo(folder, file);
        byte[] log = Files.readAllBytes(file);
        Files.write(file, digest(log), StandardOpenOption.APPEND, StandardOpenOption.SYNC);
    }

    /** Verifies in a folder beside the wanted one, so that a refused backup leaves nothing behind. */
    static void restore(Path file, Path folder) throws IOException {
        Moves.requireEmpty(folder);
        byte[] whole = Files.readAllBytes(file);
        if (whole.length <= DIGEST_CHARACTERS) throw damaged(file, "it is too short");
        byte[] log = Arrays.copyOf(whole, whole.length - DIGEST_CHARACTERS);
        boolean same = Arrays.equals(digest(log), Arrays.copyOfRange(whole, log.length, whole.length));
        Path beside = Files.createTempDirectory(folder.toAbsolutePath().getParent(), "restoring");
        try {
            Files.write(beside.resolve("log.db"), log, StandardOpenOption.CREATE_NEW, StandardOpenOption.SYNC);
            try (EventLog opened = SqliteEventLog.open(beside)) {
                opened.days();
            }
            if (!same) throw damaged(file, "every event is sound, but bytes outside of them are changed");
            Files.createDirectories(folder);
            Files.move(beside.resolve("log.db"), folder.resolve("log.db"));
        } catch (LogFailure unsound) {
            throw damaged(file, String.valueOf(unsound.getMessage()).replaceFirst("^.*Found: ", ""));
        } finally {
            remove(beside);
        }
    }

    private static CareFailure damaged(Path file, String what) {
        return new CareFailure(CareFailure.DAMAGED, "the backup " + file + " is damaged: " + what);
    }

    private static void remove(Path folder) throws IOException {
        try (var paths = Files.walk(folder)) {
            for (Path path : paths.sorted(java.util.Comparator.reverseOrder()).toList()) Files.deleteIfExists(path);
        }
    }

    private static byte[] digest(byte[] bytes) {
        try {
            byte[] sha = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(sha).getBytes(StandardCharsets.US_ASCII);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
