package stirtide.planner.http;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Future;
import io.vertx.core.Vertx;
import io.vertx.core.http.HttpServer;
import io.vertx.core.http.HttpServerOptions;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** The two servers of the service: one for the salon, one for whoever operates it. */
public final class HttpEdge {
    private static final int IDLE_SECONDS = 30;
    private static final int HEADER_BYTES = 8 * 1024;
    private static final int LINE_BYTES = 4 * 1024;
    private static final int DRAIN_SECONDS = 5;

    private final HttpServer api;
    private final HttpServer management;
    private final Feeds feeds;

    private HttpEdge(HttpServer api, HttpServer management, Feeds feeds) {
        this.api = api;
        this.management = management;
        this.feeds = feeds;
    }

    /**
     * Where to listen.
     *
     * @param host address to bind
     * @param port port for the salon, 0 for any free one
     * @param managementPort port for health and metrics, 0 for any free one
     */
    public record Address(String host, int port, int managementPort) {}

    /** Starts both servers on the current context. */
    public static Future<HttpEdge> start(
            Vertx vertx, Address address, DayDesk desk, PrometheusMeterRegistry registry, BooleanSupplier ready) {
        Feeds feeds = new Feeds(vertx, desk);
        Gauge.builder("stirtide.listeners", feeds, Feeds::count)
                .description("Open lines to listeners")
                .register(registry);
        HttpServer management = vertx.createHttpServer(options(address.host(), address.managementPort()))
                .requestHandler(OwnNames.only(ManagementRoutes.router(vertx, registry, ready)));
        return ApiRouter.build(vertx, desk, feeds).compose(router -> {
            HttpServer api = vertx.createHttpServer(options(address.host(), address.port()))
                    .invalidRequestHandler(InvalidRequests::answer)
                    .requestHandler(OwnNames.only(router));
            return Future.all(api.listen(), management.listen()).map(both -> new HttpEdge(api, management, feeds));
        });
    }

    private static HttpServerOptions options(String host, int port) {
        return new HttpServerOptions()
                .setHost(host)
                .setPort(port)
                .setIdleTimeout(IDLE_SECONDS)
                .setIdleTimeoutUnit(TimeUnit.SECONDS)
                .setMaxHeaderSize(HEADER_BYTES)
                .setMaxInitialLineLength(LINE_BYTES)
                .setHttp2ClearTextEnabled(false);
    }

    /** Port of the salon's server. */
    public int port() {
        return api.actualPort();
    }

    /** Port of the management server. */
    public int managementPort() {
        return management.actualPort();
    }

    /** Ends the feeds first, for an open line would hold the server up, then lets requests in flight finish. */
    public Future<Void> stop() {
        feeds.end();
        return api.shutdown(DRAIN_SECONDS, TimeUnit.SECONDS).eventually(() -> management.shutdown(1, TimeUnit.SECONDS));
    }
}
