package stirtide.planner.http;

import java.util.IdentityHashMap;
import java.util.Map;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.CloudEvent;

/** JSON texts of the newest events, written once for all listeners that get the same ones. Confined to one context. */
final class EventTextCache {
    private static final int MOST = 64;

    private final Map<StoredEvent, String> texts = new IdentityHashMap<>();

    String of(StoredEvent event) {
        String known = texts.get(event);
        if (known != null) return known;
        if (texts.size() >= MOST) texts.clear();
        String text = text(event);
        texts.put(event, text);
        return text;
    }

    /** An event as a CloudEvent in its JSON form. */
    static String text(StoredEvent event) {
        return CloudEvent.of(event).write();
    }
}
