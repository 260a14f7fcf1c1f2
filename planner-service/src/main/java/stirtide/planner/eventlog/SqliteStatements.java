package stirtide.planner.eventlog;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.StoredEvent;
import stirtide.planner.eventlog.EventLog.Append;
import stirtide.planner.eventlog.EventLog.Damage;
import stirtide.planner.eventlog.EventLog.KnownCommand;

/** What the log asks of one open connection. Transactions are explicit statements: the driver's own mode hides them. */
final class SqliteStatements {
    private final Connection connection;
    /** By their text; they live as long as the connection. */
    private final Map<String, PreparedStatement> prepared = new HashMap<>();

    SqliteStatements(Connection connection) {
        this.connection = connection;
    }

    Connection connection() {
        return connection;
    }

    /** Newest revision of a stream and the digest up to it. */
    record Head(long revision, byte[] hash) {
        /** The head of a stream before its first event. */
        static Head before(String day) {
            return new Head(0, HashChain.start(day));
        }

        String seal() {
            return revision + "-" + HexFormat.of().formatHex(hash);
        }
    }

    Append append(String day, long expectedRevision, String commandId, byte[] requestDigest, List<StoredEvent> events)
            throws SQLException {
        execute("BEGIN IMMEDIATE");
        Optional<Append> refusal = refusal(day, expectedRevision, commandId, requestDigest);
        if (refusal.isPresent()) {
            execute("ROLLBACK");
            return refusal.get();
        }
        byte[] hash = head(day).hash();
        for (StoredEvent event : events) hash = insertEvent(hash, event);
        long last = expectedRevision + events.size();
        if (!events.isEmpty()) writeHead(day, new Head(last, hash));
        if (!commandId.equals(EventLog.NO_COMMAND))
            insertCommand(day, commandId, new KnownCommand(requestDigest, expectedRevision + 1, last));
        execute("COMMIT");
        return new Append.Appended(expectedRevision + 1, last);
    }

    private Optional<Append> refusal(String day, long expectedRevision, String commandId, byte[] requestDigest)
            throws SQLException {
        Optional<KnownCommand> known = command(day, commandId);
        if (known.isPresent()) return Optional.of(known.get().answer(requestDigest));
        long head = head(day).revision();
        return head == expectedRevision ? Optional.empty() : Optional.of(new Append.Conflict(head));
    }

    private PreparedStatement prepared(String sql) throws SQLException {
        PreparedStatement known = prepared.get(sql);
        if (known != null) return known;
        PreparedStatement fresh = connection.prepareStatement(sql);
        prepared.put(sql, fresh);
        return fresh;
    }

    private byte[] insertEvent(byte[] before, StoredEvent event) throws SQLException {
        byte[] body = EventEncoder.of(event);
        byte[] hash = HashChain.next(before, event.revision(), body);
        PreparedStatement insert = prepared("INSERT INTO event(day, revision, id, body, hash) VALUES(?, ?, ?, ?, ?)");
        insert.setString(1, event.day());
        insert.setLong(2, event.revision());
        insert.setString(3, event.eventId());
        insert.setBytes(4, body);
        insert.setBytes(5, hash);
        insert.executeUpdate();
        return hash;
    }

    private void writeHead(String day, Head head) throws SQLException {
        PreparedStatement write = prepared("INSERT INTO head(day, revision, hash) VALUES(?, ?, ?)"
                + " ON CONFLICT(day) DO UPDATE SET revision=excluded.revision, hash=excluded.hash");
        write.setString(1, day);
        write.setLong(2, head.revision());
        write.setBytes(3, head.hash());
        write.executeUpdate();
    }

    private void insertCommand(String day, String commandId, KnownCommand known) throws SQLException {
        PreparedStatement insert =
                prepared("INSERT INTO command(day, command_id, request, first, last, hash) VALUES(?, ?, ?, ?, ?, ?)");
        insert.setString(1, day);
        insert.setString(2, commandId);
        insert.setBytes(3, known.requestDigest());
        insert.setLong(4, known.first());
        insert.setLong(5, known.last());
        insert.setBytes(6, HashChain.command(day, commandId, known.requestDigest(), known.first(), known.last()));
        insert.executeUpdate();
    }

