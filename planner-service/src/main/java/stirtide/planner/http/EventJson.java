package stirtide.planner.http;

import stirtide.events.day.StoredEvent;
import stirtide.events.json.CloudEvent;

/** Events as they go over the wire: CloudEvents in their JSON form. */
final class EventJson {
    private EventJson() {}

    static String of(StoredEvent event) {
        return CloudEvent.of(event).write();
    }
}
