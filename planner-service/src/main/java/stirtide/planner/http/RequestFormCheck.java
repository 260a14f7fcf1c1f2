package stirtide.planner.http;

import io.vertx.core.Handler;
import io.vertx.core.MultiMap;
import io.vertx.core.http.HttpServerRequest;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Lets only requests through whose headers mean one thing: one host, no unknown expectation, bodies in JSON and UTF-8. */
final class RequestFormCheck {
    /** Parameters other than the character set mean nothing for JSON and may stand there. */
    private static final Pattern JSON = Pattern.compile("application/json\\s*(;.*)?");

    private static final Pattern CHARSET = Pattern.compile(";\\s*charset\\s*=\\s*(\"[^\"]*\"|[^;\\s]*)");

    private RequestFormCheck() {}

    static Handler<HttpServerRequest> only(Handler<HttpServerRequest> next) {
        return request -> {
            Optional<ProblemDetail> problem = problem(request.headers());
            if (problem.isPresent()) {
                EarlyResponse.refuse(request, problem.get());
                return;
            }
            // The check against the contract compares letters as they are.
            if (request.headers().contains("content-type")) request.headers().set("content-type", "application/json");
            next.handle(request);
        };
    }

    private static Optional<ProblemDetail> problem(MultiMap headers) {
        if (headers.getAll("host").size() > 1)
            return Optional.of(ProblemDetail.of(400, "NOT_HTTP", "a request has one Host line"));
        List<String> expected = headers.getAll("expect");
        if (!expected.stream().allMatch(each -> each.strip().equalsIgnoreCase("100-continue")))
            return Optional.of(ProblemDetail.of(
                    417, "EXPECTATION_UNKNOWN", "the only expectation that can be met is 100-continue"));
        List<String> encodings = headers.getAll("content-encoding");
        if (!encodings.stream().allMatch(each -> each.strip().equalsIgnoreCase("identity")))
            return Optional.of(
                    ProblemDetail.of(415, "NOT_JSON", "the body must be sent as it is, without a content-encoding"));
        return isJson(headers.getAll("content-type")) ? Optional.empty() : Optional.of(ProblemResponses.notJson());
    }

    /** Whether a body may be JSON; what no header says is left to the contract. */
    private static boolean isJson(List<String> types) {
        if (types.isEmpty()) return true;
        String type = types.get(0).strip().toLowerCase(Locale.ROOT);
        boolean utf8 = CHARSET.matcher(type)
                .results()
                .map(each -> each.group(1).replace("\"", ""))
                .allMatch("utf-8"::equals);
        return types.size() == 1 && utf8 && JSON.matcher(type).matches();
    }
}
