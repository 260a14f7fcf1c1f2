package stirtide.planner.privacy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.function.UnaryOperator;
import stirtide.events.command.CommandRequest;
import stirtide.events.json.ContractJson;

/** The client references of a request, wherever they stand. */
final class RequestReferences {
    private RequestReferences() {}

    /** The request with every reference replaced; the same object when none changes. */
    static CommandRequest replaced(CommandRequest request, UnaryOperator<String> replacement) {
        JsonNode tree = ContractJson.mapper().valueToTree(request);
        return replaceAll(tree, replacement)
                ? ContractJson.read(ContractJson.write(tree), CommandRequest.class)
                : request;
    }

    private static boolean replaceAll(JsonNode node, UnaryOperator<String> replacement) {
        boolean changed = false;
        if (node instanceof ObjectNode object && object.path("clientRef").isTextual()) {
            String reference = object.path("clientRef").textValue();
            String replaced = replacement.apply(reference);
            changed = !replaced.equals(reference);
            object.set("clientRef", TextNode.valueOf(replaced));
        }
        for (JsonNode child : node) changed |= replaceAll(child, replacement);
        return changed;
    }
}
