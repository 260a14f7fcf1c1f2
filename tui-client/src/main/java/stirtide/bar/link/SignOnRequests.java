package stirtide.bar.link;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Optional;
import stirtide.events.json.ContractJson;

/** The requests of signing on and off. Every method blocks its thread until the answer or a failure. */
final class SignOnRequests {
    private static final String PATH = "/sign-on";
    /** Looking at a code is slow on purpose, and slower on a busy machine. */
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private static final int CREATED = 201;
    private static final int OK = 200;
    private static final int NOT_FOUND = 404;
    private static final int LONGEST_WAIT_SECONDS = 3600;

    private final DayClient api;

    SignOnRequests(DayClient api) {
        this.api = api;
    }

    /** Answer to a code: the token of the sign-on beside the news of it, or no token. */
    record Answer(Optional<String> token, LinkEvent.SignOn news) {}

    /**
     * Whether a person must sign on before anything can be changed. A service that knows no sign-on asks nobody.
     *
     * @throws IOException when the service cannot be reached or does not know this terminal, with a sentence
     */
    boolean needed() throws IOException, InterruptedException {
        HttpResponse<String> response = api.send(asTerminal().GET().build());
        if (response.statusCode() == NOT_FOUND) return false;
        if (response.statusCode() != OK) throw new IOException(DayClient.sentence(response));
        return DayClient.tree(response.body()).path("needed").asBoolean();
    }

    /** Whether the person's sign-on still stands: the service forgets all of them when it is started anew. */
    void askWhetherItStands() throws IOException, InterruptedException {
        api.send(asPerson().GET().build());
    }

    Answer signOn(String personId, String code) throws InterruptedException {
        String body = ContractJson.mapper()
                .createObjectNode()
                .put("personId", personId)
                .put("code", code)
                .toString();
        try {
            HttpRequest request = asTerminal()
                    .header("Content-Type", "application/json")
                    .timeout(PATIENCE)
                    .POST(HttpRequest.BodyPublishers.ofString(body))
                    .build();
            return answer(api.send(request));
        } catch (IOException unreachable) {
            return refused(DayClient.reason(unreachable), 0);
        }
    }

    private static Answer answer(HttpResponse<String> response) {
        if (response.statusCode() != CREATED) return refused(DayClient.sentence(response), waitSeconds(response));
        JsonNode who = DayClient.tree(response.body());
        return new Answer(
                Optional.of(who.path("token").asText()),
                new LinkEvent.SignOn.Begun(
                        who.path("actor").asText(), who.path("role").asText(""), 0));
    }

    private static Answer refused(String sentence, int waitSeconds) {
        return new Answer(Optional.empty(), new LinkEvent.SignOn.Refused(sentence, waitSeconds));
    }

    private static int waitSeconds(HttpResponse<String> response) {
        return response.headers()
                .firstValue("retry-after")
                .filter(value -> value.matches("\\d{1,6}"))
                .map(Integer::parseInt)
                .map(seconds -> Math.min(seconds, LONGEST_WAIT_SECONDS))
                .orElse(0);
    }

    /** Tells the service that the person leaves; one that cannot be reached forgets the sign-on by itself. */
    void signOff() throws InterruptedException {
        try {
            api.send(asPerson().DELETE().build());
        } catch (IOException unreachable) {
            // The token is forgotten here, and nobody else knows it.
        }
    }

    private HttpRequest.Builder asTerminal() throws IOException {
        return api.badge().asTerminal(api.at(PATH)).timeout(DayClient.PATIENCE);
    }

    private HttpRequest.Builder asPerson() throws IOException {
        return api.badge().request(api.at(PATH)).timeout(DayClient.PATIENCE);
    }
}
