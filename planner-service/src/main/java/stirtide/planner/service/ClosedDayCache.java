package stirtide.planner.service;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Summaries of days that are over, in the SQLite file {@code closed-days.db} beside the log, so that a start need not read
 * those days. A row counts only while its checksum holds and its seal is that of the day in the log. The file can be
 * deleted at any time: whatever is missing is read from the log and stored anew.
 *
 * <p>It is a file of its own because a cache must not touch what the log guarantees: damage in it would make the log read
 * only, its rows change where those of the log never do, and its writes need not be forced to the disk.
 */
final class ClosedDayCache implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.days");
    private static final int LAYOUT_VERSION = 1;
    private static final List<String> LAYOUT = List.of(
            "CREATE TABLE summary(day TEXT PRIMARY KEY, seal TEXT, revision INTEGER, millis INTEGER, erased TEXT,"
                    + " content BLOB, checksum INTEGER)",
            "PRAGMA user_version=" + LAYOUT_VERSION);

    private final Path file;
    private final Map<String, Row> rows = new HashMap<>();
    private @Nullable Connection connection;

    private record Row(String seal, ClosedDaySummary summary) {
        /** Finds torn and damaged rows only: whoever may write here may write the log. */
        long checksum(String day) {
            String head = String.join(
                    "\t",
                    day,
                    seal,
                    Long.toString(summary.revision()),
                    Long.toString(summary.time().toEpochMilli()),
                    String.join(",", summary.erased()));
            CRC32 sum = new CRC32();
            sum.update(head.getBytes(StandardCharsets.UTF_8));
            sum.update(summary.content());
            return sum.getValue();
        }
    }

    /** Opens the cache in a data folder; one that cannot be read is replaced by an empty one. */
    ClosedDayCache(Path folder) {
        file = folder.resolve("closed-days.db");
        try {
            // An earlier release kept its summaries in this file.
            Files.deleteIfExists(folder.resolve("closed-days"));
            open();
        } catch (IOException | SQLException unreadable) {
            discard(unreadable);
            try {
                open();
            } catch (SQLException noPlace) {
                discard(noPlace);
            }
        }
    }

    private void open() throws SQLException {
        connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA locking_mode=EXCLUSIVE");
            statement.execute("PRAGMA synchronous=OFF");
            // What was kept of an erased client is overwritten.
            statement.execute("PRAGMA secure_delete=ON");
            int version;
            try (ResultSet found = statement.executeQuery("PRAGMA user_version")) {
                version = found.getInt(1);
            }
            if (version == 0) for (String part : LAYOUT) statement.execute(part);
            else if (version != LAYOUT_VERSION) throw new SQLException("layout " + version + " is not known");
            read(statement);
        }
    }

    private void read(Statement statement) throws SQLException {
        try (ResultSet found =
                statement.executeQuery("SELECT day, seal, revision, millis, erased, content, checksum FROM summary")) {
            while (found.next()) {
                String day = found.getString(1);
                String seal = found.getString(2);
                String erased = found.getString(5);
                byte[] content = found.getBytes(6);
                if (day == null || seal == null || erased == null || content == null) continue;
                ClosedDaySummary summary = new ClosedDaySummary(
                        found.getLong(3),
                        Instant.ofEpochMilli(found.getLong(4)),
                        erased.isEmpty() ? List.of() : List.of(erased.split(",")),
                        content);
                Row row = new Row(seal, summary);
                if (row.checksum(day) == found.getLong(7)) rows.put(day, row);
            }
        }
    }

    private void discard(Exception reason) {
        LOG.warn("{} is not used; the next start takes longer: {}", file, reason.toString());
        rows.clear();
        close();
        try {
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            LOG.debug("the next start tries again: {}", stays.toString());
        }
    }

    /** The summary of a day, if it is that of the day as the log has it. */
    synchronized Optional<ClosedDaySummary> find(String day, String seal) {
        return Optional.ofNullable(rows.get(day))
                .filter(row -> row.seal().equals(seal))
                .map(Row::summary);
    }

    /** Stores the summary of a day. May wait for the disk. */
    synchronized void store(String day, String seal, ClosedDaySummary summary) {
        if (connection == null || find(day, seal).isPresent()) return;
        Row row = new Row(seal, summary);
        rows.put(day, row);
        try (PreparedStatement insert =
                connection.prepareStatement("INSERT OR REPLACE INTO summary VALUES(?, ?, ?, ?, ?, ?, ?)")) {
            insert.setString(1, day);
            insert.setString(2, seal);
            insert.setLong(3, summary.revision());
            insert.setLong(4, summary.time().toEpochMilli());
            insert.setString(5, String.join(",", summary.erased()));
            insert.setBytes(6, summary.content());
            insert.setLong(7, row.checksum(day));
            insert.executeUpdate();
        } catch (SQLException failed) {
            discard(failed);
        }
    }

    @Override
    public synchronized void close() {
        if (connection == null) return;
        try {
            connection.close();
        } catch (SQLException alreadyBroken) {
            LOG.debug("closing: {}", alreadyBroken.toString());
        }
        connection = null;
    }
}
