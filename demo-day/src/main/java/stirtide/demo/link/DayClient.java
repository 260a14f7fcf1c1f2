package stirtide.demo.link;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stirtide.events.command.CommandRequest;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.CloudEvent;
import stirtide.events.json.ContractJson;
import stirtide.events.json.UnreadableEvent;
import stirtide.events.view.DayView;

/** One day of one salon at a running service. Blocks; every call ends within {@value #PATIENCE_SECONDS} seconds. */
public final class DayClient {
    private static final int PATIENCE_SECONDS = 30;

    private final HttpClient http =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final URI service;
    private final String day;

    /**
     * @param service address of the service, with a slash at the end
     * @param day salon id and date, such as {@code "quillon-row/2027-06-11"}
     */
    public DayClient(URI service, String day) {
        this.service = service;
        this.day = day;
    }

    /** Opens the day. */
    public CommandAnswer open(CommandRequest request) throws IOException {
        return answer(post("days", ContractJson.write(request)));
    }

    /** Sends a command to the day. */
    public CommandAnswer send(CommandRequest request) throws IOException {
        return answer(post("days/" + day + "/commands", ContractJson.write(request)));
    }

    /** Names of all days the service knows, oldest first. */
    public List<String> days() throws IOException {
        List<String> names = new ArrayList<>();
        tree(must(get("days", "application/json")))
                .path("days")
                .forEach(day -> names.add(day.path("day").asText()));
        return List.copyOf(names);
    }

    /** The service. */
    public DayClient service() {
        return this;
    }

    /** The day as a terminal shows it. */
    public DayView view() throws IOException {
        return ContractJson.read(must(get("days/" + day, "application/json")), DayView.class);
    }

    /** Lets the service's driven clock step to {@code to}; answers when all that is due has happened. */
    public void advanceClock(Instant to) throws IOException {
        must(post("clock/advance", ContractJson.write(Map.of("to", to))));
    }

    /** Lets the service's driven clock run at a rate, in thousandths of real time; 0 stands. */
    public void setClockRate(int ratePermille) throws IOException {
        must(exchange(request("clock")
                .header("content-type", "application/json")
                .PUT(BodyPublishers.ofString(ContractJson.write(Map.of("ratePermille", ratePermille))))
                .build()));
    }

    /** Everything that has happened on the day, in order. */
    public List<StoredEvent> events() throws IOException {
        List<StoredEvent> events = new ArrayList<>();
        long newest = 1;
        while (events.size() < newest) {
            JsonNode page =
                    tree(must(get("days/" + day + "/events?limit=100&after=" + events.size(), "application/json")));
            newest = page.path("newest").asLong();
            if (page.path("events").isEmpty()) break;
            for (JsonNode event : page.path("events")) events.add(stored(event));
        }
        return events;
    }

    private StoredEvent stored(JsonNode event) throws IOException {
        try {
            return CloudEvent.read(event.toString()).toStored();
        } catch (UnreadableEvent unreadable) {
            throw new IOException("an event of " + day + " cannot be read: " + unreadable.getMessage());
        }
    }

    private static JsonNode tree(String body) throws IOException {
        try {
            return ContractJson.mapper().readTree(body);
        } catch (JsonProcessingException notJson) {
            throw new IOException("the service does not answer with JSON: " + notJson.getOriginalMessage());
        }
    }

    private HttpResponse<String> post(String path, String body) throws IOException {
        return exchange(request(path)
                .header("content-type", "application/json")
                .POST(BodyPublishers.ofString(body))
                .build());
    }

    private HttpResponse<String> get(String path, String accepts) throws IOException {
        return exchange(request(path).header("accept", accepts).GET().build());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(service.resolve(path)).timeout(Duration.ofSeconds(PATIENCE_SECONDS));
    }

    private HttpResponse<String> exchange(HttpRequest request) throws IOException {
        try {
            return http.send(request, BodyHandlers.ofString());
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while waiting for " + request.uri());
        }
    }

    private static String must(HttpResponse<String> response) throws IOException {
        if (response.statusCode() / 100 == 2) return response.body();
        throw new IOException(response.uri() + " answers " + response.statusCode() + ": " + sentence(response));
    }

    private static CommandAnswer answer(HttpResponse<String> response) throws IOException {
        if (response.statusCode() / 100 == 2)
            return new CommandAnswer.Accepted();
        if (response.statusCode() / 100 == 4) return new CommandAnswer.Rejected(sentence(response));
        throw new IOException(response.uri() + " answers " + response.statusCode() + ": " + sentence(response));
    }

    private static String sentence(HttpResponse<String> response) {
        try {
            JsonNode problem = ContractJson.mapper().readTree(response.body());
            return problem.path("detail").asText(problem.path("title").asText(response.body()));
        } catch (JsonProcessingException notJson) {
            return response.body();
        }
    }
}
