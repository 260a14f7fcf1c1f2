package stirtide.planner.http;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Future;
import io.vertx.core.Vertx;
import io.vertx.core.http.HttpServer;
import io.vertx.core.http.HttpServerOptions;
import io.vertx.core.net.PemKeyCertOptions;
import io.vertx.openapi.contract.OpenAPIContract;
import java.io.IOException;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** The TCP servers of the service: one for the salon, one for health and metrics. */
public final class HttpServers {
    /** Address of the management server whatever the other one binds to. */
    private static final String LOOPBACK = "127.0.0.1";

    private static final int HEADER_BYTES = 8 * 1024;
    private static final int LINE_BYTES = 4 * 1024;
    private static final int DRAIN_SECONDS = 3;

    /** No byte either way; longer than any answer is in the making. */
    private static final int IDLE_SECONDS = 30;

    /** So that it shows soon who reads nothing: the system itself would take in megabytes for them. */
    private static final int SEND_BUFFER_BYTES = 32 * 1024;

    private final HttpServer api;
    private final HttpServer management;
    private final StreamRegistry streams;

    private HttpServers(HttpServer api, HttpServer management, StreamRegistry streams) {
        this.api = api;
        this.management = management;
        this.streams = streams;
    }

    /**
     * Where to listen.
     *
     * @param host address to bind
     * @param port port for the salon, 0 for any free one
     * @param managementPort port for health and metrics, 0 for any free one
     */
    public record Address(String host, int port, int managementPort) {}

    /** Reads the contract from which the routes are built. */
    public static OpenAPIContract contract() throws IOException {
        return ContractReader.read();
    }

    /** Starts both servers on the current context, with a {@link #contract()} that may still be being read. */
    public static Future<HttpServers> start(
            Vertx vertx,
            Address address,
            HttpSecurity security,
            DayOperations days,
            PrometheusMeterRegistry registry,
            Supplier<Readiness> ready,
            Future<OpenAPIContract> contract) {
        StreamRegistry streams = new StreamRegistry(vertx, days, security.limits());
        Gauge.builder("stirtide.listeners", streams, StreamRegistry::count)
                .description("Open lines to listeners")
                .register(registry);
        HttpServer management = vertx.createHttpServer(options(LOOPBACK, address.managementPort()))
                .requestHandler(
                        PercentEncodingCheck.only(HostNameCheck.only(ManagementRoutes.router(vertx, registry, ready))));
        ApiRouter routes = new ApiRouter(vertx, security, days, streams, new RejectionMetrics(registry));
        return contract.map(routes::route).compose(router -> {
            HttpServerOptions options = options(address.host(), address.port());
            security.encryption().ifPresent(files -> encrypt(options, files));
            ConnectionTracker connections = new ConnectionTracker(vertx, security.limits());
            Gauge.builder("stirtide.connections", connections, ConnectionTracker::count)
                    .description("Open connections to the salon's server")
                    .register(registry);
            HttpServer api = vertx.createHttpServer(options)
                    .connectionHandler(connections::opened)
                    .invalidRequestHandler(InvalidRequestHandler::answer)
                    .requestHandler(connections.limited(RequestFormCheck.only(
                            PercentEncodingCheck.only(isLoopback(address) ? HostNameCheck.only(router) : router))));
            return Future.all(api.listen(), management.listen()).map(both -> new HttpServers(api, management, streams));
        });
    }

    /** A browser cannot misuse a name of its own against a service that asks for a token. */
    private static boolean isLoopback(Address address) {
        return address.host().equals(LOOPBACK);
    }

    private static void encrypt(HttpServerOptions options, HttpSecurity.Encryption files) {
        options.setSsl(true)
                .setUseAlpn(false)
                .setEnabledSecureTransportProtocols(Set.of("TLSv1.3", "TLSv1.2"))
                .setKeyCertOptions(new PemKeyCertOptions()
                        .setCertPath(files.certificate().toString())
                        .setKeyPath(files.key().toString()));
    }

    private static HttpServerOptions options(String host, int port) {
        return new HttpServerOptions()
                .setHost(host)
                .setPort(port)
                .setIdleTimeout(IDLE_SECONDS)
                .setIdleTimeoutUnit(TimeUnit.SECONDS)
                .setSendBufferSize(SEND_BUFFER_BYTES)
                .setMaxHeaderSize(HEADER_BYTES)
                .setMaxInitialLineLength(LINE_BYTES)
                .setHttp2ClearTextEnabled(false)
                // There are no web sockets here; what prepares them would keep a list of requests.
                .setPerFrameWebSocketCompressionSupported(false)
                .setPerMessageWebSocketCompressionSupported(false);
    }

    /** Port of the salon's server. */
    public int port() {
        return api.actualPort();
    }

    /** Port of the management server. */
    public int managementPort() {
        return management.actualPort();
    }

    /** Ends the streams first, which would hold up the shutdown, then lets requests in flight finish. */
    public Future<Void> stop() {
        streams.end();
        return api.shutdown(DRAIN_SECONDS, TimeUnit.SECONDS).eventually(() -> management.shutdown(1, TimeUnit.SECONDS));
    }
}
