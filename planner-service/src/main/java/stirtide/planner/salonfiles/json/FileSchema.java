package stirtide.planner.salonfiles.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.PathType;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stirtide.planner.salonfiles.source.FileProblem;

/** Checks a document against its JSON Schema. What would be accepted is the description the schema gives. */
public final class FileSchema {
    private static final JsonSchemaFactory SCHEMAS = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
    private static final SchemaValidatorsConfig CONFIG = SchemaValidatorsConfig.builder()
            .pathType(PathType.JSON_POINTER)
            .locale(Locale.ROOT)
            .build();

    public static final FileSchema SALON = new FileSchema("salon");
    public static final FileSchema DEVELOPERS = new FileSchema("developers");
    public static final FileSchema DIRECTIONS = new FileSchema("directions");
    public static final FileSchema MENU = new FileSchema("menu");
    public static final FileSchema HISTORY = new FileSchema("history");
    public static final FileSchema BOOKINGS = new FileSchema("bookings");

    private final JsonNode document;
    private final JsonSchema schema;

    private FileSchema(String name) {
        try (InputStream in = FileSchema.class.getResourceAsStream("/schema/files/" + name + ".schema.json")) {
            if (in == null) throw new IllegalStateException("no schema of this name in the jar: " + name);
            document = new ObjectMapper().readTree(in);
            schema = SCHEMAS.getSchema(document, CONFIG);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Whether the document fits; if not, every misfit was reported, at most one a place. */
    boolean fits(LocatedJson json) {
        Set<ValidationMessage> messages = schema.validate(json.root());
        Set<String> reported = new HashSet<>();
        for (ValidationMessage message : messages) {
            String place = place(message);
            if (reported.add(place)) json.refuse(place, value(json, message), accepted(message));
        }
        return messages.isEmpty();
    }

    private static String place(ValidationMessage message) {
        String instance = message.getInstanceLocation().toString();
        return names(message) ? instance + FieldPath.step(message.getProperty()) : instance;
    }

    /** Whether the message is about a key of the object it points to. */
    private static boolean names(ValidationMessage message) {
        return switch (message.getType()) {
            case "required", "additionalProperties", "propertyNames" -> message.getProperty() != null;
            default -> false;
        };
    }

    private static String value(LocatedJson json, ValidationMessage message) {
        if (message.getType().equals("required")) return FileProblem.MISSING;
        if (names(message)) return "\"" + message.getProperty() + "\"";
        String pointer = message.getInstanceLocation().toString();
        JsonNode node = json.root().at(pointer);
        return node.isContainerNode() ? described(node) : shown(node);
    }

    /** A value as written in the file. */
    private static String shown(JsonNode node) {
        return node.isNumber() ? node.decimalValue().toPlainString() : node.toString();
    }

    private static String described(JsonNode node) {
        return (node.isArray() ? "a list of " : "an object of ") + node.size();
    }

    private String accepted(ValidationMessage message) {
        String keyword = message.getSchemaLocation().getFragment().toString();
        JsonNode parent = document.at(keyword.substring(0, keyword.lastIndexOf('/')));
        String description = switch (message.getType()) {
            case "required" -> describe(parent.path("properties").path(message.getProperty()));
            case "additionalProperties" -> "one of the keys " + keys(parent);
            case "propertyNames" -> describe(parent.path("propertyNames"));
            case "uniqueItems" -> describe(parent) + " without repetition";
            default -> describe(parent);
        };
        return description.isEmpty() ? message.getMessage() : description;
    }

    private String describe(JsonNode part) {
        JsonNode reference = part.path("$ref");
        JsonNode described =
                reference.isTextual() ? document.at(reference.textValue().substring(1)) : part;
        return described.path("description").asText();
    }

    private static String keys(JsonNode object) {
        List<String> keys = new ArrayList<>();
        object.path("properties").fieldNames().forEachRemaining(keys::add);
        keys.remove("$schema");
        return String.join(", ", keys);
    }
}
