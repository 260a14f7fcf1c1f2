package stirtide.planner.service;

import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.http.ApiException;

/** Failures of the log as the sender of a request gets them; what the log says of its damage is for the operator only. */
final class LogFailures {
    private LogFailures() {}

    /** The failure for the sender; one that is not of the log stays as it is. */
    static Throwable forSender(Throwable failed) {
        if (!(failed instanceof LogFailure log)) return failed;
        String sentence = String.valueOf(log.getMessage());
        return switch (log.kind()) {
            case READ_ONLY, DAMAGED -> ApiException.readOnly();
            case IN_USE -> ApiException.notNow("another process has the log; nothing was stored");
            case FULL -> ApiException.full(sentence);
            case NO_PLACE, UNAVAILABLE -> ApiException.notNow(sentence);
        };
    }
}
