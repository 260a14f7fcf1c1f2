package stirtide.planner.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.planner.access.Rights;
import stirtide.planner.access.Role;
import stirtide.planner.hostile.ContractBook.Operation;
import stirtide.planner.hostile.HostileSalons.Sender;
import stirtide.planner.service.PlannerService;
import stirtide.planner.service.Settings;

/** Every operation and every command by every role, and by nobody, against a whole service: as docs/access.md says. */
class AccessTableIT {
    private static final LocalDate DATE = LocalDate.parse("2027-03-09");
    private static final int MOST_TRIES = 60;

    @TempDir
    Path data;

    private final ContractBook contract = new ContractBook();
    private final SchemaValues values = new SchemaValues(contract, new Random(3));
    private final List<String> wrong = new ArrayList<>();
    private AccessTable table;
    private HostileSalons salons;
    private PlannerService service;
    private Wire wire;

    @BeforeEach
    void start() throws IOException {
        table = new AccessTable(Path.of("..", "docs", "access.md"));
        salons = new HostileSalons(data);
        service = PlannerService.start(
                Settings.inProcess(data).withDrivenClock(Instant.parse("2027-03-09T07:00:00Z"), 0));
        wire = new Wire(service.port());
        salons.open(wire, DATE);
    }

    @AfterEach
    void stop() throws IOException {
        wire.close();
        service.close();
    }

    private Sender sender(Role role, Optional<String> salon) {
        return salons.senders().stream()
                .filter(one ->
                        one.role().equals(Optional.of(role)) && one.salon().equals(salon))
                .findFirst()
                .orElseThrow();
    }

    /** Asks until the answer is another than "not understood": values by chance may fit the schema and mean nothing. */
    private Answer ask(Operation operation, Optional<JsonNode> command, Sender sender) throws IOException {
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            byte[] body = body(operation, command).getBytes(StandardCharsets.UTF_8);
            byte[] bytes = RequestText.of(operation.method(), target(operation), sender.token(), body);
            Answer answer = settled(bytes);
            if (answer.status() != 400) return answer;
        }
        throw new IOException(operation.id() + " was never understood");
    }

    /** A driven clock that is still on its way has the same sent again, until it has arrived. */
    private Answer settled(byte[] bytes) throws IOException {
        Answer answer = wire.ask(bytes, false).orElseThrow();
        for (int tries = 1; tries < MOST_TRIES && answer.body().contains("\"NOT_NOW\""); tries++)
            answer = wire.ask(bytes, false).orElseThrow();
        return answer;
    }

    private String body(Operation operation, Optional<JsonNode> command) {
        if (operation.body().isEmpty()) return "";
        if (operation.id().equals("openDay"))
            return new String(HostileSalons.opening("quay-house", DATE.plusDays(1)), StandardCharsets.UTF_8);
        ObjectNode body = (ObjectNode) values.value(operation.body().get());
        if (body.has("commandId")) body.put("actor", "mika").put("commandId", "command-" + Math.abs(body.hashCode()));
        command.ifPresent(schema -> body.set("command", values.value(schema)));
        return body.toString();
    }

    private String target(Operation operation) {
        String path = operation.path().replace("{salonId}", "quay-house").replace("{date}", DATE.toString());
        List<String> query = new ArrayList<>();
        for (JsonNode parameter : operation.parameters()) {
            String name = parameter.get("name").asText();
            String value = values.parameter(name, parameter.get("schema")).replace(" ", "%20");
            path = path.replace("{" + name + "}", value);
            if (parameter.get("in").asText().equals("query")
                    && parameter.path("required").asBoolean()) query.add(name + "=" + value);
        }
        return query.isEmpty() ? path : path + "?" + String.join("&", query);
    }

    private void expect(String what, boolean allowed, Answer answer) {
        boolean refused = answer.status() == 403 && answer.body().contains("\"NOT_ALLOWED\"");
        boolean right = allowed ? !refused && answer.status() != 401 && answer.status() < 500 : refused;
        if (!right) wrong.add(what + ", allowed " + allowed + ": " + answer.status() + " " + answer.body());
    }

    @Test
    void the_table_for_people_knows_every_operation_and_command_of_the_contract() {
        assertThat(table.operations.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        contract.operations().stream().map(Operation::id).toList());
        Set<String> commands = new TreeSet<>(Set.of("OpenDay"));
        kinds().forEach(kind -> commands.add(type(kind)));
        assertThat(table.commands.keySet()).isEqualTo(commands);
        assertThat(Rights.commands()).isEqualTo(commands);
    }

    private List<JsonNode> kinds() {
        JsonNode request =
                contract.resolved(contract.operation("sendCommand").body().orElseThrow());
        List<JsonNode> kinds = new ArrayList<>();
        contract.resolved(request.at("/properties/command")).get("allOf").forEach(kind -> kinds.add(kind.get("then")));
        return kinds;
    }

    private String type(JsonNode kind) {
        return contract.resolved(kind).at("/properties/type/const").asText();
    }

    @Test
    void every_operation_is_answered_to_the_roles_of_the_table_and_to_nobody_else() throws IOException {
        for (Operation operation : contract.operations())
            for (Role role : Role.values()) {
                // What a program may send shows in the test of the commands.
                Optional<JsonNode> command =
                        operation.id().equals("sendCommand") ? Optional.of(kinds().get(0)) : Optional.empty();
                Answer answer = ask(operation, command, sender(role, Optional.empty()));
                boolean wrongCode =
                        operation.id().equals("signOn") && answer.body().contains("SIGN_ON_WRONG");
                if (!(wrongCode && role == Role.TERMINAL))
                    expect(
                            operation.id() + " by " + role,
                            table.operations.get(operation.id()).contains(role),
                            answer);
            }
        assertThat(wrong).isEmpty();
    }

    @Test
    void every_command_is_taken_from_the_roles_of_the_table_and_from_nobody_else() throws IOException {
        for (JsonNode kind : kinds())
            for (Role role : Role.values()) {
                Answer answer =
                        ask(contract.operation("sendCommand"), Optional.of(kind), sender(role, Optional.empty()));
                expect(
                        type(kind) + " by " + role,
                        table.commands.get(type(kind)).contains(role),
                        answer);
            }
        assertThat(table.commands.get("OpenDay")).isEqualTo(table.operations.get("openDay"));
        assertThat(wrong).isEmpty();
    }

    @Test
    void without_a_good_token_nothing_is_answered() throws IOException {
        for (Operation operation : contract.operations())
            for (Sender nobody : salons.senders()) {
                if (nobody.role().isPresent()) continue;
                Answer answer = ask(operation, Optional.empty(), nobody);
                if (answer.status() != 401) wrong.add(operation.id() + ": " + answer.status());
            }
        assertThat(wrong).isEmpty();
    }

    @Test
    void a_token_of_another_salon_finds_no_day_here_whatever_the_role() throws IOException {
        for (Operation operation : contract.operations())
            for (Role role : table.operations.get(operation.id())) {
                if (!operation.path().contains("{salonId}")) continue;
                Optional<JsonNode> command =
                        operation.id().equals("sendCommand") ? Optional.of(kinds().get(0)) : Optional.empty();
                Answer answer = ask(operation, command, sender(role, Optional.of("tern-house")));
                if (answer.status() != 404 || !answer.body().contains("DAY_UNKNOWN"))
                    wrong.add(operation.id() + " by " + role + ": " + answer.status() + " " + answer.body());
            }
        assertThat(wrong).isEmpty();
    }
}