    Head head(String day) throws SQLException {
        PreparedStatement query = prepared("SELECT revision, hash FROM head WHERE day=?");
        query.setString(1, day);
        try (ResultSet rows = query.executeQuery()) {
            return rows.next() ? new Head(rows.getLong(1), rows.getBytes(2)) : Head.before(day);
        }
    }

    /** Newest revision and digest of every stream. */
    SortedMap<String, Head> heads() throws SQLException {
        SortedMap<String, Head> heads = new TreeMap<>();
        try (ResultSet rows = prepared("SELECT day, revision, hash FROM head").executeQuery()) {
            while (rows.next()) heads.put(rows.getString(1), new Head(rows.getLong(2), rows.getBytes(3)));
        }
        return heads;
    }

    Optional<KnownCommand> command(String day, String commandId) throws SQLException {
        PreparedStatement query = prepared("SELECT request, first, last FROM command WHERE day=? AND command_id=?");
        query.setString(1, day);
        query.setString(2, commandId);
        try (ResultSet rows = query.executeQuery()) {
            if (!rows.next()) return Optional.empty();
            return Optional.of(new KnownCommand(rows.getBytes(1), rows.getLong(2), rows.getLong(3)));
        }
    }

    /** Stored events as bytes, as far as their digests hold, and the first that is not what was written, if any. */
    record Page(List<byte[]> bodies, Optional<Damage> damage) {}

    /** Events after a revision, each held against its digest before it is given. */
    Page page(String day, long after, int limit) throws SQLException {
        Head head = head(day);
        if (after >= head.revision()) return new Page(List.of(), Optional.empty());
        Optional<byte[]> before = hashAt(day, after);
        if (before.isEmpty()) return new Page(List.of(), Optional.of(new Damage(day, after, "is missing")));
        byte[] hash = before.get();
        List<byte[]> bodies = new ArrayList<>();
        PreparedStatement query =
                prepared("SELECT revision, body, hash FROM event WHERE day=? AND revision>? ORDER BY revision LIMIT ?");
        query.setString(1, day);
        query.setLong(2, after);
        query.setInt(3, limit);
        try (ResultSet rows = query.executeQuery()) {
            while (rows.next()) {
                long revision = after + bodies.size() + 1;
                byte[] body = rows.getBytes(2);
                if (rows.getLong(1) != revision)
                    return new Page(bodies, Optional.of(new Damage(day, revision, "is missing")));
                hash = HashChain.next(hash, revision, body);
                if (!Arrays.equals(hash, rows.getBytes(3)))
                    return new Page(bodies, Optional.of(new Damage(day, revision, "is not what was written")));
                bodies.add(body);
            }
        }
        return new Page(bodies, cutShort(head, day, after + bodies.size(), bodies.size() < limit));
    }

    private static Optional<Damage> cutShort(Head head, String day, long last, boolean atEnd) {
        return atEnd && last < head.revision()
                ? Optional.of(new Damage(day, last + 1, "is missing"))
                : Optional.empty();
    }

    private Optional<byte[]> hashAt(String day, long revision) throws SQLException {
        if (revision == 0) return Optional.of(HashChain.start(day));
        PreparedStatement query = prepared("SELECT hash FROM event WHERE day=? AND revision=?");
        query.setString(1, day);
        query.setLong(2, revision);
        try (ResultSet rows = query.executeQuery()) {
            return rows.next() ? Optional.ofNullable(rows.getBytes(1)) : Optional.empty();
        }
    }

    List<String> days() throws SQLException {
        List<String> days = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT day FROM head ORDER BY day")) {
            while (rows.next()) days.add(rows.getString(1));
        }
        return List.copyOf(days);
    }

    private void execute(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
