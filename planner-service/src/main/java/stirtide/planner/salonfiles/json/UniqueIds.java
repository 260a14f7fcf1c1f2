package stirtide.planner.salonfiles.json;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Ids of one kind, each of which may occur once. */
final class UniqueIds {
    private final String kind;
    private final Map<String, LocatedValue> seen = new LinkedHashMap<>();

    /** @param kind what the ids name, such as {@code "person"} */
    UniqueIds(String kind) {
        this.kind = kind;
    }

    /** Takes an id and refuses it when it was taken before. */
    void take(LocatedValue id) {
        LocatedValue first = seen.putIfAbsent(id.node().textValue(), id);
        if (first == null) return;
        id.refuse(
                id.shown() + " a second time",
                "an id that no other " + kind + " has; the first stands in "
                        + first.json().source().name() + " " + first.pointer());
    }

    /** Refuses an id that was not taken, and says whether it was. */
    boolean has(LocatedValue id) {
        if (seen.containsKey(id.node().textValue())) return true;
        id.refuse(known());
        return false;
    }

    Set<String> all() {
        return seen.keySet();
    }

    /** What would be accepted. */
    String known() {
        return "one of the " + kind + " ids " + String.join(", ", seen.keySet());
    }
}
