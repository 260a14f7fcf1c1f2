package stirtide.planner.eventlog;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Opens the log file on a disk that can be told to run full or to fail. */
final class FailingDisk implements SqliteFile.Opening {
    /** When the next commit fails. */
    enum Moment {
        NEVER,
        BEFORE_COMMIT,
        AFTER_COMMIT
    }

    private static final int NO_LIMIT = 1_000_000;

    private Moment moment = Moment.NEVER;
    private SQLiteErrorCode code = SQLiteErrorCode.SQLITE_IOERR_WRITE;
    private int freePages = NO_LIMIT;
    private Connection newest;

    /** The next commit fails once with a code of SQLite. */
    void failNext(Moment when, SQLiteErrorCode with) {
        moment = when;
        code = with;
    }

    /** Leaves so many pages of the file free from now on. */
    void leaveFree(int pages) throws SQLException {
        freePages = pages;
        limit(newest);
    }

    void freeAll() throws SQLException {
        leaveFree(NO_LIMIT);
    }

    @Override
    public Connection open(Path file) throws SQLException {
        newest = SqliteFile.open(file);
        limit(newest);
        return proxy(Connection.class, newest);
    }

    private void limit(Connection connection) throws SQLException {
        if (connection.isClosed()) return;
        try (Statement statement = connection.createStatement()) {
            int used = Integer.parseInt(SqliteFile.text(statement, "PRAGMA page_count"));
            statement.execute("PRAGMA max_page_count=" + (freePages == NO_LIMIT ? NO_LIMIT : used + freePages));
        }
    }

    @SuppressWarnings("unchecked")
    private <T> T proxy(Class<T> type, T real) {
        return (T) Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, (self, method, arguments) -> {
            boolean commit = method.getName().equals("execute") && "COMMIT".equals(arguments[0]);
            if (commit && moment == Moment.BEFORE_COMMIT) throw failure();
            try {
                Object answer = method.invoke(real, arguments);
                if (commit && moment == Moment.AFTER_COMMIT) throw failure();
                boolean statement = method.getName().equals("createStatement");
                return statement ? proxy(Statement.class, (Statement) answer) : answer;
            } catch (InvocationTargetException failed) {
                throw failed.getCause();
            }
        });
    }

    private SQLiteException failure() {
        moment = Moment.NEVER;
        return new SQLiteException("told to fail", code);
    }
}
