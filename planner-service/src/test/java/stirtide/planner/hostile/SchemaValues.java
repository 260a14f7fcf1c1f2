package stirtide.planner.hostile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Values that fit a schema of the contract, drawn by chance; words the salon knows come often. */
final class SchemaValues {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final int DEEPEST = 12;

    /** Values by pattern; a pattern without one is a gap of this test, not of the service. */
    private static final Map<String, List<String>> BY_PATTERN = Map.of(
            "^[0-9]{1,4}[a-z]{1,3}$", List.of("1a", "2a", "3b", "9999zzz"),
            "^([A-Za-z0-9._-]{1,64}:[0-9]{1,9}(,[A-Za-z0-9._-]{1,64}:[0-9]{1,9}){0,11})?$",
                    List.of("", "lightener:30000", "lightener:30000,six:60500", "six:999999999", "x:0,x:0"),
            "^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$", List.of("quay-house", "tern-house", "a", "Z".repeat(64)),
            "^[0-9]{4}-[0-9]{2}-[0-9]{2}$",
                    List.of("2027-03-09", "2027-03-10", "2028-02-29", "2027-02-29", "0000-00-00", "9999-12-31"),
            "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\\.[0-9]{1,9})?Z$",
                    List.of(
                            "2027-03-09T09:00:00Z",
                            "2027-03-09T13:30:00Z",
                            "2027-03-09T14:00:00.5Z",
                            "2027-03-09T10:00:00.123456789Z",
                            "2027-03-09T99:99:99Z",
                            "0000-01-01T00:00:00Z",
                            "9999-12-31T23:59:59.999999999Z"),
            "^[0-9]{6}$", List.of("000000", "123456", "999999"));

    /** Values the salon knows, by the name of the field. */
    private static final Map<String, List<String>> BY_NAME = Map.ofEntries(
            Map.entry("menuId", List.of("half", "full")),
            Map.entry("length", List.of("medium", "long")),
            Map.entry("density", List.of("medium", "thick")),
            Map.entry("personId", List.of("mika", "ada")),
            Map.entry("stylistId", List.of("ada")),
            Map.entry("lightenerId", List.of("powder")),
            Map.entry("zone", List.of("front foils", "back foils")),
            Map.entry("clientRef", List.of("K1", "R.M.", "J.P.")),
            Map.entry("bowl", List.of("1a", "2a", "3a", "4a")),
            Map.entry("bookingUid", List.of("b-10", "b-11", "b-12", "b-13")),
            Map.entry("start", List.of("2027-03-09T12:30:00Z", "2027-03-09T13:00:00Z")),
            Map.entry("from", List.of("2027-03-09T10:00:00Z")),
            Map.entry("to", List.of("2027-03-09T11:00:00Z")));

    private static final List<String> WORDS = List.of(
            "mika",
            "ada",
            "half",
            "full",
            "medium",
            "long",
            "thick",
            "front foils",
            "back foils",
            "powder",
            "six",
            "middle",
            "bar-1",
            "1a",
            "2a",
            "b-1",
            "K1",
            "foil",
            "low-life:1a",
            "",
            "x",
            "R.M.",
            "\u00e4\u4f60\ud83d\ude00");

    private final ContractBook contract;
    private final Random random;

    SchemaValues(ContractBook contract, Random random) {
        this.contract = contract;
        this.random = random;
    }

    /** A value that fits. */
    JsonNode value(JsonNode schema) {
        return value(schema, 0);
    }

    /** A value that fits, for a parameter of that name. */
    String parameter(String name, JsonNode schema) {
        return named(name, schema, 0).asText();
    }

    /** A value of the salon for this field, often; else one that fits. */
    private JsonNode named(String name, JsonNode schema, int depth) {
        List<String> known = BY_NAME.get(name);
        if (known == null || random.nextInt(5) == 0) return value(schema, depth);
        return NODES.textNode(known.get(random.nextInt(known.size())));
    }

    private JsonNode value(JsonNode reference, int depth) {
        JsonNode schema = contract.resolved(reference);
        if (schema.has("const")) return schema.get("const");
        if (schema.has("enum"))
            return schema.get("enum").get(random.nextInt(schema.get("enum").size()));
        if (schema.has("allOf")) return value(oneOfTheKinds(schema), depth);
        for (String choice : List.of("oneOf", "anyOf"))
            if (schema.has(choice)) return value(chosen(schema.get(choice)), depth);
        return switch (type(schema)) {
            case "object" -> object(schema, depth);
            case "array" -> array(schema, depth);
            case "integer" -> NODES.numberNode(integer(schema));
            case "number" -> NODES.numberNode(random.nextInt(10_000) / 100.0);
            case "boolean" -> NODES.booleanNode(random.nextBoolean());
            case "null" -> NODES.nullNode();
            default -> NODES.textNode(text(schema));
        };
    }

    /** Commands are told apart by their type: one of them, all alike often. */
    private JsonNode oneOfTheKinds(JsonNode schema) {
        return schema.get("allOf")
                .get(random.nextInt(schema.get("allOf").size()))
                .get("then");
    }

    private JsonNode chosen(JsonNode choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private String type(JsonNode schema) {
        JsonNode type = schema.path("type");
        if (type.isArray()) return type.get(random.nextInt(type.size())).asText();
        return type.asText("string");
    }

    private JsonNode object(JsonNode schema, int depth) {
        ObjectNode object = NODES.objectNode();
        List<String> required = new ArrayList<>();
        schema.path("required").forEach(name -> required.add(name.asText()));
        schema.path("properties").fields().forEachRemaining(property -> {
            if (required.contains(property.getKey()) || depth < DEEPEST && random.nextInt(2) == 0)
                object.set(property.getKey(), named(property.getKey(), property.getValue(), depth + 1));
        });
        if (schema.path("additionalProperties").isObject())
            for (String word : List.of("medium", "long"))
                object.set(word, value(schema.get("additionalProperties"), depth + 1));
        return object;
    }

    private JsonNode array(JsonNode schema, int depth) {
        ArrayNode array = NODES.arrayNode();
        int length = depth >= DEEPEST ? 0 : random.nextInt(4);
        for (int at = 0; at < length; at++) array.add(value(schema.path("items"), depth + 1));
        return array;
    }

    private long integer(JsonNode schema) {
        long least = schema.path("minimum").asLong(-2);
        long most = schema.path("maximum").asLong(Integer.MAX_VALUE);
        return switch (random.nextInt(8)) {
            case 0 -> least;
            case 1 -> most;
            case 2 -> Math.min(most, least + random.nextInt(100_000));
            default -> Math.min(most, least + random.nextInt(6));
        };
    }

    private String text(JsonNode schema) {
        if (schema.has("pattern")) {
            List<String> known = BY_PATTERN.get(schema.get("pattern").asText());
            if (known == null) throw new IllegalStateException("no value for the pattern " + schema.get("pattern"));
            return known.get(random.nextInt(known.size()));
        }
        int least = schema.path("minLength").asInt(0);
        int most = schema.path("maxLength").asInt(200);
        StringBuilder text = new StringBuilder(WORDS.get(random.nextInt(WORDS.size())));
        while (text.length() < least) text.append((char) ('a' + random.nextInt(26)));
        return text.length() <= most ? text.toString() : text.substring(0, most);
    }
}
