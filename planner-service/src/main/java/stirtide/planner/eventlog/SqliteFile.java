package stirtide.planner.eventlog;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Locale;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Opens the log file with the settings that make an answered append durable, and with its tables. */
final class SqliteFile {
    /** Marks the file as ours: "STID" in ASCII. */
    private static final int APPLICATION_ID = 0x53544944;

    private static final int LAYOUT_VERSION = 1;

    /** Older ones could corrupt a file in write-ahead mode, see sqlite.org/wal.html. */
    private static final List<Integer> OLDEST_SQLITE = List.of(3, 51, 3);

    /** Exclusive locking comes first: set later it would leave the shared-memory file behind. */
    private static final List<String> SETTINGS = List.of(
            "PRAGMA locking_mode=EXCLUSIVE",
            "PRAGMA journal_mode=WAL",
            "PRAGMA synchronous=FULL",
            "PRAGMA secure_delete=ON",
            "PRAGMA foreign_keys=ON",
            "PRAGMA trusted_schema=OFF",
            "PRAGMA cell_size_check=ON",
            "PRAGMA mmap_size=0");

    private static final List<String> LAYOUT = List.of(
            "CREATE TABLE event(day TEXT NOT NULL, revision INTEGER NOT NULL, id TEXT NOT NULL, body BLOB NOT NULL,"
                    + " hash BLOB NOT NULL) STRICT",
            "CREATE UNIQUE INDEX event_place ON event(day, revision)",
            "CREATE UNIQUE INDEX event_id ON event(id)",
            "CREATE TABLE command(day TEXT NOT NULL, command_id TEXT NOT NULL, request BLOB NOT NULL,"
                    + " first INTEGER NOT NULL, last INTEGER NOT NULL, hash BLOB NOT NULL,"
                    + " PRIMARY KEY(day, command_id)) STRICT, WITHOUT ROWID",
            "CREATE TABLE head(day TEXT PRIMARY KEY NOT NULL, revision INTEGER NOT NULL, hash BLOB NOT NULL)"
                    + " STRICT, WITHOUT ROWID",
            forbid("UPDATE", "event"),
            forbid("DELETE", "event"),
            forbid("UPDATE", "command"),
            forbid("DELETE", "command"),
            "PRAGMA application_id=" + APPLICATION_ID,
            "PRAGMA user_version=" + LAYOUT_VERSION);

    private SqliteFile() {}

    /** A way to open a log file; tests put a failing disk here. */
    interface Opening {
        Connection open(Path file) throws SQLException;
    }

    private static String forbid(String what, String table) {
        return "CREATE TRIGGER " + table + "_no_" + what.toLowerCase(Locale.ROOT) + " BEFORE " + what + " ON " + table
                + " BEGIN SELECT RAISE(ABORT, 'what is stored stays'); END";
    }

    /** Opens the file, making it when it is not there. The connection holds it exclusively. */
    static Connection open(Path file) throws SQLException {
        Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        try (Statement statement = connection.createStatement()) {
            for (String setting : SETTINGS) statement.execute(setting);
            requireSqlite(text(statement, "SELECT sqlite_version()"));
            long version = Long.parseLong(text(statement, "PRAGMA user_version"));
            if (version == 0) create(statement, file);
            else requireOurs(statement, file, version);
            settle(statement);
            return connection;
        } catch (SQLException | RuntimeException failed) {
            connection.close();
            throw failed;
        }
    }

    /**
     * Forces the content of the write-ahead file to the disk. Its writer may have ended before that, or the disk may have
     * failed to keep it, and what is read here comes from memory then; from now on the service relies on it.
     */
    private static void settle(Statement statement) throws SQLException {
        try {
            statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
        } catch (SQLException failed) {
            // Without space it stays where it is, but is forced before anything is moved, see sqlite.org/wal.html.
            if (primary(failed) != SQLiteErrorCode.SQLITE_FULL) throw failed;
        }
    }

    /** The kind of failure, without its finer distinctions. */
    private static SQLiteErrorCode primary(SQLException failed) {
        return SQLiteErrorCode.getErrorCode(code(failed).code & 0xff);
    }

