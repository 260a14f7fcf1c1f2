package stirtide.planner.eventlog;

import java.nio.charset.StandardCharsets;
import java.util.List;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.CloudEvent;
import stirtide.events.json.EventReader;
import stirtide.events.json.UnreadableEvent;

/** Events as the bytes that are stored: CloudEvents in their JSON form. */
final class EventEncoder {
    private EventEncoder() {}

    static byte[] of(StoredEvent event) {
        return CloudEvent.of(event).write().getBytes(StandardCharsets.UTF_8);
    }

    static StoredEvent read(byte[] bytes) {
        try {
            return EventReader.read(bytes);
        } catch (UnreadableEvent unreadable) {
            throw new LogFailure(LogFailure.Kind.DAMAGED, String.valueOf(unreadable.getMessage()), unreadable);
        }
    }

    /** Refuses events that do not continue the stream: a mistake of the caller, never of a user. */
    static void requireContinues(String day, long expectedRevision, List<StoredEvent> events) {
        long revision = expectedRevision;
        for (StoredEvent event : events) {
            revision++;
            if (!event.day().equals(day) || event.revision() != revision) {
                throw new IllegalArgumentException("event " + event.day() + " revision " + event.revision()
                        + " does not continue " + day + " at revision " + revision);
            }
        }
    }
}
