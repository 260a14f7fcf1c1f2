package stirtide.planner.salonfiles.json;

import java.util.HashMap;
import java.util.Map;

/** Ids of one kind, each of which may occur once. */
public final class UniqueIds {
    private final String kind;
    private final Map<String, FieldPath> seen = new HashMap<>();

    /** @param kind what the ids name, such as {@code "person"} */
    public UniqueIds(String kind) {
        this.kind = kind;
    }

    /** Whether an id was taken. */
    public boolean has(String id) {
        return seen.containsKey(id);
    }

    /** Takes an id and refuses it when it was taken before. */
    public void take(String id, FieldPath path) {
        FieldPath first = seen.putIfAbsent(id, path);
        if (first != null)
            path.refuse(
                    FieldText.quoted(id) + " a second time",
                    "an id that no other " + kind + " has; the first stands in " + first.where());
    }
}
