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
    static ProblemDetail of(int status, String code, String detail) {
        return new ProblemDetail(
                "about:blank",
                HttpResponseStatus.valueOf(status).reasonPhrase(),
                status,
                detail,
                code,
                Optional.empty(),
                Optional.empty());
    }

    /** 412 with the revision that would match. */
    static ProblemDetail stale(long currentRevision) {
        ProblemDetail plain = of(
                412,
                "REVISION_STALE",
                "the day has moved on to revision " + currentRevision + "; look again and decide");
        return new ProblemDetail(
                plain.type,
                plain.title,
                plain.status,
                plain.detail,
                plain.code,
                Optional.of(currentRevision),
                Optional.empty());
    }

    /** 500 that says nothing but where the operator finds more. */
    static ProblemDetail unexpected(String errorId) {
        ProblemDetail plain =
                of(500, "UNEXPECTED", "something unexpected happened; the service noted it under " + errorId);
        return new ProblemDetail(
                plain.type,
                plain.title,
                plain.status,
                plain.detail,
                plain.code,
                Optional.empty(),
                Optional.of(errorId));
    }
}
