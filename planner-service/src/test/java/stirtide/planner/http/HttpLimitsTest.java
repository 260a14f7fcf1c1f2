package stirtide.planner.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Vertx;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.Role;

/** Each limit is met with an answer that says so, over plain sockets. */
class HttpLimitsTest {
    private static final String LIVE =
            "GET /days/" + IdleDayOperations.DAY + "/live HTTP/1.1\r\nHost: localhost\r\n\r\n";
    private static final String DAYS = "GET /days HTTP/1.1\r\nHost: localhost\r\n\r\n";

    @TempDir
    Path folder;

    private final Vertx vertx = Vertx.vertx();
    private final List<Socket> sockets = new ArrayList<>();
    private int port;

    private void start(HttpLimits limits) throws Exception {
        port = TestServers.start(
                        vertx,
                        TestSecurity.with(folder, limits),
                        new IdleDayOperations(),
                        new PrometheusMeterRegistry(PrometheusConfig.DEFAULT))
                .port();
    }

    @AfterEach
    void stop() throws Exception {
        for (Socket socket : sockets) socket.close();
        vertx.close().await(20, TimeUnit.SECONDS);
    }

    private Socket open() throws Exception {
        Socket socket = new Socket(InetAddress.getByName("127.0.0.1"), port);
        socket.setSoTimeout(20_000);
        sockets.add(socket);
        return socket;
    }

    private static void write(Socket socket, String text) throws Exception {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.ISO_8859_1));
        socket.getOutputStream().flush();
    }

    /** The head of the next answer. */
    private static String head(Socket socket) throws Exception {
        return until(socket, "\r\n\r\n");
    }

    private static String until(Socket socket, String end) throws Exception {
        InputStream in = socket.getInputStream();
        StringBuilder head = new StringBuilder();
        for (int next = in.read(); next >= 0; next = in.read()) {
            head.append((char) next);
            if (head.toString().endsWith(end)) break;
        }
        return head.toString();
    }

    private static String rest(Socket socket) throws Exception {
        return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private String ask(String text) throws Exception {
        Socket socket = open();
        write(socket, text);
        return head(socket);
    }

    @Test
    void one_connection_too_many_of_an_address_is_told_so_and_closed() throws Exception {
        start(new HttpLimits(100, 3, 10, 10, 60, 30, 10_000, 25_000, 5_000));
        for (int count = 0; count < 3; count++) assertThat(ask(DAYS)).contains(" 200 ");
        Socket fourth = open();
        write(fourth, DAYS);
        String answer = rest(fourth);
        assertThat(answer).contains(" 429 ", "retry-after: 5", "TOO_MANY_CONNECTIONS", "no more than 3 connections");
        sockets.get(0).close();
        assertThat(rest(sockets.get(3))).isEmpty();
    }

    @Test
    void one_listener_too_many_is_told_so() throws Exception {
        start(new HttpLimits(100, 100, 4, 2, 60, 30, 10_000, 25_000, 5_000));
        assertThat(ask(LIVE)).contains(" 200 ");
        assertThat(ask(LIVE)).contains(" 200 ");
        assertThat(ask(LIVE)).contains(" 429 ", "retry-after: 10");
        assertThat(ask(DAYS)).contains(" 200 ");
    }

    @Test
    void the_last_listener_of_all_is_told_so() throws Exception {
        start(new HttpLimits(100, 100, 1, 2, 60, 30, 10_000, 25_000, 5_000));
        assertThat(ask(LIVE)).contains(" 200 ");
        assertThat(ask(LIVE)).contains(" 503 ", "retry-after: 10");
    }

    @Test
    void headers_that_dribble_in_end_with_the_connection() throws Exception {
        start(new HttpLimits(100, 100, 10, 10, 60, 1, 10_000, 25_000, 5_000));
        Socket slow = open();
        write(slow, "GET /days HTTP/1.1\r\nHost: loc");
        assertThat(rest(slow)).isEmpty();
    }

    @Test
    void a_body_that_does_not_come_is_answered_with_408() throws Exception {
        start(new HttpLimits(100, 100, 10, 10, 60, 30, 200, 25_000, 5_000));
        Socket slow = open();
        write(
                slow,
                "POST /days/" + IdleDayOperations.DAY + "/commands HTTP/1.1\r\nHost: localhost\r\n"
                        + "Content-Type: application/json\r\nContent-Length: 100\r\n\r\n{\"comm");
        assertThat(rest(slow)).contains(" 408 ", "BODY_TOO_SLOW", "200 ms");
    }

    @Test
    void who_waits_too_long_for_an_answer_is_told_and_the_line_stays() throws Exception {
        start(new HttpLimits(100, 100, 10, 10, 60, 30, 10_000, 200, 5_000));
        Socket line = open();
        write(line, command("never"));
        assertThat(head(line)).contains(" 503 ", "retry-after: 1");
        assertThat(until(line, "}")).contains("ANSWER_LATE", "sent again with the same commandId");
        write(line, command("mika"));
        assertThat(head(line)).contains(" 200 ");
    }

    private static String command(String actor) {
        String body = "{\"commandId\":\"command-1\",\"actor\":\"" + actor
                + "\",\"command\":{\"type\":\"StartService\",\"service\":1}}";
        return "POST /days/" + IdleDayOperations.DAY + "/commands HTTP/1.1\r\nHost: localhost\r\n"
                + "Content-Type: application/json\r\nContent-Length: " + body.length() + "\r\n\r\n" + body;
    }

    @Test
    void too_many_commands_of_a_token_in_a_minute_are_refused_with_the_wait() throws Exception {
        String token = new AccessFile(folder)
                .make("mika", Role.ASSISTANT, Optional.empty(), Instant.now(), Duration.ofDays(1))
                .token();
        start(new HttpLimits(100, 100, 10, 10, 3, 30, 10_000, 25_000, 5_000));
        String request =
                command("mika").replace("Host: localhost", "Host: localhost\r\nAuthorization: Bearer " + token);
        for (int count = 0; count < 3; count++) assertThat(ask(request)).contains(" 200 ");
        assertThat(ask(request)).contains(" 429 ").containsPattern("retry-after: [0-9]+");
    }

    @Test
    void a_token_that_is_taken_back_ends_the_line_it_opened() throws Exception {
        AccessFile file = new AccessFile(folder);
        AccessFile.Made made = file.make("bar", Role.TERMINAL, Optional.empty(), Instant.now(), Duration.ofDays(1));
        start(HttpLimits.LOOPBACK);
        Socket line = open();
        write(line, LIVE.replace("\r\n\r\n", "\r\nAuthorization: Bearer " + made.token() + "\r\n\r\n"));
        assertThat(head(line)).contains(" 200 ");
        file.revoke(made.kept().tokenId(), Instant.now());
        assertThat(until(line, "\r\n0\r\n\r\n")).contains("retry: 2000").endsWith("\r\n0\r\n\r\n");
    }

    @Test
    void the_pace_lets_so_many_through_in_a_minute_and_fills_up_evenly() {
        RateLimiter pace = new RateLimiter(60);
        long second = 1_000_000_000L;
        for (int count = 0; count < 60; count++) assertThat(pace.take("a", 0)).isZero();
        assertThat(pace.take("a", 0)).isEqualTo(2);
        assertThat(pace.take("b", 0)).isZero();
        assertThat(pace.take("a", second)).isZero();
        assertThat(pace.take("a", second)).isPositive();
    }
}
