package stirtide.planner.http;

import io.vertx.core.json.JsonObject;
import io.vertx.json.schema.Draft;
import io.vertx.json.schema.JsonSchema;
import io.vertx.json.schema.JsonSchemaOptions;
import io.vertx.json.schema.OutputFormat;
import io.vertx.json.schema.SchemaRepository;
import io.vertx.openapi.contract.OpenAPIContract;
import io.vertx.openapi.contract.OpenAPIVersion;
import io.vertx.openapi.contract.impl.OpenAPIContractImpl;
import io.vertx.openapi.impl.OpenAPIFormatValidator;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * Reads the contract for the router. The router knows no problem documents and no event streams and refuses a contract
 * that names them, so its copy leaves those response bodies out; the published contract has them.
 *
 * <p>The library's own way would hold the contract against the schema of all contracts at every start, which takes as
 * long as the rest of a start. It is the same contract every time: {@code ContractTest} reads it the library's way.
 */
final class Contract {
    private static final String FILE = "/openapi.yaml";
    private static final String BASE = "app://";
    private static final List<String> UNKNOWN_TO_ROUTER = List.of("application/problem+json", "text/event-stream");

    private Contract() {}

    static OpenAPIContract read() throws IOException {
        JsonObject document = document();
        JsonSchemaOptions options = new JsonSchemaOptions()
                .setDraft(Draft.DRAFT202012)
                .setBaseUri(BASE)
                .setOutputFormat(OutputFormat.Basic);
        SchemaRepository schemas = SchemaRepository.create(options, new OpenAPIFormatValidator());
        schemas.dereference(JsonSchema.of(document));
        return new OpenAPIContractImpl(schemas.resolve(document), OpenAPIVersion.V3_1, schemas);
    }

    /** The contract as the router can take it. */
    static JsonObject document() throws IOException {
        try (InputStream yaml = Objects.requireNonNull(Contract.class.getResourceAsStream(FILE), FILE)) {
            Map<String, Object> document = new Yaml(new SafeConstructor(new LoaderOptions())).load(yaml);
            // Who may do what is the doorkeeper's; the router would want handlers of its own for it.
            document.remove("security");
            strip(document);
            return new JsonObject(document);
        }
    }

    private static void strip(Object value) {
        if (value instanceof List<?> list) list.forEach(Contract::strip);
        if (!(value instanceof Map<?, ?> map)) return;
        map.values().forEach(Contract::strip);
        if (!(map.get("content") instanceof Map<?, ?> content)) return;
        UNKNOWN_TO_ROUTER.forEach(content::remove);
        if (content.isEmpty()) map.remove("content");
    }
}
