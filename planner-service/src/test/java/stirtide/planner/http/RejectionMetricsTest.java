package stirtide.planner.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Vertx;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.json.ContractJson;

/** Everything that is refused before a day sees it: a problem document, the right status, nothing of the inside. */
class RejectionMetricsTest {
    private static final String COMMANDS = "/days/" + IdleDayOperations.DAY + "/commands";
    private static final String GOOD =
            "{\"commandId\":\"command-1\",\"actor\":\"mika\",\"command\":{\"type\":\"StartService\",\"service\":1}}";

    private static Vertx vertx;
    private static HttpServers edge;
    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    @BeforeAll
    static void start() throws Exception {
        vertx = Vertx.vertx();
        edge = TestServers.start(
                vertx,
                TestSecurity.open(),
                new IdleDayOperations(),
                new PrometheusMeterRegistry(PrometheusConfig.DEFAULT));
    }

    @AfterAll
    static void stop() throws Exception {
        vertx.close().await(20, TimeUnit.SECONDS);
    }

    private HttpResponse<String> send(String method, String path, String body, String... headers) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + edge.port() + path))
                .method(method, body.isEmpty() ? BodyPublishers.noBody() : BodyPublishers.ofString(body));
        for (int at = 0; at < headers.length; at += 2) request.header(headers[at], headers[at + 1]);
        return client.send(request.build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String body) throws Exception {
        return send("POST", path, body, "content-type", "application/json");
    }

    private static JsonNode problem(HttpResponse<String> response, int status, String code) throws Exception {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
        assertThat(response.headers().firstValue("content-type")).contains("application/problem+json");
        assertThat(response.body()).doesNotContain("Exception", "io.vertx", "\tat ", "stirtide.planner");
        JsonNode problem = ContractJson.mapper().readTree(response.body());
        assertThat(problem.get("status").asInt()).isEqualTo(status);
        assertThat(problem.get("code").asText()).isEqualTo(code);
        assertThat(problem.get("detail").asText()).isNotBlank();
        return problem;
    }

    @Test
    void a_good_command_passes_also_with_a_charset() throws Exception {
        assertThat(post(COMMANDS, GOOD).statusCode()).isEqualTo(200);
        var charset = send("POST", COMMANDS, GOOD, "content-type", "application/json; charset=utf-8");
        assertThat(charset.statusCode()).as(charset.body()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{",
                "nonsense",
                "[]",
                "null",
                "{\"commandId\":\"command-1\",\"actor\":\"mika\"}",
                "{\"commandId\":\"short\",\"actor\":\"mika\",\"command\":{\"type\":\"CloseDay\"}}",
                "{\"commandId\":\"command-1\",\"actor\":\"mika\",\"command\":{\"type\":\"Dance\"}}",
                "{\"commandId\":\"command-1\",\"actor\":\"mika\",\"command\":{\"type\":\"StartService\"}}",
                "{\"commandId\":\"command-1\",\"actor\":\"mika\",\"command\":{\"type\":\"StartService\",\"service\":\"1\"}}",
                "{\"commandId\":\"command-1\",\"actor\":\"mika\",\"command\":{\"type\":\"StartService\",\"service\":1.5}}",
                "{\"commandId\":\"command-1\",\"actor\":\"mika\",\"command\":{\"type\":\"StartService\",\"service\":4000000000}}",
                "{\"commandId\":\"command-1\",\"actor\":\"mika\",\"command\":{\"type\":\"StartService\",\"service\":-1}}",
                "{\"commandId\":\"command-1\",\"actor\":\"mika\",\"command\":{\"type\":\"CloseDay\",\"now\":true}}",
                "{\"commandId\":\"command-1\",\"actor\":\"mika\",\"actor\":\"ada\",\"command\":{\"type\":\"CloseDay\"}}",
                "{\"commandId\":\"command-1\",\"actor\":\"mika\",\"command\":{\"type\":\"MoveService\",\"service\":1,"
                        + "\"start\":\"tomorrow\",\"reason\":\"late\"}}"
            })
    void a_body_that_is_no_command_is_not_understood(String body) throws Exception {
        problem(post(COMMANDS, body), 400, "NOT_UNDERSTOOD");
    }

    @Test
    void a_wrong_value_is_named_with_its_place() throws Exception {
        var refused = post(COMMANDS, GOOD.replace("\"service\":1", "\"service\":\"one\""));
        assertThat(problem(refused, 400, "NOT_UNDERSTOOD").get("detail").asText())
                .contains("#/command/service")
                .contains("integer");
    }

    @ParameterizedTest
    @CsvSource({
        "GET, /nowhere, 404, PATH_UNKNOWN",
        "GET, /days/quay-house/2027-03-10, 404, DAY_UNKNOWN",
        "GET, /days/quay-house/2027-13-40, 400, NOT_UNDERSTOOD",
        "GET, /days/quay-house/yesterday, 400, NOT_UNDERSTOOD",
        "DELETE, /days/quay-house/2027-03-09, 405, METHOD_UNKNOWN",
        "GET, /days/quay-house/2027-03-09/events?after=4, 409, REVISION_UNKNOWN",
        "GET, /days/quay-house/2027-03-09/events?after=-1, 400, NOT_UNDERSTOOD",
        "GET, /days/quay-house/2027-03-09/events?limit=501, 400, NOT_UNDERSTOOD",
        "GET, /days/quay-house/2027-03-09/events?after=99999999999999999999, 400, NOT_UNDERSTOOD",
    })
    void a_wrong_request_gets_its_status(String method, String path, int status, String code) throws Exception {
        problem(send(method, path, ""), status, code);
    }

    @Test
    void another_content_type_is_refused() throws Exception {
        problem(send("POST", COMMANDS, GOOD, "content-type", "text/plain"), 415, "NOT_JSON");
        problem(send("POST", COMMANDS, GOOD), 415, "NOT_JSON");
    }

    @Test
    void a_body_over_the_limit_is_refused() throws Exception {
        problem(post(COMMANDS, "x".repeat(256 * 1024 + 1)), 413, "BODY_TOO_LARGE");
        problem(post("/days", "x".repeat(2 * 1024 * 1024 + 1)), 413, "BODY_TOO_LARGE");
    }

    @Test
    void deep_nesting_is_refused() throws Exception {
        problem(post(COMMANDS, "[".repeat(100_000)), 400, "NOT_UNDERSTOOD");
        problem(post(COMMANDS, "{\"a\":".repeat(20_000) + "1" + "}".repeat(20_000)), 400, "NOT_UNDERSTOOD");
    }

    @Test
    void a_stale_revision_is_refused_with_the_newest() throws Exception {
        var stale = send("POST", COMMANDS, GOOD, "content-type", "application/json", "if-match", "\"2\"");
        assertThat(problem(stale, 412, "REVISION_STALE").get("currentRevision").asLong())
                .isEqualTo(3);
        var malformed = send("POST", COMMANDS, GOOD, "content-type", "application/json", "if-match", "2");
        problem(malformed, 400, "NOT_UNDERSTOOD");
    }

    @Test
    void the_unexpected_gets_an_error_id_and_nothing_else() throws Exception {
        var broken = post(COMMANDS, GOOD.replace("mika", "failure"));
        JsonNode problem = problem(broken, 500, "UNEXPECTED");
        assertThat(problem.get("errorId").asText()).hasSize(36);
        assertThat(broken.body()).doesNotContain("secret detail");
    }

    @Test
    void a_wall_clock_cannot_be_driven() throws Exception {
        problem(
                send("PUT", "/clock", "{\"ratePermille\":0}", "content-type", "application/json"),
                409,
                "CLOCK_NOT_DRIVEN");
        problem(post("/clock/advance", "{\"to\":\"2027-03-09T09:00:00Z\"}"), 409, "CLOCK_NOT_DRIVEN");
    }

    @ParameterizedTest
    @ValueSource(strings = {"%zz", "%", "a%2", "%25zz"})
    void an_address_with_a_per_cent_sign_that_escapes_nothing_is_not_understood(String part) throws Exception {
        assertThat(raw("GET /days/" + part + "/2027-03-09 HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 400 ")
                .contains("NOT_UNDERSTOOD");
        assertThat(raw(
                        "GET /days/quay-house/2027-03-09/events HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nLast-Event-ID: "
                                + part + "\r\n\r\n"))
                .startsWith("HTTP/1.1 400 ");
        assertThat(raw("GET /days/quay-house/2027-03-09/walk-in?menuId=" + part
                        + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 400 ");
    }

    private static String raw(String request) throws Exception {
        try (var socket = new java.net.Socket("127.0.0.1", edge.port())) {
            socket.getOutputStream().write(request.getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"service\":1,\"start\":\"2027-03-09T99:99:99Z\",\"reason\":\"late\" | is not an instant; write it like 2027-03-09T10:00:00Z, at command.start",
                "\"service\":1,\"start\":\"2027-02-29T10:00:00Z\",\"reason\":\"late\" | is not an instant"
            })
    void a_value_that_fits_the_schema_and_means_nothing_is_named_without_a_word_of_the_inside(
            String fields, String said) throws Exception {
        String body = "{\"commandId\":\"command-1\",\"actor\":\"mika\",\"command\":{\"type\":\"MoveService\"," + fields
                + "}}";
        String detail = problem(post(COMMANDS, body), 400, "NOT_UNDERSTOOD")
                .get("detail")
                .asText();
        assertThat(detail).contains(said).doesNotContain("java.", "deserialize", "`");
    }

    @Test
    void headers_over_the_limit_are_refused() throws Exception {
        problem(send("GET", "/days", "", "x-long", "y".repeat(9000)), 431, "HEADERS_TOO_LARGE");
        problem(send("GET", "/days/" + "z".repeat(5000), ""), 414, "LINE_TOO_LONG");
    }

    @ParameterizedTest
    @CsvSource({
        "moves, 409",
        "walk-in?menuId=foils&length=medium&density=medium&chair=1, 409",
        "walk-in?menuId=foils&length=medium&density=medium, 400",
        "walk-in?menuId=foils&length=medium&density=medium&chair=none, 400",
        "extra-assistant?from=2027-03-09T10:00:00Z&to=2027-03-09T12:00:00Z, 409",
        "extra-assistant?from=ten&to=2027-03-09T12:00:00Z, 400"
    })
    void what_if_questions_are_refused_with_the_reason(String question, int status) throws Exception {
        HttpResponse<String> answer = send("GET", "/days/" + IdleDayOperations.DAY + "/" + question, "");
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.headers().firstValue("content-type")).contains("application/problem+json");
        assertThat(send("GET", "/days/quay-house/2027-03-10/moves", "").statusCode())
                .isEqualTo(404);
    }
}
