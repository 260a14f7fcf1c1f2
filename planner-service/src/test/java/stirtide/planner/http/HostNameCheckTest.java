package stirtide.planner.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Vertx;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A name of somebody else that points at this machine is not answered. */
class HostNameCheckTest {
    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "127.0.0.1:7464", "localhost", "LOCALHOST:80", "[::1]:7464"})
    void names_of_this_machine_are_its_own(String host) {
        assertThat(HostNameCheck.isOwn(host)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "elsewhere.example", "127.0.0.1.elsewhere.example", "localhost:80:90", "10.0.0.7"})
    void other_names_are_not(String host) {
        assertThat(HostNameCheck.isOwn(host)).isFalse();
    }

    @Test
    void both_ports_refuse_another_name_with_421() throws Exception {
        Vertx vertx = Vertx.vertx();
        try {
            HttpServers edge = TestServers.start(
                    vertx,
                    TestSecurity.open(),
                    new IdleDayOperations(),
                    new PrometheusMeterRegistry(PrometheusConfig.DEFAULT));
            for (int port : new int[] {edge.port(), edge.managementPort()})
                assertThat(answer(port)).startsWith("HTTP/1.1 421 ").contains("HOST_UNKNOWN");
        } finally {
            vertx.close().await(20, TimeUnit.SECONDS);
        }
    }

    private static String answer(int port) throws Exception {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream()
                    .write("GET /days HTTP/1.1\r\nHost: elsewhere.example\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
