package stirtide.events.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;

/**
 * Instants as this contract writes them, {@code 2027-05-14T09:00:00Z} with up to three digits after the second. Plans are
 * full of them, and the general parser takes half the time of a replay. Every other form goes to the general parser.
 */
final class InstantText extends StdScalarDeserializer<Instant> {
    private static final long serialVersionUID = 1L;
    private static final int TO_SECONDS = 19;
    private static final int LONGEST = 24;
    private static final int MILLI_NANOS = 1_000_000;
    private static final String SHAPE = "0000-00-00T00:00:00";

    InstantText() {
        super(Instant.class);
    }

    @Override
    public Instant deserialize(JsonParser parser, DeserializationContext context) throws IOException {
        if (parser.currentToken() != JsonToken.VALUE_STRING)
            return (Instant) context.handleUnexpectedToken(Instant.class, parser);
        return parse(parser.getText());
    }

    /** @throws java.time.DateTimeException when the text is no instant */
    static Instant parse(String text) {
        return hasShape(text) ? quick(text) : Instant.parse(text);
    }

    private static boolean hasShape(String text) {
        int length = text.length();
        if (length <= TO_SECONDS || length > LONGEST || text.charAt(length - 1) != 'Z') return false;
        for (int at = 0; at < TO_SECONDS; at++) {
            char wanted = SHAPE.charAt(at);
            if (wanted == '0' ? !digit(text.charAt(at)) : text.charAt(at) != wanted) return false;
        }
        if (length == TO_SECONDS + 1) return number(text, 11, 13) < 24;
        // a point and three digits, or the general parser
        if (length != LONGEST || text.charAt(TO_SECONDS) != '.') return false;
        for (int at = TO_SECONDS + 1; at < LONGEST - 1; at++) if (!digit(text.charAt(at))) return false;
        return number(text, 11, 13) < 24;
    }

    private static Instant quick(String text) {
        int minute = number(text, 14, 16);
        int second = number(text, 17, 19);
        // leap seconds and worse are for the general parser to judge
        if (minute > 59 || second > 59) return Instant.parse(text);
        long days = LocalDate.of(number(text, 0, 4), number(text, 5, 7), number(text, 8, 10))
                .toEpochDay();
        long seconds = days * 86_400 + number(text, 11, 13) * 3_600L + minute * 60L + second;
        int millis = text.length() == LONGEST ? number(text, TO_SECONDS + 1, LONGEST - 1) : 0;
        return Instant.ofEpochSecond(seconds, (long) millis * MILLI_NANOS);
    }

    private static boolean digit(char letter) {
        return letter >= '0' && letter <= '9';
    }

    private static int number(String text, int from, int to) {
        int number = 0;
        for (int at = from; at < to; at++) number = number * 10 + text.charAt(at) - '0';
        return number;
    }
}
