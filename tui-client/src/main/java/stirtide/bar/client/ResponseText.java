package stirtide.bar.client;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import javax.net.ssl.SSLException;
import stirtide.events.json.ContractJson;

/** What a service answered, and why it did not, as text for people or as JSON. */
public final class ResponseText {
    private ResponseText() {}

    /** The detail of a problem document, or else the status. */
    public static String sentence(HttpResponse<String> response) {
        String detail = tree(response.body()).path("detail").asText("");
        return detail.isBlank() ? "the service answered " + response.statusCode() : detail;
    }

    /** The body of a response as JSON; a missing node when it is none. */
    public static JsonNode tree(String body) {
        try {
            JsonNode tree = ContractJson.mapper().readTree(body);
            return tree == null ? ContractJson.mapper().missingNode() : tree;
        } catch (JsonProcessingException notJson) {
            return ContractJson.mapper().missingNode();
        }
    }

    /** A failure in one sentence for people. */
    public static String reason(IOException failure) {
        if (failure instanceof SSLException)
            return "its certificate is not known here: name it with --trust FILE (" + failure.getMessage() + ")";
        if (failure instanceof HttpTimeoutException) return "the service did not answer in time";
        String message = failure.getMessage();
        return message == null || message.isBlank() ? "the service cannot be reached" : message;
    }

    /** The failure to read JSON that is not of this program's contract. */
    static IOException otherVersion(IllegalArgumentException unreadable) {
        return new IOException("the service speaks another version: " + unreadable.getMessage(), unreadable);
    }
}
