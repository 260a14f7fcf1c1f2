package stirtide.planner.eventlog;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The one connection to a log file: opened when it is needed, given up after a failure. */
final class SqliteSession {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.log");

    private final Path file;
    private final SqliteFile.Opening opening;
    private final BooleanSupplier readOnly;
    private @Nullable SqliteStatements statements;

    /** {@code readOnly}: whether the file is to be opened for reading only. */
    SqliteSession(Path file, SqliteFile.Opening opening, BooleanSupplier readOnly) {
        this.file = file;
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
            Connection connection = readOnly.getAsBoolean() ? SqliteFile.openToRead(file) : opening.open(file);
            statements = new SqliteStatements(connection);
        }
        return statements;
    }

    void close() {
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
