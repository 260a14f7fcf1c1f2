package stirtide.planner.http;

import io.vertx.core.buffer.Buffer;
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
import java.util.Objects;

/**
 * Reads the contract for the router, as {@link ContractFile} has written it.
 *
 * <p>The library's own way would hold the contract against the schema of all contracts at every start, which takes as
 * long as the rest of a start. It is the same contract every time: {@code ContractTest} reads it the library's way.
 */
final class ContractReader {
    private static final String BASE = "app://";

    private ContractReader() {}

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
        String file = "/" + ContractFile.NAME;
        try (InputStream json = Objects.requireNonNull(ContractReader.class.getResourceAsStream(file), file)) {
            return new JsonObject(Buffer.buffer(json.readAllBytes()));
        }
    }
}
