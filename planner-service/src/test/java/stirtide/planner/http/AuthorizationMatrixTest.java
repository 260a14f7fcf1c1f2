package stirtide.planner.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Vertx;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.DayCommand;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.Rights;
import stirtide.planner.access.Role;

/** Every operation and every command against every role, and against everybody who is not let in at all. */
class AuthorizationMatrixTest {
    private static final String DAY = "/days/" + IdleDayOperations.DAY;
    private static final String OTHER_DAY = "/days/other-house/2027-03-09";

    /** Operation, method, path. */
    private static final List<String[]> REQUESTS = List.of(
            new String[] {"listDays", "GET", "/days"},
            new String[] {"openDay", "POST", "/days"},
            new String[] {"showDay", "GET", DAY},
            new String[] {"showSetup", "GET", DAY + "/setup"},
            new String[] {"sendCommand", "POST", DAY + "/commands"},
            new String[] {"followDay", "GET", DAY + "/live"},
            new String[] {"readEvents", "GET", DAY + "/events"},
            new String[] {"nextPour", "GET", DAY + "/bowls/1a/next-pour"},
            new String[] {"showGrams", "GET", DAY + "/grams"},
            new String[] {"showSwatches", "GET", DAY + "/swatches"},
            new String[] {"showVisits", "GET", DAY + "/services/1/visits"},
            new String[] {"tryMoves", "GET", DAY + "/moves"},
            new String[] {"tryMove", "GET", DAY + "/move?service=1&start=2027-03-09T10:00:00Z"},
            new String[] {"tryWalkIn", "GET", DAY + "/walk-in?menuId=m&length=l&density=d&chair=1"},
            new String[] {
                "tryExtraAssistant", "GET", DAY + "/extra-assistant?from=2027-03-09T10:00:00Z&to=2027-03-09T11:00:00Z"
            },
            new String[] {"showClock", "GET", "/clock"},
            new String[] {"setClockRate", "PUT", "/clock"},
            new String[] {"advanceClock", "POST", "/clock/advance"},
            new String[] {"exportClient", "POST", "/clients/export"},
            new String[] {"eraseClient", "POST", "/clients/erasure"},
            new String[] {"showSignOn", "GET", "/sign-on"},
            new String[] {"signOn", "POST", "/sign-on"},
            new String[] {"signOff", "DELETE", "/sign-on"});

    @TempDir
    static Path folder;

    private static final Map<Role, String> TOKENS = new EnumMap<>(Role.class);
    private static final HttpClient CLIENT =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private static Vertx vertx;
    private static HttpServers edge;
    private static String expired = "";
    private static String revoked = "";
    private static String elsewhere = "";

    @BeforeAll
    static void start() throws Exception {
        AccessFile file = new AccessFile(folder);
        Instant now = Instant.now();
        for (Role role : Role.values())
            TOKENS.put(
                    role,
                    file.make(role.word(), role, Optional.empty(), now, Duration.ofDays(1))
                            .token());
        expired = file.make("late", Role.MANAGER, Optional.empty(), now.minusSeconds(100), Duration.ofSeconds(99))
                .token();
        AccessFile.Made taken = file.make("gone", Role.MANAGER, Optional.empty(), now, Duration.ofDays(1));
        file.revoke(taken.kept().tokenId(), now);
        revoked = taken.token();
        elsewhere = file.make("boss", Role.MANAGER, Optional.of("other-house"), now, Duration.ofDays(1))
                .token();
        vertx = Vertx.vertx();
        edge = TestServers.start(
                vertx,
                TestSecurity.with(folder, HttpLimits.LOOPBACK),
                new IdleDayOperations(),
                new PrometheusMeterRegistry(PrometheusConfig.DEFAULT));
    }

    @AfterAll
    static void stop() throws Exception {
        vertx.close().await(20, TimeUnit.SECONDS);
    }

