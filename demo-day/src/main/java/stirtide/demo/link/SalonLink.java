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
import java.util.Map;
import stirtide.events.command.CommandRequest;
import stirtide.events.json.ContractJson;
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

    /** The day as a terminal shows it. */
    public DayView view() {
        return ContractJson.read(must(get("days/" + day, "application/json")), DayView.class);
    }

    /** Lets the service's driven clock step to {@code to}; answers when all that is due has happened. */
    public void advance(Instant to) {
        must(post("clock/advance", ContractJson.write(Map.of("to", to))));
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
        if (response.statusCode() / 100 == 2) return new Answer(true, "");
        if (response.statusCode() / 100 == 4) return new Answer(false, sentence(response));
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
