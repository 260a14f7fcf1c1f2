package stirtide.planner.service;

import java.io.IOException;
import stirtide.planner.cli.CommandException;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.eventlog.SqliteEventLog;
import stirtide.planner.privacy.ClientKeys;

/** What the data folder holds, opened: the log, the keys of clients, what is kept of days that are over. */
record DataFolder(SqliteEventLog log, ClientKeys clients, ClosedDayCache closedDays) {
    /**
     * Takes and opens it; waits for the disk.
     *
     * @throws LogFailure when the log cannot be taken
     * @throws CommandException when the keys cannot be read
     */
    static DataFolder open(Settings settings) {
        SqliteEventLog log = SqliteEventLog.openToServe(settings.data());
        return new DataFolder(log, clients(settings, log), new ClosedDayCache(settings.data()));
    }

    private static ClientKeys clients(Settings settings, EventLog log) {
        try {
            return new ClientKeys(settings.data());
        } catch (IOException unreadable) {
            log.close();
            throw new CommandException(
                    CommandException.LOG_BROKEN,
                    unreadable.getMessage() + "; restore a copy of it, or move it away: clients show as erased then");
        }
    }

    void close() {
        closedDays.close();
        log.close();
    }
}
