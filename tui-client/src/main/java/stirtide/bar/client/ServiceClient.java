package stirtide.bar.client;

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
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stirtide.events.command.CommandRequest;
import stirtide.events.json.ContractJson;

/**
 * One planner service. Every method blocks its thread until the response or a failure; a failure, a status other than
 * expected included, is an {@link IOException} of which {@link ResponseText#reason} makes a sentence for people.
 */
public final class ServiceClient {
    private static final Duration USUAL_TIMEOUT = Duration.ofSeconds(10);
    private static final int OK = 200;
    private static final int UNAUTHORIZED = 401;
    private static final int REQUEST_TIMEOUT = 408;
    private static final int TOO_MANY_REQUESTS = 429;
    private static final int CLIENT_ERRORS = 400;
    private static final int SERVER_ERRORS = 500;

    private final URI server;
    private final Credentials credentials;
    private final Duration timeout;
    private final TokenHolder tokens;
    private @Nullable HttpClient http;

    /** A client without a token; {@code server} is an address such as {@code http://localhost:8080}. */
    public ServiceClient(URI server) {
        this(server, Credentials.NONE, USUAL_TIMEOUT);
    }

    /** A client that brings a token or trusts certificates of its own; a request takes ten seconds at most. */
    public ServiceClient(URI server, Credentials credentials) {
        this(server, credentials, USUAL_TIMEOUT);
    }

    /** The same with another limit for connecting and for each request. */
    public ServiceClient(URI server, Credentials credentials, Duration timeout) {
        this.server = server;
        this.credentials = credentials;
        this.timeout = timeout;
        tokens = new TokenHolder(credentials);
    }

    /** Names of all days the service knows, oldest first; none when the service does not list them. */
    public List<String> days() throws IOException, InterruptedException {
        HttpResponse<String> response = send(get("/days"));
        return response.statusCode() == OK ? dayNames(response.body()) : List.of();
    }

    static List<String> dayNames(String body) {
        var names = new ArrayList<String>();
        ResponseText.tree(body)
                .path("days")
                .forEach(day -> names.add(day.path("day").asText("")));
        return List.copyOf(names);
    }

    /** Opens a day. */
    public CommandAnswer open(CommandRequest request) throws IOException, InterruptedException {
        return command("/days", request);
    }

    /** The salon's clock, empty when the service does not report it. */
    public Optional<ServiceClock> clock() throws IOException, InterruptedException {
        return clock(send(get("/clock")));
    }

    /** Sets the speed of a driven clock, in thousandths of real time. */
    public Optional<ServiceClock> setClockRate(int ratePermille) throws IOException, InterruptedException {
        HttpRequest.Builder request = json("/clock").PUT(body(Map.of("ratePermille", ratePermille)));
        return clock(sendChecked(request.build()));
    }

    /** Advances a driven clock; returns when everything due until then has happened. */
    public void advanceClock(Instant to) throws IOException, InterruptedException {
        sendChecked(json("/clock/advance").POST(body(Map.of("to", to))).build());
    }

    private static Optional<ServiceClock> clock(HttpResponse<String> response) {
        JsonNode clock = ResponseText.tree(response.body());
        if (response.statusCode() != OK || !clock.hasNonNull("now")) return Optional.empty();
        return Optional.of(new ServiceClock(
                Instant.parse(clock.get("now").asText()),
                clock.path("ratePermille").asInt(),
                clock.path("driven").asBoolean()));
    }

    CommandAnswer command(String path, CommandRequest command) throws IOException, InterruptedException {
        HttpResponse<String> response = send(json(path).POST(body(command)).build());
        int status = response.statusCode();
        if (status < CLIENT_ERRORS)
            return new CommandAnswer.Accepted(
                    ResponseText.tree(response.body()).path("lastRevision").asLong());
        // An unknown sender says nothing about the command itself.
        boolean undecided = status >= SERVER_ERRORS
                || status == REQUEST_TIMEOUT
                || status == TOO_MANY_REQUESTS
                || status == UNAUTHORIZED;
        return undecided
                ? new CommandAnswer.Undecided(ResponseText.sentence(response))
                : new CommandAnswer.Rejected(ResponseText.sentence(response));
    }

    /** Whose token the requests carry. */
    public TokenHolder tokens() {
        return tokens;
    }

    /** A request as the person who signed on, or as the terminal while no person has. */
    public HttpRequest.Builder request(String path) throws IOException {
        return tokens.request(server.resolve(path)).timeout(timeout);
    }

    /** A request as the terminal, whoever has signed on; without a time limit. */
    public HttpRequest.Builder requestAsTerminal(String path) throws IOException {
        return tokens.requestAsTerminal(server.resolve(path));
    }

    HttpRequest get(String path) throws IOException {
        return request(path).header("Accept", "application/json").build();
    }

    private HttpRequest.Builder json(String path) throws IOException {
        return request(path).header("Content-Type", "application/json");
    }

    private static HttpRequest.BodyPublisher body(Object value) {
        return BodyPublishers.ofString(ContractJson.write(value));
    }

    /** Sends a request, whatever status comes back. Informs the token holder when the service no longer knows the token. */
    public HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<String> response = http().send(request, BodyHandlers.ofString());
        if (response.statusCode() == UNAUTHORIZED) tokens.rejected(request, ResponseText.sentence(response));
        return response;
    }

    /** The same, but a status that is no success is a failure with the service's sentence. */
    HttpResponse<String> sendChecked(HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<String> response = send(request);
        if (response.statusCode() >= CLIENT_ERRORS) throw new IOException(ResponseText.sentence(response));
        return response;
    }

    /** Created when first needed, on the thread that needs it: that takes longer than a frame may. */
    synchronized HttpClient http() {
        HttpClient made = http;
        if (made == null) {
            made = HttpClients.of(server, timeout, credentials.trust());
            http = made;
        }
        return made;
    }
}
