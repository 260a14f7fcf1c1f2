package stirtide.planner.eventlog;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The one connection to a log file: opened when it is needed, given up after a failure, and never opened anew once the
 * path leads to another file.
 */
final class SqliteSession {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.log");

    private final Path file;
    private final Path writeAhead;
    private final HeldFiles held = new HeldFiles();
    private final SqliteFile.Opening opening;
    private final BooleanSupplier readOnly;
    private @Nullable SqliteStatements statements;

    /** {@code readOnly}: whether the file is to be opened for reading only. */
    SqliteSession(Path file, SqliteFile.Opening opening, BooleanSupplier readOnly) {
        this.file = file;
        this.writeAhead = file.resolveSibling("log.db-wal");
        this.opening = opening;
        this.readOnly = readOnly;
    }

    /** A question to the open file. */
    interface Question<T> {
        T of(SqliteStatements statements) throws SQLException;
    }

    /** Asks the file, opening it if it is not open. */
    <T> T ask(Question<T> question) {
        try {
            return question.of(statements());
        } catch (SQLException failed) {
            close();
            throw SqliteFile.translate(failed, file);
        }
    }

    SqliteStatements statements() throws SQLException {
        if (statements == null) {
            if (lost().isPresent())
                throw new LogFailure(LogFailure.Kind.READ_ONLY, "the log that was open is not in its folder any more");
            boolean reading = readOnly.getAsBoolean();
            Connection connection = reading ? SqliteFile.openToRead(file) : opening.open(file);
            statements = new SqliteStatements(connection);
            held.hold(file);
            if (!reading) held.hold(writeAhead);
        }
        return statements;
    }

    /** Notes that a file must stay where it is as long as the log is in use. */
    void hold(Path other) {
        held.hold(other);
    }

    /** The first file whose path does not lead to it any more. */
    Optional<Path> lost() {
        return held.lost();
    }

    void close() {
        held.release(writeAhead);
        if (statements == null) return;
        Connection connection = statements.connection();
        statements = null;
        try {
            connection.close();
        } catch (SQLException alreadyBroken) {
            LOG.debug("closing: {}", alreadyBroken.toString());
        }
    }
}
