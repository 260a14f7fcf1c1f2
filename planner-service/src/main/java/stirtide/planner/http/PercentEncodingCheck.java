package stirtide.planner.http;

import io.vertx.core.Handler;
import io.vertx.core.http.HttpServerRequest;
import java.util.regex.Pattern;

/** Lets only requests through whose address can be read: after a per cent sign two hex digits follow. */
final class PercentEncodingCheck {
    private static final Pattern WRONG = Pattern.compile("%(?![0-9A-Fa-f]{2})");

    private PercentEncodingCheck() {}

    static Handler<HttpServerRequest> only(Handler<HttpServerRequest> next) {
        return request -> {
            if (!WRONG.matcher(request.uri()).find()) next.handle(request);
            else
                EarlyResponse.refuse(
                        request,
                        ProblemDetail.of(
                                400,
                                "NOT_UNDERSTOOD",
                                "a per cent sign in the address stands before two hex digits, such as %20"));
        };
    }
}
