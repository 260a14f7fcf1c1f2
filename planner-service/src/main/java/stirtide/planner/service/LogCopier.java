package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Promise;
import java.nio.file.Path;
import stirtide.planner.eventlog.LogBackup;
import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.eventlog.SqliteEventLog;
import stirtide.planner.http.ApiException;

/** Copies the log while it goes on being written: some rows at a time, between the appends. */
record LogCopier(AsyncEventLog thread, SqliteEventLog log) {
    /** Copies the log as it is now into a new SQLite file. */
    Future<Void> copyTo(Path file) {
        return thread.between(() -> log.beginCopy(file))
                .compose(copy -> {
                    Promise<Void> copied = Promise.promise();
                    copyOn(copy, copied);
                    return copied.future()
                            .eventually(() -> thread.between(() -> {
                                copy.close();
                                return null;
                            }));
                })
                .recover(LogCopier::failed);
    }

    /** Not a chain of futures: a large log has thousands of steps. */
    private void copyOn(LogBackup copy, Promise<Void> copied) {
        thread.between(() -> log.copyOn(copy))
                .onSuccess(more -> {
                    if (more) copyOn(copy, copied);
                    else copied.complete();
                })
                .onFailure(copied::fail);
    }

    private static Future<Void> failed(Throwable failed) {
        return Future.failedFuture(
                failed instanceof LogFailure log
                        ? ApiException.conflict("BACKUP_FAILED", String.valueOf(log.getMessage()))
                        : failed);
    }
}
