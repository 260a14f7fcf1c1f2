package stirtide.planner.eventlog;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import stirtide.planner.eventlog.EventLog.Damage;

/** What can be done with the log of a service that is stopped. Every method takes the folder's lock. */
public final class LogMaintenance {
    private LogMaintenance() {}

    /**
     * Every event that is changed, missing or out of place, and whether the file {@code anchor}, which tells of missing
     * ends, is lost itself.
     *
     * @throws LogFailure when there is no log or it cannot be opened at all
     */
    public static List<Damage> verify(Path folder) {
        return with(folder, (connection, place) -> {
            AnchorNotes notes = place.notes();
            List<Damage> damages = new ArrayList<>(new SqliteVerifier(connection).verify(notes));
            notes.loss(new SqliteStatements(connection).heads())
                    .ifPresent(loss -> damages.add(new Damage("anchor", 0, loss)));
            return damages;
        });
    }

    /** The same for a copy of a log, which has no file {@code anchor} beside it. */
    public static List<Damage> verifyCopy(Path folder) {
        return with(folder, (connection, place) -> new SqliteVerifier(connection).verify(AnchorNotes.UNUSED));
    }

    /** In which way the file {@code anchor} is behind the log, as a sentence about it; empty when it is not. */
    public static Optional<String> anchorNews(Path folder) {
        return with(folder, (connection, place) -> place.notes().behind(new SqliteStatements(connection).heads()));
    }

    /**
     * Gives stored events as text, in the order they were stored, each day up to its first damage.
     *
     * @param day the only day wanted, empty for all
     * @return where reading ended early, empty when everything was given
     */
    public static List<Damage> export(Path folder, Optional<String> day, Consumer<String> line) {
        return with(folder, (connection, place) -> readSound(connection, day, line));
    }

    /** Writes the whole log into one new SQLite file; the log must be sound. */
    public static void copyTo(Path folder, Path file) {
        with(folder, (connection, place) -> {
            List<Damage> damages = new SqliteVerifier(connection).verify(place.notes());
            if (!damages.isEmpty())
                throw new LogFailure(LogFailure.Kind.DAMAGED, "the log is damaged: " + damages.get(0));
            try (PreparedStatement copy = connection.prepareStatement("VACUUM INTO ?")) {
                copy.setString(1, file.toString());
                copy.execute();
            }
            return damages;
        });
    }

    /** Read by row id, so that a damaged index does not stand between a sound row and its reader. */
    private static List<Damage> readSound(Connection connection, Optional<String> wanted, Consumer<String> line) {
        Map<String, byte[]> hashes = new HashMap<>();
        Map<String, Long> revisions = new HashMap<>();
        Map<String, Damage> broken = new TreeMap<>();
        try (var statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(
                        "SELECT day, revision, body, hash FROM event NOT INDEXED ORDER BY rowid")) {
            while (rows.next()) {
                String day = rows.getString(1);
                if (day == null) {
                    broken.put("log.db", new Damage("log.db", 0, "an event has lost its day"));
                    continue;
                }
                long expected = revisions.getOrDefault(day, 0L) + 1;
                if (broken.containsKey(day)) continue;
                byte[] body = rows.getBytes(3);
                byte[] hash = HashChain.next(
                        hashes.getOrDefault(day, HashChain.start(day)), expected, body == null ? new byte[0] : body);
                if (rows.getLong(2) != expected || body == null || !Arrays.equals(hash, rows.getBytes(4))) {
                    broken.put(day, new Damage(day, expected, "is missing or not what was written"));
                    continue;
                }
                hashes.put(day, hash);
                revisions.put(day, expected);
                if (wanted.isEmpty() || wanted.get().equals(day))
                    line.accept(new String(body, java.nio.charset.StandardCharsets.UTF_8));
            }
        } catch (SQLException unreadable) {
            broken.put("log.db", new Damage("log.db", 0, "cannot be read further: " + unreadable.getMessage()));
        }
        return List.copyOf(broken.values());
    }

    private interface Work<T> {
        T on(Connection connection, LogFolder place) throws SQLException;
    }

    private static <T> T with(Path folder, Work<T> work) {
        if (!Files.isRegularFile(folder.resolve("log.db")))
            throw new LogFailure(LogFailure.Kind.NO_PLACE, folder + " holds no log; name the data folder of a service");
        try (LogFolder place = LogFolder.take(folder)) {
            LogRemains.requireAny(place);
            place.prepareDriver();
            try (Connection connection = SqliteFile.openToRead(place.file())) {
                return work.on(connection, place);
            } catch (SQLException failed) {
                throw new LogFailure(
                        LogFailure.Kind.DAMAGED, place.file() + " cannot be read: " + failed.getMessage(), failed);
            } finally {
                place.removeSharedMemory();
            }
        }
    }
}
