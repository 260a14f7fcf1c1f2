package stirtide.planner.service;

import io.vertx.core.Future;
import stirtide.planner.http.Declined;
import stirtide.planner.log.LogFailure;

/** What whoever asked is told when the log has not taken something. */
final class Unstored {
    private Unstored() {}

    /** The failure as the sender is told of it; what is no failure of the log stays as it is. */
    static <T> Future<T> declined(Throwable failed) {
        return Future.failedFuture(failed instanceof LogFailure log ? declined(log) : failed);
    }

    private static Declined declined(LogFailure log) {
        return switch (log.kind()) {
            case READ_ONLY, DAMAGED -> Declined.readOnly();
            case FULL -> Declined.full(String.valueOf(log.getMessage()));
            default -> Declined.notNow("nothing could be stored; try again");
        };
    }
}
