package stirtide.planner.http;

import stirtide.events.day.StoredEvent;
import stirtide.events.json.ContractJson;

/** Events as they go over the wire. */
final class EventJson {
    private EventJson() {}

    static String of(StoredEvent event) {
        return ContractJson.write(event);
    }
}
