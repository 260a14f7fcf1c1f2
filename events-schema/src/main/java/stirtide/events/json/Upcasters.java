package stirtide.events.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Steps that bring the data of an older version of an event to the next version. Each is pure and total. There is none
 * yet: every event is in its first version.
 */
public final class Upcasters {
    /** The steps in force. */
    public static final Upcasters IN_FORCE = new Upcasters(Map.of());

    private final Map<String, UnaryOperator<ObjectNode>> steps;

    /** Steps by what they read: name, dot, v and version, such as {@code "BowlBegun.v1"}. */
    public Upcasters(Map<String, UnaryOperator<ObjectNode>> steps) {
        this.steps = Map.copyOf(steps);
    }

    /** Brings data from one version to another, empty when a step is missing or the version is from a newer release. */
    Optional<ObjectNode> bring(String name, int from, int to, ObjectNode data) {
        if (from > to) return Optional.empty();
        var current = data;
        // Ends: the version rises by one each round.
        for (int version = from; version < to; version++) {
            var step = steps.get(name + ".v" + version);
            if (step == null) return Optional.empty();
            current = step.apply(current);
        }
        return Optional.of(current);
    }
}
