package stirtide.planner.http;

import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Vertx;
import java.util.concurrent.TimeUnit;

/** HTTP servers for tests, on free ports of this machine. */
final class TestServers {
    private TestServers() {}

    /** Servers that are ready and answer. */
    static HttpServers start(
            Vertx vertx, HttpSecurity security, DayOperations operations, PrometheusMeterRegistry registry)
            throws Exception {
        return HttpServers.start(
                        vertx,
                        new HttpServers.Address("127.0.0.1", 0, 0),
                        security,
                        operations,
                        registry,
                        () -> Readiness.READY,
                        vertx.executeBlocking(HttpServers::contract))
                .await(20, TimeUnit.SECONDS);
    }
}
