package stirtide.planner.http;

import io.netty.handler.codec.http.TooLongHttpHeaderException;
import io.netty.handler.codec.http.TooLongHttpLineException;
import io.vertx.core.http.HttpServerRequest;

/** Answers requests that are not HTTP or exceed its limits, before any route sees them. */
final class InvalidRequestHandler {
    private InvalidRequestHandler() {}

    static void answer(HttpServerRequest request) {
        EarlyResponse.refuse(request, problem(request.decoderResult().cause()));
    }

    private static ProblemDetail problem(Throwable cause) {
        if (cause instanceof TooLongHttpHeaderException)
            return ProblemDetail.of(431, "HEADERS_TOO_LARGE", "the headers are too large: 8 KiB at most");
        if (cause instanceof TooLongHttpLineException)
            return ProblemDetail.of(414, "LINE_TOO_LONG", "the request line is too long: 4 KiB at most");
        return ProblemDetail.of(400, "NOT_HTTP", "the request cannot be read as HTTP/1.1");
    }
}
