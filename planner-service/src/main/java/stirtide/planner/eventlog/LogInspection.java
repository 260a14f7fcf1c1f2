package stirtide.planner.eventlog;

import java.nio.file.Files;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import stirtide.planner.eventlog.EventLog.Damage;

/** Verifies a log file before it is opened for writing, without changing it. */
final class LogInspection {
    private LogInspection() {}

    /**
     * Damages of the log in a folder.
     *
     * @param wholeUpTo number of rows up to which the events are verified too; of a larger log only heads and commands
     */
    static List<Damage> damages(LogFolder folder, long wholeUpTo) {
        if (!Files.exists(folder.file())) return List.of();
        try (Connection connection = SqliteFile.openToRead(folder.file())) {
            if (SqliteFile.isFresh(connection)) return List.of();
            SqliteVerifier verifier = new SqliteVerifier(connection);
            return verifier.newestRow() <= wholeUpTo
                    ? verifier.verify(folder.notes())
                    : verifier.verifyAllButEvents(folder.notes());
        } catch (SQLException failed) {
            throw SqliteFile.translate(failed, folder.file());
        } finally {
            folder.removeSharedMemory();
        }
    }

    /** The damages as a sentence for the operator. */
    static String sentence(LogFolder folder, List<Damage> damages) {
        return "the log " + folder.file() + " is damaged and is left untouched; restore a backup. Found: "
                + String.join("; ", damages.stream().map(Damage::toString).toList());
    }
}
