package stirtide.bar.link;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import javax.net.ssl.SSLException;
import org.jspecify.annotations.Nullable;
import stirtide.bar.model.Inquiry;
import stirtide.events.command.CommandRequest;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;
import stirtide.events.view.PourAdvice;
import stirtide.events.view.SetupView;

/** The requests a terminal makes. Every method blocks its thread until the answer or a failure. */
public final class DayClient {
    static final Duration PATIENCE = Duration.ofSeconds(10);
    private static final Duration ADVICE_PATIENCE = Duration.ofSeconds(60);
    private static final int OK = 200;
    private static final int UNKNOWN_SENDER = 401;
    private static final int REQUEST_TIMEOUT = 408;
    private static final int TOO_MANY = 429;
    private static final int CLIENT_ERRORS = 400;
    private static final int SERVER_ERRORS = 500;

    private final URI server;
    private final String dayPath;
    private final Credentials credentials;
    private final TokenHolder badge;
    private @Nullable HttpClient client;

    /**
     * Talks to one service about one day.
     *
     * @param server address of the service, such as {@code http://localhost:8080}
     * @param day salon id and date: {@code harbor-loft/2027-05-14}
     */
    public DayClient(URI server, String day) {
        this(server, day, Credentials.NONE);
    }

    /** The same for a service that asks who the terminal is. */
    public DayClient(URI server, String day, Credentials credentials) {
        this.server = server;
        this.credentials = credentials;
        badge = new TokenHolder(credentials);
        dayPath = "/days/" + day;
    }

    /** Answer to a command. */
    sealed interface Answer {
        record Taken() implements Answer {}

        record Refused(String sentence) implements Answer {}

        record Later(String why) implements Answer {}
    }

    /** Made when it is first needed, on the thread that needs it: that takes as long as a frame may. */
    synchronized HttpClient client() {
        HttpClient made = client;
        if (made == null) {
            made = HttpClients.of(server, PATIENCE, credentials.trust());
            client = made;
        }
        return made;
    }

    HttpRequest liveRequest(String lastEventId) throws IOException {
        // Under the terminal's own token: the line outlasts the people who sign on and off.
        HttpRequest.Builder request = badge.asTerminal(at(dayPath + "/live")).header("Accept", "text/event-stream");
        return lastEventId.isEmpty()
                ? request.build()
                : request.header("Last-Event-ID", lastEventId).build();
    }

    /**
     * The day as it is.
     *
     * @throws IOException when the service cannot be reached or does not know the day, with a sentence
     */
    public DayView day() throws IOException, InterruptedException {
        return viewAt(dayPath);
    }

    /** What is in force on the day. */
    SetupView setup() throws IOException, InterruptedException {
        HttpResponse<String> response =
                send(request(at(dayPath + "/setup")).timeout(PATIENCE).build());
        if (response.statusCode() != OK) throw new IOException(sentence(response));
        try {
            return ContractJson.read(response.body(), SetupView.class);
        } catch (IllegalArgumentException otherContract) {
            throw new IOException("the service speaks another version: " + otherContract.getMessage(), otherContract);
        }
    }

    /**
     * Opens a day.
     *
     * @return empty when it is open now, else the service's sentence
     * @throws IOException when the service cannot be reached
     */
    public Optional<String> open(CommandRequest request) throws IOException, InterruptedException {
        HttpResponse<String> response = send(json("/days").POST(body(request)).build());
        return response.statusCode() < CLIENT_ERRORS ? Optional.empty() : Optional.of(sentence(response));
    }

    /** Another day by its name, salon id and date. */
    DayView day(String name) throws IOException, InterruptedException {
        return viewAt("/days/" + name);
    }

    /** The service's list of days as it tells it; nothing when it tells none. */
    JsonNode days() throws IOException, InterruptedException {
        HttpResponse<String> response =
                send(request(at("/days")).timeout(PATIENCE).build());
        return response.statusCode() == OK
                ? tree(response.body())
                : ContractJson.mapper().createArrayNode();
    }

    /** What the planner says about something it tries; a failure is an answer too. */
    Inquiry.Answer advice(Inquiry.Ask ask) throws InterruptedException {
        try {
            HttpResponse<String> response = send(request(at(dayPath + InquiryRequests.of(ask)))
                    .timeout(ADVICE_PATIENCE)
                    .build());
            if (response.statusCode() != OK) return new Inquiry.Answer.Failed(sentence(response));
            return InquiryRequests.answer(ask, response.body());
        } catch (IOException unreachable) {
            return new Inquiry.Answer.Failed(reason(unreachable));
        }
    }

    private DayView viewAt(String path) throws IOException, InterruptedException {
        HttpResponse<String> response = send(request(at(path)).timeout(PATIENCE).build());
        if (response.statusCode() != OK) throw new IOException(sentence(response));
        return view(response.body());
    }

