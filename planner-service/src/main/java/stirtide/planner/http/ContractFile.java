package stirtide.planner.http;

import io.vertx.core.json.JsonObject;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * Writes the contract as the router takes it, as JSON: a part of the build, for to read YAML takes a good part of a start.
 *
 * <p>The router knows no problem documents and no event streams and refuses a contract that names them, so its copy leaves
 * those response bodies out; the published contract has them.
 */
public final class ContractFile {
    static final String NAME = "router-contract.json";

    private static final String PUBLISHED = "/openapi.yaml";
    private static final List<String> UNKNOWN_TO_ROUTER = List.of("application/problem+json", "text/event-stream");

    private ContractFile() {}

    /** Writes it into the folder that is named. */
    public static void main(String[] folder) throws IOException {
        Files.writeString(Path.of(folder[0], NAME), document().encode());
    }

    static JsonObject document() throws IOException {
        try (InputStream yaml = Objects.requireNonNull(ContractFile.class.getResourceAsStream(PUBLISHED), PUBLISHED)) {
            Map<String, Object> document = new Yaml(new SafeConstructor(new LoaderOptions())).load(yaml);
            // Rights are checked by AuthenticationHandler; the router would require handlers of its own for them.
            document.remove("security");
            strip(document);
            return new JsonObject(document);
        }
    }

    private static void strip(Object value) {
        if (value instanceof List<?> list) list.forEach(ContractFile::strip);
        if (!(value instanceof Map<?, ?> map)) return;
        map.values().forEach(ContractFile::strip);
        if (!(map.get("content") instanceof Map<?, ?> content)) return;
        UNKNOWN_TO_ROUTER.forEach(content::remove);
        if (content.isEmpty()) map.remove("content");
    }
}
