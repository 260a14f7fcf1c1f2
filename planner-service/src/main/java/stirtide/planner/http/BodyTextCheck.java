package stirtide.planner.http;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import io.vertx.core.buffer.Buffer;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import stirtide.events.json.ContractJson;

/**
 * Finds text in a body that is no text. A decoder puts the same replacement for any of it, and two command ids would become
 * one.
 */
final class BodyTextCheck {
    private BodyTextCheck() {}

    /** Why the body is not understood, or empty. Whether it is JSON at all is not looked at here. */
    static Optional<ProblemDetail> problem(Buffer body) {
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(body.getBytes()))
                    .toString();
        } catch (CharacterCodingException notText) {
            return Optional.of(ProblemDetail.of(400, "NOT_UNDERSTOOD", "the body is not UTF-8"));
        }
        if (!text.contains("\\u") || !holdsHalf(text)) return Optional.empty();
        return Optional.of(ProblemDetail.of(
                400, "NOT_UNDERSTOOD", "the body holds half of a surrogate pair; both halves or none are accepted"));
    }

    private static boolean holdsHalf(String json) {
        try (JsonParser parser = ContractJson.mapper().createParser(json)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                boolean words = token == JsonToken.FIELD_NAME || token == JsonToken.VALUE_STRING;
                if (words && !StandardCharsets.UTF_8.newEncoder().canEncode(parser.getText())) return true;
            }
            return false;
        } catch (IOException notJson) {
            return false;
        }
    }
}
