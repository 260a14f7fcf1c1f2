package stirtide.planner.http;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.netty.handler.codec.http.HttpResponseStatus;
import java.util.Optional;

/**
 * A refusal as RFC 9457 writes it.
 *
 * @param type always {@code about:blank}: the title says what the status says
 * @param title the status in words
 * @param status HTTP status
 * @param detail what was wrong and what would be accepted
 * @param code stable, upper case
 * @param currentRevision revision of the day, with 412
 * @param errorId id of the service's own note, with 500
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record ProblemDetail(
        String type,
        String title,
        int status,
        String detail,
        String code,
        Optional<Long> currentRevision,
        Optional<String> errorId) {
    private static ProblemDetail of(
            int status, String code, String detail, Optional<Long> currentRevision, Optional<String> errorId) {
        String title = HttpResponseStatus.valueOf(status).reasonPhrase();
        return new ProblemDetail("about:blank", title, status, detail, code, currentRevision, errorId);
    }

    static ProblemDetail of(int status, String code, String detail) {
        return of(status, code, detail, Optional.empty(), Optional.empty());
    }

    static ProblemDetail unknownDay() {
        return of(404, "DAY_UNKNOWN", "this day was not opened; POST /days opens one, GET /days lists them");
    }

    /** 412 with the revision that would match. */
    static ProblemDetail stale(long currentRevision) {
        String detail = "the day has moved on to revision " + currentRevision + "; look again and decide";
        return of(412, "REVISION_STALE", detail, Optional.of(currentRevision), Optional.empty());
    }

    /** 500 that says nothing but where the operator finds more. */
    static ProblemDetail unexpected(String errorId) {
        String detail = "something unexpected happened; the service noted it under " + errorId;
        return of(500, "UNEXPECTED", detail, Optional.empty(), Optional.of(errorId));
    }
}
