package stirtide.planner.hostile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The published contract: its operations, and whether an answer is one it promises. Safe for threads. */
final class ContractBook {
    private static final Set<String> METHODS = Set.of("get", "post", "put", "delete");

    private final JsonNode document = read();
    private final List<Operation> operations = new ArrayList<>();
    private final Map<JsonNode, JsonSchema> schemas = new ConcurrentHashMap<>();

    /**
     * One operation.
     *
     * @param parameters of the path and its own, resolved
     * @param body schema of the body, if it takes one
     */
    record Operation(
            String id,
            String method,
            String path,
            List<JsonNode> parameters,
            Optional<JsonNode> body,
            JsonNode responses) {}

    ContractBook() {
        document.get("paths")
                .fields()
                .forEachRemaining(path -> path.getValue().fields().forEachRemaining(entry -> {
                    if (METHODS.contains(entry.getKey()))
                        operations.add(operation(path.getKey(), path.getValue(), entry.getKey(), entry.getValue()));
                }));
    }

    private static JsonNode read() {
        try (InputStream yaml = Objects.requireNonNull(ContractBook.class.getResourceAsStream("/openapi.yaml"))) {
            Map<String, Object> document = new Yaml(new SafeConstructor(new LoaderOptions())).load(yaml);
            return new ObjectMapper().valueToTree(document);
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    private Operation operation(String path, JsonNode shared, String method, JsonNode own) {
        List<JsonNode> parameters = new ArrayList<>();
        shared.path("parameters").forEach(one -> parameters.add(resolved(one)));
        own.path("parameters").forEach(one -> parameters.add(resolved(one)));
        JsonNode body =
                own.path("requestBody").path("content").path("application/json").path("schema");
        return new Operation(
                own.get("operationId").asText(),
                method.toUpperCase(java.util.Locale.ROOT),
                path,
                List.copyOf(parameters),
                Optional.of(body).filter(JsonNode::isObject),
                own.get("responses"));
    }

    List<Operation> operations() {
        return List.copyOf(operations);
    }

    Operation operation(String id) {
        return operations.stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** What a reference points at; anything else as it is. */
    JsonNode resolved(JsonNode node) {
        if (!node.has("$ref")) return node;
        return resolved(document.at(node.get("$ref").asText().substring(1)));
    }

    /** Whether a value fits a schema of the contract. */
    boolean fits(JsonNode schema, JsonNode value) {
        return schema(schema).validate(value).isEmpty();
    }

    private JsonSchema schema(JsonNode schema) {
        return schemas.computeIfAbsent(schema, fresh -> {
            // The rest of the contract stands beside it, so that its references find their targets.
            ObjectNode whole = new ObjectMapper().createObjectNode();
            whole.set("components", document.get("components"));
            whole.setAll((ObjectNode) fresh.deepCopy());
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(whole);
        });
    }

    /** How an answer departs from what the contract says of the operation; nothing when it does not. */
    Optional<String> deviation(Operation operation, Answer answer) {
        JsonNode response = operation.responses().has(Integer.toString(answer.status()))
                ? operation.responses().get(Integer.toString(answer.status()))
                : operation.responses().path(answer.status() >= 400 ? "default" : "none");
        return deviation(resolved(response), answer);
    }

    /** The same for what never came as far as an operation: only a problem document is right. */
    Optional<String> problemDeviation(Answer answer) {
        if (answer.status() < 400) return Optional.of("is answered with " + answer.status());
        return deviation(document.at("/components/responses/Problem"), answer);
    }

    private Optional<String> deviation(JsonNode response, Answer answer) {
        if (!response.isObject()) return Optional.of("status " + answer.status() + " is not in the contract");
        JsonNode content = response.path("content");
        if (content.isMissingNode())
            return answer.body().isEmpty() ? Optional.empty() : Optional.of("a body where the contract has none");
        String type = answer.mediaType();
        if (!content.has(type)) return Optional.of("content type \"" + type + "\" is not in the contract");
        if (type.equals("text/event-stream") || answer.toHead()) return Optional.empty();
        return mismatch(content.get(type).get("schema"), answer);
    }

    private Optional<String> mismatch(JsonNode schema, Answer answer) {
        try {
            JsonNode body = new ObjectMapper().readTree(answer.body());
            if (answer.status() >= 400 && body.path("status").asInt() != answer.status())
                return Optional.of("the problem tells another status");
            return schema(schema).validate(body).stream()
                    .findFirst()
                    .map(message -> "body does not fit the schema: " + message);
        } catch (IOException noJson) {
            return Optional.of("body is no JSON: " + noJson.getMessage());
        }
    }
}
