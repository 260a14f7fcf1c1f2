package stirtide.demo.link;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
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
import java.util.function.Consumer;
import java.util.stream.Stream;
import stirtide.events.command.CommandRequest;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.CloudEvent;
import stirtide.events.json.ContractJson;
import stirtide.events.json.UnreadableEvent;
import stirtide.events.view.DayView;

/** One day of one salon at a running service. Blocks; every call ends within {@value #PATIENCE_SECONDS} seconds. */
public final class SalonLink {
    private static final int PATIENCE_SECONDS = 30;

    private final HttpClient http =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final URI service;
    private final String day;

    /**
     * @param service address of the service, with a slash at the end
     * @param day salon id and date, such as {@code "quillon-row/2027-06-11"}
     */
    public SalonLink(URI service, String day) {
        this.service = service;
        this.day = day;
    }

    /** Opens the day. */
    public Answer open(CommandRequest request) {
        return answer(post("days", ContractJson.write(request)));
    }

    /** Sends a command to the day. */
    public Answer send(CommandRequest request) {
        return answer(post("days/" + day + "/commands", ContractJson.write(request)));
    }

    /** Names of all days the service knows, oldest first. */
    public List<String> days() {
        List<String> names = new ArrayList<>();
        tree(must(get("days", "application/json")))
                .path("days")
                .forEach(day -> names.add(day.path("day").asText()));
        return List.copyOf(names);
    }

    /** The day as a terminal shows it. */
    public DayView view() {
        return ContractJson.read(must(get("days/" + day, "application/json")), DayView.class);
    }

    /** Lets the service's driven clock step to {@code to}; answers when all that is due has happened. */
    public void advance(Instant to) {
        must(post("clock/advance", ContractJson.write(Map.of("to", to))));
    }

    /** Lets the service's driven clock run at a rate, in thousandths of real time; 0 stands. */
    public void setRate(int ratePermille) {
        must(exchange(request("clock")
                .header("content-type", "application/json")
                .PUT(BodyPublishers.ofString(ContractJson.write(Map.of("ratePermille", ratePermille))))
                .build()));
    }

    /** Everything that has happened on the day, in order. */
    public List<StoredEvent> events() {
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

    private StoredEvent stored(JsonNode event) {
        try {
            return CloudEvent.read(event.toString()).toStored();
        } catch (UnreadableEvent unreadable) {
            throw new ServiceSilent("an event of " + day + " cannot be read: " + unreadable.getMessage());
        }
    }

    private static JsonNode tree(String body) {
        try {
            return ContractJson.mapper().readTree(body);
        } catch (JsonProcessingException notJson) {
            throw new ServiceSilent("the service does not answer with JSON: " + notJson.getOriginalMessage());
        }
    }

    /** Follows the day until the stream ends; {@code onView} gets every view that arrives, as JSON, on the calling thread. */
    public void follow(Consumer<String> onView) {
        HttpRequest request = HttpRequest.newBuilder(service.resolve("days/" + day + "/live"))
                .header("accept", "text/event-stream")
                .GET()
                .build();
        try (Stream<String> lines = http.send(request, BodyHandlers.ofLines()).body()) {
            lines.filter(line -> line.startsWith("data:"))
                    .forEach(line -> onView.accept(line.substring(5).strip()));
        } catch (IOException | UncheckedIOException ended) {
            // The service was closed; there is nothing more to follow.
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        }
    }

    private HttpResponse<String> post(String path, String body) {
        return exchange(request(path)
                .header("content-type", "application/json")
                .POST(BodyPublishers.ofString(body))
                .build());
    }

    private HttpResponse<String> get(String path, String accepts) {
        return exchange(request(path).header("accept", accepts).GET().build());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(service.resolve(path)).timeout(Duration.ofSeconds(PATIENCE_SECONDS));
    }

    private HttpResponse<String> exchange(HttpRequest request) {
        try {
            return http.send(request, BodyHandlers.ofString());
        } catch (IOException unreachable) {
            throw new ServiceSilent("no answer from " + request.uri() + ": " + unreachable.getMessage());
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
            throw new ServiceSilent("interrupted while waiting for " + request.uri());
        }
    }

    private static String must(HttpResponse<String> response) {
        if (response.statusCode() / 100 == 2) return response.body();
        throw new ServiceSilent(response.uri() + " answers " + response.statusCode() + ": " + sentence(response));
    }

    private static Answer answer(HttpResponse<String> response) {
        if (response.statusCode() / 100 == 2)
            return new Answer(true, tree(response.body()).path("lastRevision").asLong(), "");
        if (response.statusCode() / 100 == 4) return new Answer(false, 0, sentence(response));
        throw new ServiceSilent(response.uri() + " answers " + response.statusCode() + ": " + sentence(response));
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
