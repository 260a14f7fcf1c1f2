package stirtide.bar.link;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Optional;
import stirtide.bar.client.ResponseText;
import stirtide.bar.client.ServiceClient;
import stirtide.events.json.ContractJson;

/** The requests of signing on and off. Every method blocks its thread until the answer or a failure. */
final class SignOnRequests {
    private static final String PATH = "/sign-on";
    private static final Duration TIMEOUT = Duration.ofSeconds(10);
    /** Checking a code is slow on purpose, and slower on a busy machine. */
    private static final Duration CODE_TIMEOUT = Duration.ofSeconds(30);

    private static final int CREATED = 201;
    private static final int OK = 200;
    private static final int NOT_FOUND = 404;
    private static final int LONGEST_WAIT_SECONDS = 3600;

    private final ServiceClient service;

    SignOnRequests(ServiceClient service) {
        this.service = service;
    }

    /** Answer to a code: the token of the sign-on and the event that tells of it, or no token. */
    record Answer(Optional<String> token, LinkEvent.SignOn event) {}

    /**
     * Whether a person must sign on before anything can be changed. A service without sign-on requires none.
     *
     * @throws IOException when the service cannot be reached or does not know this terminal, with a sentence
     */
    boolean needed() throws IOException, InterruptedException {
        HttpResponse<String> response = service.send(asTerminal().GET().build());
        if (response.statusCode() == NOT_FOUND) return false;
        if (response.statusCode() != OK) throw new IOException(ResponseText.sentence(response));
        return ResponseText.tree(response.body()).path("needed").asBoolean();
    }

    /** Asks whether the person's sign-on is still valid: a restart of the service ends all of them. */
    void checkStillValid() throws IOException, InterruptedException {
        service.send(asPerson().GET().build());
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
                    .timeout(CODE_TIMEOUT)
                    .POST(HttpRequest.BodyPublishers.ofString(body))
                    .build();
            return answer(service.send(request));
        } catch (IOException unreachable) {
            return refused(ResponseText.reason(unreachable), 0);
        }
    }

    private static Answer answer(HttpResponse<String> response) {
        if (response.statusCode() != CREATED) return refused(ResponseText.sentence(response), waitSeconds(response));
        JsonNode who = ResponseText.tree(response.body());
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

    /** Ends the person's sign-on at the service; an unreachable service ends it by itself later. */
    void signOff() throws InterruptedException {
        try {
            service.send(asPerson().DELETE().build());
        } catch (IOException unreachable) {
            // The token is forgotten here, and no other program has it.
        }
    }

    private HttpRequest.Builder asTerminal() throws IOException {
        return service.requestAsTerminal(PATH).timeout(TIMEOUT);
    }

    private HttpRequest.Builder asPerson() throws IOException {
        return service.request(PATH);
    }
}
