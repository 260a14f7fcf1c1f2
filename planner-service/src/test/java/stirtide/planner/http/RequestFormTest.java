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
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.Role;

/** How requests are written: their headers, the kind and the text of their bodies, over plain sockets. */
class RequestFormTest {
    private static final String DAY = "/days/" + IdleDayOperations.DAY;
    private static final String JSON = "Content-Type: application/json";

    @TempDir
    Path folder;

    private final Vertx vertx = Vertx.vertx();
    private String token = "";
    private int port;

    @BeforeEach
    void start() throws Exception {
        token = new AccessFile(folder)
                .make("mika", Role.ASSISTANT, Optional.of("quay-house"), Instant.now(), Duration.ofDays(1))
                .token();
        port = TestServers.start(
                        vertx,
                        TestSecurity.with(folder, HttpLimits.LOOPBACK),
                        new IdleDayOperations(),
                        new PrometheusMeterRegistry(PrometheusConfig.DEFAULT))
                .port();
    }

    @AfterEach
    void stop() throws Exception {
        vertx.close().await(20, TimeUnit.SECONDS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\\ud800-command", "\\udc00-command", "command-\\uDBFF", "\\udc00\\ud800-command"})
    void a_command_id_with_half_a_character_is_not_understood(String id) throws Exception {
        assertThat(post(JSON, command(id))).contains(" 400 ", "NOT_UNDERSTOOD");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u00ff-command", "\u00c0\u0080-command", "command-\u00e9", "\u00ed\u00a0\u0080-command"})
    void a_command_id_that_is_not_utf_8_is_not_understood(String bytes) throws Exception {
        assertThat(post(JSON, command(bytes))).contains(" 400 ", "NOT_UNDERSTOOD", "UTF-8");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\\ud83d\\ude00-command", "\u00f0\u009f\u0098\u0080-command", "\\\\ud800-command"})
    void a_command_id_of_whole_characters_is_taken(String id) throws Exception {
        assertThat(post(JSON, command(id))).contains(" 200 ");
    }

    @ParameterizedTest
    @CsvSource({"coffee, 417", "'100-continue, coffee', 417", "100-Continue, 200"})
    void an_unknown_expectation_is_told_so(String expect, int status) throws Exception {
        assertThat(post(JSON + "\r\nExpect: " + expect, command("command-1"))).contains("HTTP/1.1 " + status + " ");
    }

    @Test
    void two_host_lines_are_not_understood() throws Exception {
        String get = "GET " + DAY + " HTTP/1.1\r\nHost: localhost\r\nHost: localhost\r\n";
        assertThat(ask(get + authorization() + "\r\n\r\n")).contains(" 400 ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "application/jsonx",
                "application/json-patch+json",
                "text/json",
                "application/json; charset=iso-8859-1",
                "application/json; charset=utf-16",
                "application/json\r\nContent-Type: text/plain",
                "application/json\r\nContent-Encoding: gzip",
                "application/json\r\nContent-Encoding: br",
            })
    void a_body_of_another_kind_than_json_in_utf_8_is_refused(String kind) throws Exception {
        assertThat(post("Content-Type: " + kind, command("command-1"))).contains(" 415 ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "application/json",
                "Application/JSON",
                "application/json;charset=UTF-8",
                "APPLICATION/JSON ; Charset=\"utf-8\"",
                "application/json\r\nContent-Encoding: identity",
            })
    void media_types_may_be_written_in_any_case(String kind) throws Exception {
        assertThat(post("Content-Type: " + kind, command("command-1"))).contains(" 200 ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/days", DAY, DAY + "/live", "/clock"})
    void head_is_answered_where_get_is_with_the_same_status_and_no_body(String path) throws Exception {
        String rest = path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + authorization() + "\r\n\r\n";
        String answer = ask("HEAD " + rest);
        assertThat(answer).startsWith("HTTP/1.1 200 ").endsWith("\r\n\r\n");
    }

    @Test
    void head_is_not_known_where_get_is_not() throws Exception {
        String head = "HEAD " + DAY + "/commands HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n";
        assertThat(ask(head + authorization() + "\r\n\r\n")).contains(" 405 ");
    }

    @ParameterizedTest
    @CsvSource({
        "/clock/advance, {}, 403",
        DAY + "/commands, '{\"command\":{\"type\":\"ChangeSetup\"}}', 403",
        DAY + "/commands, '{\"command\":{\"type\":\"StartService\"}}', 400",
        "/days/other-house/2027-03-09/commands, '{\"command\":{}}', 404",
    })
    void rights_are_looked_at_before_the_form_of_the_body(String path, String body, int status) throws Exception {
        assertThat(post(path, JSON, body)).contains("HTTP/1.1 " + status + " ");
    }

    private static String command(String id) {
        return "{\"commandId\":\"" + id
                + "\",\"actor\":\"mika\",\"command\":{\"type\":\"StartService\",\"service\":1}}";
    }

    private String authorization() {
        return "Authorization: Bearer " + token;
    }

    private String post(String headers, String body) throws Exception {
        return post(DAY + "/commands", headers, body);
    }

    private String post(String path, String headers, String body) throws Exception {
        return ask("POST " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + authorization() + "\r\n"
                + headers + "\r\nContent-Length: " + body.length() + "\r\n\r\n" + body);
    }

    /** All that is answered until the connection is closed, without the interim answer to an expectation. */
    private String ask(String bytes) throws Exception {
        try (Socket socket = new Socket(InetAddress.getByName("127.0.0.1"), port)) {
            socket.setSoTimeout(5_000);
            socket.getOutputStream().write(bytes.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("HTTP/1.1 100 Continue\r\n\r\n", "");
        }
    }
}
