package stirtide.planner.service;

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
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import stirtide.events.command.CommandRequest;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

/** Talks to a service as a terminal would. */
final class SalonClient {
    private final HttpClient http;
    private final String base;
    private final Consumer<HttpResponse<String>> witness;

    SalonClient(int port) {
        this(port, response -> {});
    }

    /** With a witness that sees every answer. */
    SalonClient(int port, Consumer<HttpResponse<String>> witness) {
        this.http = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .connectTimeout(Duration.ofSeconds(10))
                .build();
        this.base = "http://127.0.0.1:" + port;
        this.witness = witness;
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(base + path)).timeout(Duration.ofSeconds(60));
    }

    HttpRequest post(String path, Object body, String... headers) {
        HttpRequest.Builder request = request(path)
                .header("content-type", "application/json")
                .POST(BodyPublishers.ofString(ContractJson.write(body)));
        for (int at = 0; at < headers.length; at += 2) request.header(headers[at], headers[at + 1]);
        return request.build();
    }

    HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<String> response = http.send(request, BodyHandlers.ofString());
        witness.accept(response);
        return response;
    }

    CompletableFuture<HttpResponse<String>> sendLater(HttpRequest request) {
        return http.sendAsync(request, BodyHandlers.ofString());
    }

    <T> CompletableFuture<HttpResponse<T>> follow(HttpRequest request, HttpResponse.BodyHandler<T> handler) {
        return http.sendAsync(request, handler);
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(request(path).build());
    }

    HttpResponse<String> open(CommandRequest request) throws IOException, InterruptedException {
        return send(post("/days", request));
    }

    HttpRequest command(String day, CommandRequest request, String... headers) {
        return post("/days/" + day + "/commands", request, headers);
    }

    record Advance(Instant to) {}

    /** Moves the clock and waits until all plans are drawn. */
    HttpResponse<String> advance(Instant to) throws IOException, InterruptedException {
        return send(post("/clock/advance", new Advance(to)));
    }

    DayView view(String day) throws IOException, InterruptedException {
        return ContractJson.read(get("/days/" + day).body(), DayView.class);
    }

    /** All events of a day as they came over the wire. */
    List<String> events(String day) throws IOException, InterruptedException {
        List<String> events = new ArrayList<>();
        while (true) {
            var page = ContractJson.mapper()
                    .readTree(get("/days/" + day + "/events?limit=100&after=" + events.size())
                            .body());
            if (page.get("events").isEmpty()) return List.copyOf(events);
            page.get("events").forEach(event -> events.add(event.toString()));
        }
    }
}
