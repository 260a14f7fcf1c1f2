package stirtide.planner.salonfiles.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stirtide.planner.salonfiles.source.FileProblem;
import stirtide.planner.salonfiles.source.SourceFile;
import stirtide.planner.salonfiles.source.TextFileReader;

/** Parses JSON (RFC 8259) strictly and keeps the place of every value. */
final class LocatedJsonParser {
    private static final int MAX_NESTING = 16;
    private static final int MAX_STRING = 4096;
    private static final int MAX_NUMBER = 20;
    private static final int EXCERPT = 30;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonFactory PARSERS = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MAX_NESTING)
                    .maxStringLength(MAX_STRING)
                    .maxNumberLength(MAX_NUMBER)
                    .maxNameLength(MAX_STRING)
                    .build())
            .build();

    private final SourceFile source;
    private final JsonParser parser;
    private final Map<String, LocatedJson.Place> places = new HashMap<>();
    private boolean refused;

    private LocatedJsonParser(SourceFile source, JsonParser parser) {
        this.source = source;
        this.parser = parser;
    }

    /** The document, or empty after its problems were reported. */
    static Optional<LocatedJson> parse(String text, SourceFile source) {
        try (JsonParser parser = PARSERS.createParser(text)) {
            try {
                return new LocatedJsonParser(source, parser).document();
            } catch (JsonProcessingException broken) {
                refuse(source, text, broken, parser.currentLocation());
            }
        } catch (IOException impossible) {
            source.refuse("(cannot be read)", "JSON (RFC 8259)");
        }
        return Optional.empty();
    }

    private Optional<LocatedJson> document() throws IOException {
        parser.nextToken();
        JsonNode root = value("");
        if (parser.nextToken() != null) refuseHere("", "(more after the end)", "one JSON object, nothing after it");
        return refused ? Optional.empty() : Optional.of(new LocatedJson(source, root, Map.copyOf(places)));
    }

    private JsonNode value(String pointer) throws IOException {
        JsonLocation at = parser.currentTokenLocation();
        places.put(pointer, new LocatedJson.Place(at.getLineNr(), at.getColumnNr()));
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(pointer);
            case START_ARRAY -> array(pointer);
            case VALUE_STRING -> NODES.textNode(clean(pointer, parser.getText()));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(pointer);
            case VALUE_TRUE, VALUE_FALSE -> NODES.booleanNode(parser.getBooleanValue());
            default -> NODES.nullNode();
        };
    }

    private JsonNode object(String pointer) throws IOException {
        ObjectNode node = NODES.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = clean(pointer, parser.currentName());
            String inside = pointer + FieldPath.step(key);
            if (node.has(key)) refuseHere(inside, "\"" + key + "\" a second time", "each key once");
            parser.nextToken();
            node.set(key, value(inside));
        }
        return node;
    }

    private JsonNode array(String pointer) throws IOException {
        ArrayNode node = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) node.add(value(pointer + "/" + node.size()));
        return node;
    }

    /** Exponents are refused: 1e999999999 is short to write and endless to handle. */
    private JsonNode number(String pointer) throws IOException {
        String text = parser.getText();
        if (text.indexOf('e') >= 0 || text.indexOf('E') >= 0) {
            refuseHere(pointer, text, "a number without exponent, such as 32.5");
            return NODES.numberNode(0);
        }
        return DecimalNode.valueOf(parser.getDecimalValue());
    }

    private String clean(String pointer, String text) {
        if (text.codePoints().anyMatch(FileProblem::steers)) {
            refuseHere(pointer, text, "text without control characters");
        }
        return text;
    }

    private void refuseHere(String pointer, String value, String accepted) {
        refused = true;
        JsonLocation at = parser.currentTokenLocation();
        String where = (pointer.isEmpty() ? "/" : pointer) + " " + TextFileReader.at(at.getLineNr(), at.getColumnNr());
        source.refuse(at.getLineNr(), at.getColumnNr(), where, value, accepted);
    }

    private static void refuse(SourceFile source, String text, JsonProcessingException broken, JsonLocation reached) {
        JsonLocation reported = broken.getLocation();
        JsonLocation at = reported == null || reported.getLineNr() < 1 ? reached : reported;
        int line = Math.max(1, at.getLineNr());
        int column = Math.max(1, at.getColumnNr());
        String where = TextFileReader.at(line, column);
        if (broken instanceof JsonEOFException) {
            source.refuse(line, column, where, "(the file ends here)", "JSON that is complete to its last bracket");
        } else if (broken instanceof StreamConstraintsException) {
            source.refuse(line, column, where, "(too long or too deep)", bounds());
        } else {
            source.refuse(line, column, where, excerpt(text, line, column), "JSON (RFC 8259)");
        }
    }

    private static String bounds() {
        return "at most " + MAX_NESTING + " levels, texts of at most " + MAX_STRING + " characters, numbers of at most "
                + MAX_NUMBER + " digits";
    }

    /** What stands around a place in its line. */
    private static String excerpt(String text, int line, int column) {
        String[] lines = text.split("\n", -1);
        if (line > lines.length) return "(the end)";
        String written = lines[line - 1];
        int from = Math.max(0, Math.min(column, written.length()) - EXCERPT);
        String near = written.substring(from, Math.min(written.length(), from + 2 * EXCERPT))
                .strip();
        return near.isEmpty() ? "(an empty line)" : near;
    }
}
