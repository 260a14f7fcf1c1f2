package stirtide.planner.service;

import io.vertx.core.Context;
import io.vertx.core.Future;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.planner.admin.Errand;
import stirtide.planner.admin.ErrandAnswer;
import stirtide.planner.admin.ErrandAnswer.Outcome;
import stirtide.planner.eventlog.LogBackup;
import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.eventlog.SqliteEventLog;
import stirtide.planner.http.ApiException;
import stirtide.planner.http.DayOperations;

/** Carries out errands beside the service's work. Called on threads that may wait. */
final class AdminRequests {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.errand");
    private static final int MOST_MINUTES = 30;

    private final Context context;
    private final AsyncEventLog thread;
    private final SqliteEventLog log;
    private final DayOperations days;

    AdminRequests(Context context, AsyncEventLog thread, SqliteEventLog log, DayOperations days) {
        this.context = context;
        this.thread = thread;
        this.log = log;
        this.days = days;
    }

    ErrandAnswer answer(Errand errand) {
        try {
            return switch (errand.task()) {
                case Errand.BACKUP -> backup(Path.of(errand.argument()));
                case Errand.CLIENT_EXPORT -> client(ask(() -> days.clientRecord(errand.argument(), Optional.empty())));
                case Errand.CLIENT_ERASE ->
                    client(ask(() -> days.eraseClient(errand.argument())
                            .map(known -> known ? Optional.of("") : Optional.<String>empty())));
                default -> new ErrandAnswer(Outcome.NOT_POSSIBLE, "this service does not know the errand");
            };
        } catch (ExecutionException failed) {
            return refused(failed.getCause());
        } catch (TimeoutException | SQLException failed) {
            return refused(failed);
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
            return refused(stopping);
        }
    }

    private static ErrandAnswer client(Optional<String> found) {
        return found.map(text -> new ErrandAnswer(Outcome.DONE, text))
                .orElseGet(() -> new ErrandAnswer(
                        Outcome.UNKNOWN, "nothing is kept under this reference; write it as it was booked"));
    }

    private ErrandAnswer backup(Path file)
            throws ExecutionException, InterruptedException, TimeoutException, SQLException {
        try (LogBackup copy = ask(() -> thread.between(() -> log.beginCopy(file)))) {
            boolean more = true;
            while (more) more = ask(() -> thread.between(() -> log.copyOn(copy)));
        }
        return new ErrandAnswer(Outcome.DONE, "");
    }

    /** Asks on the service's context and waits. */
    private <T> T ask(Supplier<Future<T>> question) throws ExecutionException, InterruptedException, TimeoutException {
        return Future.<T>future(answer -> context.runOnContext(now -> Future.<Void>succeededFuture()
                        .compose(start -> question.get())
                        .onComplete(answer)))
                .toCompletionStage()
                .toCompletableFuture()
                .get(MOST_MINUTES, TimeUnit.MINUTES);
    }

    private static ErrandAnswer refused(@Nullable Throwable why) {
        if (why instanceof LogFailure || why instanceof ApiException)
            return new ErrandAnswer(Outcome.NOT_POSSIBLE, String.valueOf(why.getMessage()));
        LOG.error("an errand failed", why);
        return new ErrandAnswer(Outcome.NOT_POSSIBLE, "something unexpected happened; the service's output has it");
    }
}
