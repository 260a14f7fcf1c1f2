package stirtide.events.day;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Instant;
import java.util.Optional;

/**
 * An event with its place in the stream.
 *
 * @param eventId unique id of the event (a UUID)
 * @param day stream the event belongs to, salon id and date: {@code "harbor-loft/2027-05-14"}
 * @param revision place in the stream, dense from 1
 * @param time when it happened by the salon's clock, milliseconds
 * @param actor person id, or {@code "service"} for what the service itself noticed
 * @param commandId id of the command that caused it, empty text for the service's own events
 * @param event what happened
 * @param actorRole role the actor had, empty on a service without access control and for its own events
 */
@RecordBuilder
public record StoredEvent(
        String eventId,
        String day,
        long revision,
        Instant time,
        String actor,
        String commandId,
        DayEvent event,
        Optional<String> actorRole) {
    /** Actor of events that the service adds by itself. */
    public static final String SERVICE = "service";

    /** An event of an actor without a known role. */
    public StoredEvent(
            String eventId, String day, long revision, Instant time, String actor, String commandId, DayEvent event) {
        this(eventId, day, revision, time, actor, commandId, event, Optional.empty());
    }

    /** The same event by an actor with a role. */
    public StoredEvent by(Optional<String> role) {
        return StoredEventBuilder.builder(this).actorRole(role).build();
    }
}
