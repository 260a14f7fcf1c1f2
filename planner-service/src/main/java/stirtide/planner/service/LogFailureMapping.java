package stirtide.planner.service;

import io.vertx.core.Future;
import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.http.ApiException;

/** What whoever asked is told when the log has not taken something. */
final class LogFailureMapping {
    private LogFailureMapping() {}

    /** The failure as the sender is told of it; what is no failure of the log stays as it is. */
    static <T> Future<T> declined(Throwable failed) {
        return Future.failedFuture(failed instanceof LogFailure log ? declined(log) : failed);
    }

    private static ApiException declined(LogFailure log) {
        return switch (log.kind()) {
            case READ_ONLY, DAMAGED -> ApiException.readOnly();
            case FULL -> ApiException.full(String.valueOf(log.getMessage()));
            default -> ApiException.notNow("nothing could be stored; try again");
        };
    }
}
