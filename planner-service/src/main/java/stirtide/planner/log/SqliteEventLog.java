package stirtide.planner.log;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import stirtide.events.day.StoredEvent;

/**
 * The embedded log: one SQLite file held by one connection. After an append that failed the connection can no longer be
 * trusted (it may have rolled back on its own, or stored the events and reported a failure), so it is closed, opened
 * anew, and what the file then says decides the answer.
 */
public final class SqliteEventLog implements EventLog {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.log");

    private final LogFolder folder;
    private final HeadAnchor anchor;
    private @Nullable SqliteStatements statements;

    private SqliteEventLog(LogFolder folder, HeadAnchor anchor) {
        this.folder = folder;
        this.anchor = anchor;
    }

    /**
     * Takes the folder, opens the log in it and verifies the whole of it.
     *
     * @throws LogFailure IN_USE, NO_PLACE, UNAVAILABLE, or DAMAGED with every damage in the message
     */
    public static SqliteEventLog open(Path dataFolder) {
        LogFolder folder = LogFolder.take(dataFolder);
        try {
            if (System.getProperty("org.sqlite.tmpdir") == null) {
                System.setProperty(
                        "org.sqlite.tmpdir", folder.emptyNativeFolder().toString());
            }
            Optional<HeadAnchor.Note> note = HeadAnchor.read(folder.anchor());
            SqliteEventLog log = new SqliteEventLog(folder, new HeadAnchor(folder.anchor()));
            log.requireSound(note);
            return log;
        } catch (IOException unreadable) {
            folder.close();
            throw new LogFailure(
                    LogFailure.Kind.NO_PLACE, "cannot read or write in " + dataFolder + ": " + unreadable, unreadable);
        } catch (RuntimeException failed) {
            folder.close();
            throw failed;
        }
    }

    private void requireSound(Optional<HeadAnchor.Note> note) {
        List<Damage> damages;
        try {
            damages = verify(note);
        } catch (LogFailure failed) {
            closeConnection();
            throw failed;
        }
        if (damages.isEmpty()) return;
        closeConnection();
        throw new LogFailure(LogFailure.Kind.DAMAGED, damaged(damages));
    }

    private String damaged(List<Damage> damages) {
        return "the log " + folder.file() + " is damaged and is left untouched; restore a copy of the folder. Found: "
                + String.join("; ", damages.stream().map(Damage::toString).toList());
    }

    @Override
    public Append append(
            String day, long expectedRevision, String commandId, byte[] requestDigest, List<StoredEvent> events) {
        EventBytes.requireContinues(day, expectedRevision, events);
        try {
            Append answer = connected().append(day, expectedRevision, commandId, requestDigest, events);
            if (answer instanceof Append.Appended && !events.isEmpty()) noteHead(day);
            return answer;
        } catch (SQLException failed) {
            return afterFailure(failed, day, expectedRevision, commandId, events);
        }
    }

    /** Opens the file anew and looks whether the events are in it. */
    private Append afterFailure(
            SQLException failed, String day, long expectedRevision, String commandId, List<StoredEvent> events) {
        closeConnection();
        if (isStored(day, expectedRevision, commandId, events)) {
            return new Append.Appended(expectedRevision + 1, expectedRevision + events.size());
        }
        throw translate(failed);
    }

    private boolean isStored(String day, long expectedRevision, String commandId, List<StoredEvent> events) {
        if (!commandId.equals(NO_COMMAND)) return command(day, commandId).isPresent();
        List<StoredEvent> there = read(day, expectedRevision, READ_LIMIT);
        return there.size() >= events.size() && there.subList(0, events.size()).equals(events);
    }

    private void noteHead(String day) throws SQLException {
        try {
            anchor.write(connected().note(day));
        } catch (IOException noPlace) {
            // The event is durable; an older note only finds less.
            LOG.warn("anchor not written: {}", noPlace.toString());
        }
    }

    @Override
    public Optional<KnownCommand> command(String day, String commandId) {
        return ask(statements -> statements.command(day, commandId));
    }

    @Override
    public List<StoredEvent> read(String day, long after, int limit) {
        return ask(statements -> statements.read(day, after, Math.min(limit, READ_LIMIT)));
    }

    @Override
    public List<String> days() {
        return ask(SqliteStatements::days);
    }

    @Override
    public long head(String day) {
        return ask(statements -> statements.head(day).revision());
    }

    @Override
    public List<Damage> verify() {
        try {
            return verify(HeadAnchor.read(folder.anchor()));
        } catch (IOException unreadable) {
            throw new LogFailure(LogFailure.Kind.UNAVAILABLE, "cannot read " + folder.anchor(), unreadable);
        }
    }

    private List<Damage> verify(Optional<HeadAnchor.Note> note) {
        return ask(statements -> new SqliteVerifier(statements.connection()).verify(note));
    }

    private interface Question<T> {
        T of(SqliteStatements statements) throws SQLException;
    }

    private <T> T ask(Question<T> question) {
        try {
            return question.of(connected());
        } catch (SQLException failed) {
            closeConnection();
            throw translate(failed);
        }
    }

    private SqliteStatements connected() throws SQLException {
        if (statements == null) statements = new SqliteStatements(SqliteFile.open(folder.file()));
        return statements;
    }

    private LogFailure translate(SQLException failed) {
        SQLiteErrorCode code =
                failed instanceof SQLiteException sqlite ? sqlite.getResultCode() : SQLiteErrorCode.UNKNOWN_ERROR;
        return switch (SQLiteErrorCode.getErrorCode(code.code & 0xff)) {
            case SQLITE_FULL ->
                new LogFailure(LogFailure.Kind.FULL, "no space is left for the log; nothing was stored", failed);
            case SQLITE_BUSY, SQLITE_LOCKED ->
                new LogFailure(
                        LogFailure.Kind.IN_USE,
                        "another process has the log " + folder.file() + "; stop it first",
                        failed);
            case SQLITE_CORRUPT, SQLITE_NOTADB ->
                new LogFailure(
                        LogFailure.Kind.DAMAGED,
                        "the log " + folder.file() + " cannot be read; restore a copy",
                        failed);
            default ->
                new LogFailure(
                        LogFailure.Kind.UNAVAILABLE, "the log cannot be read or written; nothing was stored", failed);
        };
    }

    private void closeConnection() {
        if (statements == null) return;
        Connection connection = statements.connection();
        statements = null;
        try {
            connection.close();
        } catch (SQLException alreadyBroken) {
            LOG.debug("closing: {}", alreadyBroken.toString());
        }
    }

    @Override
    public void close() {
        closeConnection();
        try {
            anchor.close();
        } catch (IOException alreadyClosed) {
            LOG.debug("closing: {}", alreadyClosed.toString());
        }
        folder.close();
    }
}