    static DayView view(String json) throws IOException {
        try {
            return ContractJson.read(json, DayView.class);
        } catch (IllegalArgumentException otherContract) {
            throw new IOException("the service speaks another version: " + otherContract.getMessage(), otherContract);
        }
    }

    /** The same from the first bytes of an array. */
    static DayView view(byte[] json, int length) throws IOException {
        try {
            return ContractJson.read(json, length, DayView.class);
        } catch (IllegalArgumentException otherContract) {
            throw new IOException("the service speaks another version: " + otherContract.getMessage(), otherContract);
        }
    }

    Answer command(CommandRequest command) throws InterruptedException {
        try {
            HttpRequest request =
                    json(dayPath + "/commands").POST(body(command)).build();
            HttpResponse<String> response = send(request);
            int status = response.statusCode();
            if (status < CLIENT_ERRORS) return new Answer.Taken();
            // Who sends it is not known any more: that says nothing about the entry.
            boolean later = status >= SERVER_ERRORS
                    || status == REQUEST_TIMEOUT
                    || status == TOO_MANY
                    || status == UNKNOWN_SENDER;
            return later ? new Answer.Later(sentence(response)) : new Answer.Refused(sentence(response));
        } catch (IOException unreachable) {
            return new Answer.Later(reason(unreachable));
        }
    }

    /** What to pour next into a bowl, empty when the service does not say. */
    Optional<PourAdvice> nextPour(String bowl, String poured) throws IOException, InterruptedException {
        URI path = at(dayPath + "/bowls/" + bowl + "/next-pour?poured=" + poured);
        HttpResponse<String> response = send(request(path).timeout(PATIENCE).build());
        if (response.statusCode() != OK) return Optional.empty();
        try {
            return Optional.of(ContractJson.read(response.body(), PourAdvice.class));
        } catch (IllegalArgumentException otherContract) {
            return Optional.empty();
        }
    }

    /** The salon's clock, empty when the service does not tell it. */
    Optional<LinkEvent.Clock> clock() throws IOException, InterruptedException {
        return clock(send(request(at("/clock")).timeout(PATIENCE).build()));
    }

    /** Drives the clock; a refusal is a failure with the service's sentence. */
    Optional<LinkEvent.Clock> setClockRate(int ratePermille) throws IOException, InterruptedException {
        String body = ContractJson.mapper()
                .createObjectNode()
                .put("ratePermille", ratePermille)
                .toString();
        HttpResponse<String> response =
                send(json("/clock").PUT(BodyPublishers.ofString(body)).build());
        if (response.statusCode() >= CLIENT_ERRORS) throw new IOException(sentence(response));
        return clock(response);
    }

    private static Optional<LinkEvent.Clock> clock(HttpResponse<String> response) {
        JsonNode clock = tree(response.body());
        if (response.statusCode() != OK || !clock.hasNonNull("now")) return Optional.empty();
        return Optional.of(new LinkEvent.Clock(
                Instant.parse(clock.get("now").asText()),
                clock.path("ratePermille").asInt(),
                clock.path("driven").asBoolean()));
    }

    TokenHolder badge() {
        return badge;
    }

    private HttpRequest.Builder request(URI uri) throws IOException {
        return badge.request(uri);
    }

    private HttpRequest.Builder json(String path) throws IOException {
        return request(at(path)).timeout(PATIENCE).header("Content-Type", "application/json");
    }

    private static HttpRequest.BodyPublisher body(Object value) {
        return BodyPublishers.ofString(ContractJson.write(value));
    }

    HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<String> response = client().send(request, BodyHandlers.ofString());
        if (response.statusCode() == UNKNOWN_SENDER) badge.unknown(request, sentence(response));
        return response;
    }

    URI at(String path) {
        return server.resolve(path);
    }

    /** The sentence of a problem document, else the status. */
    static String sentence(HttpResponse<String> response) {
        String detail = tree(response.body()).path("detail").asText("");
        return detail.isBlank() ? "the service answered " + response.statusCode() : detail;
    }

    static JsonNode tree(String body) {
        try {
            JsonNode tree = ContractJson.mapper().readTree(body);
            return tree == null ? ContractJson.mapper().missingNode() : tree;
        } catch (JsonProcessingException notJson) {
            return ContractJson.mapper().missingNode();
        }
    }

    /** A failure in a few words for the header. */
    public static String reason(IOException failure) {
        if (failure instanceof SSLException)
            return "its certificate is not known here: name it with --trust FILE (" + failure.getMessage() + ")";
        if (failure instanceof HttpTimeoutException) return "the service did not answer in time";
        String message = failure.getMessage();
        return message == null || message.isBlank() ? "the service cannot be reached" : message;
    }
}