    private static SQLiteErrorCode code(SQLException failed) {
        return failed instanceof SQLiteException sqlite ? sqlite.getResultCode() : SQLiteErrorCode.UNKNOWN_ERROR;
    }

    /**
     * Opens the file to look at it only: not a byte of it changes, not even when it is closed after a crash. Locks are
     * the folder's, for the file's own need a writer.
     */
    static Connection openToRead(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        Connection connection = config.createConnection("jdbc:sqlite:" + file);
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA trusted_schema=OFF");
            statement.execute("PRAGMA cell_size_check=ON");
            requireSqlite(text(statement, "SELECT sqlite_version()"));
            if (!isFresh(connection))
                requireOurs(statement, file, Long.parseLong(text(statement, "PRAGMA user_version")));
            return connection;
        } catch (SQLException | RuntimeException failed) {
            connection.close();
            throw failed;
        }
    }

    /** Whether nothing was ever stored in it: a process that ended while it made the file leaves such a one. */
    static boolean isFresh(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            return text(statement, "PRAGMA user_version").equals("0")
                    && text(statement, "SELECT count(*) FROM sqlite_schema").equals("0");
        }
    }

    /** The failure of the log for a failure of the driver. */
    static LogFailure translate(SQLException failed, Path file) {
        return switch (primary(failed)) {
            case SQLITE_FULL ->
                new LogFailure(LogFailure.Kind.FULL, "no space is left for the log; nothing was stored", failed);
            case SQLITE_BUSY, SQLITE_LOCKED ->
                new LogFailure(
                        LogFailure.Kind.IN_USE, "another process has the log " + file + "; stop it first", failed);
            case SQLITE_CORRUPT, SQLITE_NOTADB ->
                new LogFailure(LogFailure.Kind.DAMAGED, "the log " + file + " cannot be read; restore a copy", failed);
            default ->
                new LogFailure(
                        LogFailure.Kind.UNAVAILABLE, "the log cannot be read or written; nothing was stored", failed);
        };
    }

    /** Whether the disk said that it could not keep what was written. */
    static boolean isLostSync(SQLException failed) {
        SQLiteErrorCode code = code(failed);
        return code == SQLiteErrorCode.SQLITE_IOERR_FSYNC || code == SQLiteErrorCode.SQLITE_IOERR_DIR_FSYNC;
    }

    private static void create(Statement statement, Path file) throws SQLException {
        if (!text(statement, "SELECT count(*) FROM sqlite_schema").equals("0")) throw foreign(file);
        statement.execute("BEGIN IMMEDIATE");
        for (String part : LAYOUT) statement.execute(part);
        statement.execute("COMMIT");
    }

    private static void requireOurs(Statement statement, Path file, long version) throws SQLException {
        if (!text(statement, "PRAGMA application_id").equals(Integer.toString(APPLICATION_ID))) throw foreign(file);
        if (version != LAYOUT_VERSION) {
            throw new LogFailure(
                    LogFailure.Kind.NO_PLACE,
                    file + " was written by another version (layout " + version + ", this one reads layout "
                            + LAYOUT_VERSION + ")");
        }
    }

    private static LogFailure foreign(Path file) {
        return new LogFailure(LogFailure.Kind.NO_PLACE, file + " is not a log of this service; name another folder");
    }

    private static void requireSqlite(String version) {
        String[] parts = version.split("\\.");
        for (int part = 0; part < OLDEST_SQLITE.size(); part++) {
            int found = Integer.parseInt(parts[part]);
            if (found > OLDEST_SQLITE.get(part)) return;
            if (found < OLDEST_SQLITE.get(part))
                throw new LogFailure(LogFailure.Kind.UNAVAILABLE, "SQLite " + version + " is too old for the log");
        }
    }

    /** First column of the first row of a query. */
    static String text(Statement statement, String query) throws SQLException {
        try (ResultSet rows = statement.executeQuery(query)) {
            return rows.next() ? rows.getString(1) : "";
        }
    }
}
