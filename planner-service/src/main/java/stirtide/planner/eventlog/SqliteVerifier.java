package stirtide.planner.eventlog;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import stirtide.events.json.EventReader;
import stirtide.planner.eventlog.EventLog.Damage;
import stirtide.planner.eventlog.SqliteStatements.Head;

/** Reads the whole log file and names what is not as it was written. */
final class SqliteVerifier {
    private final Connection connection;
    private final List<Damage> damages = new ArrayList<>();
    private final Map<String, Head> heads = new TreeMap<>();

    SqliteVerifier(Connection connection) {
        this.connection = connection;
    }

    List<Damage> verify(AnchorNotes anchor) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            checkPages(statement, "1");
            checkChains(statement);
            checkHeads(statement);
            checkCommands(statement);
        }
        checkAnchor(anchor);
        return List.copyOf(damages);
    }

    /** Everything but the events: those of a large log take seconds and are held against their digests when read. */
    List<Damage> verifyAllButEvents(AnchorNotes anchor) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            checkPages(statement, "'command'");
            checkPages(statement, "'head'");
            readNewest(statement);
            checkHeads(statement);
            checkCommands(statement);
        }
        checkAnchor(anchor);
        return List.copyOf(damages);
    }

    /** Number of rows ever stored, all days together. */
    long newestRow() throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT max(rowid) FROM event")) {
            return rows.next() ? rows.getLong(1) : 0;
        }
    }

    private void readNewest(Statement statement) throws SQLException {
        // The heads first, by CROSS: the other way round the whole log would be gone through.
        try (ResultSet rows =
                statement.executeQuery("SELECT head.day, event.revision, event.hash FROM head CROSS JOIN event"
                        + " ON event.day=head.day AND event.revision=head.revision")) {
            while (rows.next()) heads.put(rows.getString(1), new Head(rows.getLong(2), rows.getBytes(3)));
        }
    }

    private void checkPages(Statement statement, String what) throws SQLException {
        String answer = SqliteFile.text(statement, "PRAGMA integrity_check(" + what + ")");
        if (!answer.equals("ok")) damages.add(new Damage("log.db", 0, answer));
    }

    private void checkChains(Statement statement) throws SQLException {
        try (ResultSet rows =
                statement.executeQuery("SELECT day, revision, id, body, hash FROM event ORDER BY day, revision")) {
            while (rows.next()) {
                String day = rows.getString(1);
                if (lost("an event", day, rows.getBytes(4))) continue;
                Head before = Optional.ofNullable(heads.get(day)).orElseGet(() -> Head.before(day));
                heads.put(day, checkEvent(day, before, rows));
            }
        }
    }

    /** Whether a row lacks what no row lacks, its day first; a page that is not the one it was reads like that. */
    private boolean lost(String row, @Nullable Object... parts) {
        if (Arrays.stream(parts).allMatch(Objects::nonNull)) return false;
        damages.add(new Damage("log.db", 0, row + (parts[0] == null ? " has lost its day" : " has lost a part of it")));
        return true;
    }

    private Head checkEvent(String day, Head before, ResultSet row) throws SQLException {
        long revision = row.getLong(2);
        byte[] body = row.getBytes(4);
        byte[] stored = row.getBytes(5);
        if (revision != before.revision() + 1) {
            damages.add(new Damage(day, before.revision() + 1, "is missing"));
        } else if (!Arrays.equals(stored, HashChain.next(before.hash(), revision, body))) {
            damages.add(new Damage(day, revision, "is not what was written"));
        } else if (!EventReader.id(body).equals(Optional.ofNullable(row.getString(3)))) {
            damages.add(new Damage(day, revision, "has another id than its text"));
        }
        return new Head(revision, stored);
    }

    private void checkHeads(Statement statement) throws SQLException {
        Map<String, Head> unseen = new TreeMap<>(heads);
        try (ResultSet rows = statement.executeQuery("SELECT day, revision, hash FROM head ORDER BY day")) {
            while (rows.next()) {
                String day = rows.getString(1);
                if (lost("a head", day)) continue;
                Head found = Optional.ofNullable(unseen.remove(day)).orElseGet(() -> Head.before(day));
                if (found.revision() != rows.getLong(2) || !Arrays.equals(found.hash(), rows.getBytes(3))) {
                    damages.add(new Damage(day, found.revision() + 1, "the stream's end is not what was written"));
                }
            }
        }
        unseen.forEach((day, head) -> damages.add(new Damage(day, head.revision(), "the stream's head is missing")));
    }

    private void checkCommands(Statement statement) throws SQLException {
        try (ResultSet rows =
                statement.executeQuery("SELECT day, command_id, request, first, last, hash FROM command")) {
            while (rows.next()) {
                if (lost("a command", rows.getString(1), rows.getString(2), rows.getBytes(3))) continue;
                byte[] hash = HashChain.command(
                        rows.getString(1), rows.getString(2), rows.getBytes(3), rows.getLong(4), rows.getLong(5));
                if (!Arrays.equals(hash, rows.getBytes(6)))
                    damages.add(new Damage(rows.getString(1), rows.getLong(4), "its command is not what was written"));
            }
        }
    }

    private void checkAnchor(AnchorNotes notes) throws SQLException {
        try (var query = connection.prepareStatement("SELECT hash FROM event WHERE day=? AND revision=?")) {
            for (var note : notes.heads().entrySet()) {
                query.setString(1, note.getKey());
                query.setLong(2, note.getValue().revision());
                checkNote(note.getKey(), note.getValue(), query);
            }
        }
    }

    private void checkNote(String day, Head note, PreparedStatement query) throws SQLException {
        try (ResultSet rows = query.executeQuery()) {
            if (!rows.next()) {
                damages.add(new Damage(day, note.revision(), "was stored (the file anchor says so) and is missing"));
            } else if (!Arrays.equals(rows.getBytes(1), note.hash())) {
                damages.add(new Damage(day, note.revision(), "is not the event the file anchor names"));
            }
        }
    }
}
