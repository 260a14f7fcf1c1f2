package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import stirtide.events.command.DayCommand;

/** Every answer of a played day fits the contract, checked by another validator than the service's own. */
class ContractIT {
    @TempDir
    Path folder;

    private final JsonNode contract = read();
    private final Set<String> seen = new TreeSet<>();
    private final List<String> deviations = new ArrayList<>();

    private static JsonNode read() {
        try (InputStream yaml = Objects.requireNonNull(ContractIT.class.getResourceAsStream("/openapi.yaml"))) {
            Map<String, Object> document = new Yaml(new SafeConstructor(new LoaderOptions())).load(yaml);
            return new ObjectMapper().valueToTree(document);
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    private void check(HttpResponse<String> response) {
        String schema = schemaOf(response);
        seen.add(schema);
        // The schema stands in the contract, so that its references find their targets.
        JsonNode document = contract.deepCopy();
        ((ObjectNode) document).put("$ref", "#/components/schemas/" + schema);
        try {
            Set<ValidationMessage> messages = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(document)
                    .validate(new ObjectMapper().readTree(response.body()));
            messages.forEach(message -> deviations.add(response.request().uri().getPath() + ": " + message));
        } catch (IOException noJson) {
            deviations.add(response.request().uri() + ": " + noJson);
        }
    }

    private static String schemaOf(HttpResponse<String> response) {
        if (response.statusCode() >= 400) return "Problem";
        String path = response.request().uri().getPath();
        if (path.endsWith("/commands")) return "CommandResult";
        if (path.endsWith("/next-pour")) return "PourAdvice";
        if (path.endsWith("/setup")) return "SetupView";
        if (path.endsWith("/move")) return "MoveAdvice";
        if (path.endsWith("/grams")) return "GramsView";
        if (path.endsWith("/swatches")) return "SwatchView";
        if (path.endsWith("/visits")) return "VisitsView";
        if (path.endsWith("/events")) return "EventPage";
        if (path.startsWith("/clock")) return "Clock";
        if (!path.equals("/days")) return "DayView";
        return response.request().method().equals("POST") ? "CommandResult" : "DayList";
    }

    @Test
    void every_answer_of_a_played_day_fits_the_contract() throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port(), this::check);
            PlayedDayIT.play(client);
            client.get("/days");
            client.get("/clock");
            client.get("/days/" + SmallSalon.DAY + "/setup");
            client.get("/days/nowhere/2027-03-09");
            for (String part : List.of("/grams", "/swatches", "/services/1/visits?first=2027-03-01"))
                client.get("/days/" + SmallSalon.DAY + part);
            client.events(SmallSalon.DAY);
            client.send(client.command(
                    SmallSalon.DAY, SmallSalon.request("after-closing", new DayCommand.StartService(1))));
        }
        assertThat(deviations).isEmpty();
        assertThat(seen)
                .containsExactly(
                        "Clock",
                        "CommandResult",
                        "DayList",
                        "DayView",
                        "EventPage",
                        "GramsView",
                        "PourAdvice",
                        "Problem",
                        "SetupView",
                        "SwatchView",
                        "VisitsView");
    }
}
