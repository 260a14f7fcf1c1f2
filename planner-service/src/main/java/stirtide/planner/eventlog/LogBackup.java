package stirtide.planner.eventlog;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * Copies a log that goes on being written, some rows at a time, so that no append waits long between. What is copied is
 * the log as it was when the copy began: stored rows never change.
 */
public final class LogBackup implements AutoCloseable {
    private static final int ROWS = 200;

    private final Connection target;
    private final long newestRow;
    private final Map<String, SqliteStatements.Head> heads = new TreeMap<>();
    private long row;
    private String day = "";
    private String commandId = "";
    private boolean eventsDone;

    /** To be made between two appends. */
    LogBackup(Path file, Connection source) throws SQLException {
        newestRow = new SqliteVerifier(source).newestRow();
        target = SqliteFile.open(file);
        try (Statement statement = target.createStatement()) {
            // One file, nothing beside it; the caller forces it to the disk.
            statement.execute("PRAGMA journal_mode=DELETE");
            statement.execute("PRAGMA synchronous=OFF");
        }
    }

    /**
     * Copies the next rows. To be called between two appends.
     *
     * @return whether there are more
     * @throws LogFailure DAMAGED when an event is not what was written
     */
    boolean copyOn(Connection source) throws SQLException {
        try (Statement statement = target.createStatement()) {
            statement.execute("BEGIN IMMEDIATE");
            boolean more = !eventsDone || copyCommands(source);
            if (!eventsDone) eventsDone = !copyEvents(source);
            if (!more) writeHeads();
            statement.execute("COMMIT");
            return more;
        }
    }

    private boolean copyEvents(Connection source) throws SQLException {
        int copied = 0;
        try (PreparedStatement query = source.prepareStatement("SELECT rowid, day, revision, id, body, hash FROM event"
                        + " NOT INDEXED WHERE rowid>? AND rowid<=? ORDER BY rowid LIMIT " + ROWS);
                PreparedStatement insert = target.prepareStatement(
                        "INSERT INTO event(day, revision, id, body, hash) VALUES(?, ?, ?, ?, ?)")) {
            query.setLong(1, row);
            query.setLong(2, newestRow);
            try (ResultSet rows = query.executeQuery()) {
                for (; rows.next(); copied++) copyEvent(rows, insert);
            }
        }
        return copied == ROWS;
    }

    private void copyEvent(ResultSet event, PreparedStatement insert) throws SQLException {
        row = event.getLong(1);
        String name = event.getString(2);
        long revision = event.getLong(3);
        SqliteStatements.Head before = heads.getOrDefault(name, SqliteStatements.Head.before(name));
        byte[] hash = HashChain.next(before.hash(), revision, event.getBytes(5));
        if (revision != before.revision() + 1 || !Arrays.equals(hash, event.getBytes(6)))
            throw new LogFailure(
                    LogFailure.Kind.DAMAGED,
                    "the log is damaged: "
                            + new EventLog.Damage(name, before.revision() + 1, "is not what was written"));
        heads.put(name, new SqliteStatements.Head(revision, hash));
        insert.setString(1, name);
        insert.setLong(2, revision);
        insert.setString(3, event.getString(4));
        insert.setBytes(4, event.getBytes(5));
        insert.setBytes(5, hash);
        insert.executeUpdate();
    }

    /** Commands that came after the newest copied event stay out with their events. */
    private boolean copyCommands(Connection source) throws SQLException {
        int seen = 0;
        try (PreparedStatement query = source.prepareStatement("SELECT day, command_id, request, first, last, hash"
                        + " FROM command WHERE (day, command_id)>(?, ?) ORDER BY day, command_id LIMIT " + ROWS);
                PreparedStatement insert = target.prepareStatement("INSERT INTO command(day, command_id, request,"
                        + " first, last, hash) VALUES(?, ?, ?, ?, ?, ?)")) {
            query.setString(1, day);
            query.setString(2, commandId);
            try (ResultSet rows = query.executeQuery()) {
                for (; rows.next(); seen++) copyCommand(rows, insert);
            }
        }
        return seen == ROWS;
    }

    private void copyCommand(ResultSet command, PreparedStatement insert) throws SQLException {
        day = command.getString(1);
        commandId = command.getString(2);
        long last = command.getLong(5);
        if (!heads.containsKey(day) || last > heads.get(day).revision()) return;
        insert.setString(1, day);
        insert.setString(2, commandId);
        insert.setBytes(3, command.getBytes(3));
        insert.setLong(4, command.getLong(4));
        insert.setLong(5, last);
        insert.setBytes(6, command.getBytes(6));
        insert.executeUpdate();
    }

    private void writeHeads() throws SQLException {
        try (PreparedStatement insert =
                target.prepareStatement("INSERT INTO head(day, revision, hash) VALUES(?, ?, ?)")) {
            for (var head : heads.entrySet()) {
                insert.setString(1, head.getKey());
                insert.setLong(2, head.getValue().revision());
                insert.setBytes(3, head.getValue().hash());
                insert.executeUpdate();
            }
        }
    }

    @Override
    public void close() throws SQLException {
        target.close();
    }
}
