package stirtide.planner.http;

import io.vertx.core.Handler;
import io.vertx.core.http.HttpServerRequest;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Accepts only requests to this machine's own names. A foreign web page may point a name of its own at the
 * loopback address; the browser then sends that name, and this is where it shows.
 */
final class HostNameCheck {
    private static final Set<String> NAMES = Set.of("127.0.0.1", "localhost", "[::1]");

    private HostNameCheck() {}

    static Handler<HttpServerRequest> only(Handler<HttpServerRequest> next) {
        return request -> {
            if (isOwn(request.getHeader("host"))) next.handle(request);
            else refuse(request);
        };
    }

    /** A request without the header is no browser's. */
    static boolean isOwn(@Nullable String host) {
        return host == null
                || NAMES.contains(host.replaceFirst(":[0-9]{1,5}$", "").toLowerCase(Locale.ROOT));
    }

    private static void refuse(HttpServerRequest request) {
        ProblemDetail problem = ProblemDetail.of(
                421, "HOST_UNKNOWN", "this service answers to 127.0.0.1, localhost and [::1] only; use one of them");
        EarlyResponse.refuse(request, problem);
    }
}