    private static HttpResponse<String> send(String method, String path, String token, String body) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + edge.port() + path))
                .method(method, method.equals("GET") ? BodyPublishers.noBody() : BodyPublishers.ofString(body))
                .header("content-type", "application/json");
        if (!token.isEmpty()) request.header("authorization", "Bearer " + token);
        if (!path.endsWith("/live")) return CLIENT.send(request.build(), BodyHandlers.ofString());
        // An open line has no end to wait for; its head says it all.
        var open = CLIENT.send(request.build(), BodyHandlers.ofInputStream());
        if (open.statusCode() != 200) return CLIENT.send(request.build(), BodyHandlers.ofString());
        open.body().close();
        return new HeadOnly(open);
    }

    private static String body(String operation, String actor) {
        return switch (operation) {
            case "sendCommand" -> command("StartService", actor, "\"service\":1");
            case "setClockRate" -> "{\"ratePermille\":1000}";
            case "advanceClock" -> "{\"to\":\"2027-03-09T09:00:00Z\"}";
            case "exportClient", "eraseClient" -> "{\"clientRef\":\"R.M.\"}";
            case "signOn" -> "{\"personId\":\"ada\",\"code\":\"123456\"}";
            default -> "{}";
        };
    }

    private static String command(String type, String actor, String more) {
        String fields = more.isEmpty() ? "" : "," + more;
        return "{\"commandId\":\"command-1\",\"actor\":\"" + actor + "\",\"command\":{\"type\":\"" + type + "\""
                + fields + "}}";
    }

    @Test
    void the_table_knows_every_operation_of_the_contract_and_every_command() {
        assertThat(REQUESTS).extracting(request -> request[0]).containsExactlyInAnyOrderElementsOf(Rights.operations());
        DayOperations days = new IdleDayOperations();
        assertThat(Rights.operations())
                .containsExactlyInAnyOrderElementsOf(ApiRouter.handlers(
                                vertx,
                                new AuthenticationHandler(vertx, TestSecurity.open(), new IdleDayOperations()),
                                days,
                                new StreamRegistry(vertx, days, HttpLimits.LOOPBACK))
                        .keySet());
        assertThat(Rights.commands())
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(DayCommand.class.getPermittedSubclasses())
                        .map(Class::getSimpleName)
                        .toList());
    }

    @Test
    void every_operation_is_allowed_to_the_roles_of_the_table_and_refused_to_all_others() throws Exception {
        for (String[] request : REQUESTS)
            for (Role role : Role.values()) {
                // A role that may not send this command shows in the test of the commands.
                if (request[0].equals("sendCommand") && role == Role.SERVICE) continue;
                var answer = send(request[1], request[2], TOKENS.get(role), body(request[0], role.word()));
                String what = request[0] + " by " + role + ": " + answer.body();
                if (Rights.operation(role, request[0])) {
                    assertThat(answer.statusCode()).as(what).isNotEqualTo(403).isLessThan(500);
                    if (!request[0].equals("signOn"))
                        assertThat(answer.statusCode()).as(what).isNotEqualTo(401);
                } else if (answer.statusCode() != 400) {
                    // A body that is not understood is told so before anything else; nothing was done.
                    assertThat(answer.statusCode()).as(what).isEqualTo(403);
                    assertThat(answer.body()).contains("\"NOT_ALLOWED\"");
                }
            }
    }

    @Test
    void every_command_is_allowed_to_the_roles_of_the_table_and_refused_to_all_others() {
        AuthenticationHandler authentication =
                new AuthenticationHandler(vertx, TestSecurity.open(), new IdleDayOperations());
        assertThat(authentication.authenticator().open()).isTrue();
        List<String> wrong = new ArrayList<>();
        for (String type : Rights.commands())
            for (Role role : Role.values()) {
                boolean bar = role == Role.ASSISTANT || role == Role.COLORIST || role == Role.MANAGER;
                boolean leads = role == Role.COLORIST || role == Role.MANAGER;
                boolean expected = switch (type) {
                    case "OpenDay" -> role == Role.MANAGER || role == Role.SERVICE;
                    case "BookService" -> bar || role == Role.SERVICE;
                    case "MoveService", "CancelService" -> leads || role == Role.SERVICE;
                    case "ChangeSetup", "SetAllowanceFraction" -> role == Role.MANAGER;
                    case "ChangeShift", "PinAllowance", "ResetAllowance", "RepeatFormula", "CloseDay" -> leads;
                    default -> bar;
                };
                if (Rights.command(role, type) != expected) wrong.add(role + " " + type);
            }
        assertThat(wrong).isEmpty();
    }

    @Test
    void a_command_over_the_wire_follows_the_table_and_the_name_of_the_token() throws Exception {
        Map<String, String> commands = Map.of(
                "StartService", "\"service\":1",
                "CancelService", "\"service\":1,\"reason\":\"ill\"",
                "CloseDay", "",
                "MoveService", "\"service\":1,\"start\":\"2027-03-09T09:00:00Z\",\"chair\":1");
        for (var command : commands.entrySet())
            for (Role role : Role.values()) {
                var answer = send(
                        "POST",
                        DAY + "/commands",
                        TOKENS.get(role),
                        command(command.getKey(), role.word(), command.getValue()));
                if (answer.statusCode() == 400) continue;
                assertThat(answer.statusCode())
                        .as(command.getKey() + " by " + role + ": " + answer.body())
                        .isEqualTo(Rights.command(role, command.getKey()) ? 200 : 403);
            }
        var asSomebodyElse = send("POST", DAY + "/commands", TOKENS.get(Role.MANAGER), command("CloseDay", "mika", ""));
        assertThat(asSomebodyElse.statusCode()).isEqualTo(403);
        assertThat(asSomebodyElse.body()).contains("NOT_YOU", "manager");
    }

    @Test
    void nobody_is_let_in_without_a_token_that_is_known_not_ended_and_not_taken_back() throws Exception {
        Map<String, String> nobodies = Map.of(
                "",
                "TOKEN_NEEDED",
                "stir_000000000000_" + "A".repeat(43),
                "TOKEN_UNKNOWN",
                "stis_" + "A".repeat(43),
                "SIGN_ON_ENDED",
                expired,
                "TOKEN_EXPIRED",
                revoked,
                "TOKEN_REVOKED");
        for (String[] request : REQUESTS)
            for (var nobody : nobodies.entrySet()) {
                var answer = send(request[1], request[2], nobody.getKey(), body(request[0], "manager"));
                assertThat(answer.statusCode()).as(request[0] + nobody).isEqualTo(401);
                assertThat(answer.body()).contains("\"" + nobody.getValue() + "\"");
                assertThat(answer.headers().firstValue("www-authenticate")).contains("Bearer");
            }
        assertThat(send("GET", "/nowhere", "", "").statusCode()).isEqualTo(401);
    }

    @Test
    void a_token_of_one_salon_does_not_even_learn_that_another_salon_has_days() throws Exception {
        assertThat(send("GET", "/days", elsewhere, "").body()).isEqualTo("{\"days\":[]}");
        for (String[] request : REQUESTS) {
            if (!request[2].startsWith("/days/") || !Rights.operation(Role.MANAGER, request[0])) continue;
            var there = send(request[1], request[2], elsewhere, body(request[0], "boss"));
            var nowhere = send(
                    request[1],
                    request[2].replace(DAY, OTHER_DAY),
                    TOKENS.get(Role.MANAGER),
                    body(request[0], "manager"));
            assertThat(there.statusCode()).as(request[0]).isEqualTo(404);
            if (nowhere.statusCode() == 404) assertThat(there.body()).isEqualTo(nowhere.body());
        }
    }
}
