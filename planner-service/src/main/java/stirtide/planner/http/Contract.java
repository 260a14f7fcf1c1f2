package stirtide.planner.http;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import io.vertx.core.json.JsonObject;
import io.vertx.openapi.contract.OpenAPIContract;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * Loads the contract for the router. The router knows no problem documents and no event streams and refuses a contract
 * that names them, so its copy leaves those response bodies out; the published contract has them.
 */
final class Contract {
    private static final String FILE = "openapi.yaml";
    private static final List<String> UNKNOWN_TO_ROUTER = List.of("application/problem+json", "text/event-stream");

    private Contract() {}

    static Future<OpenAPIContract> load(Vertx vertx) {
        return vertx.fileSystem()
                .readFile(FILE)
                .compose(yaml -> vertx.executeBlocking(() -> withoutUnknown(yaml.toString())))
                .compose(contract -> OpenAPIContract.from(vertx, contract));
    }

    private static JsonObject withoutUnknown(String yaml) {
        Map<String, Object> document = new Yaml(new SafeConstructor(new LoaderOptions())).load(yaml);
        // Who may do what is the doorkeeper's; the router would want handlers of its own for it.
        document.remove("security");
        strip(document);
        return new JsonObject(document);
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
