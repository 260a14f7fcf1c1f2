package stirtide.events.day;

import java.time.Instant;

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
 */
public record StoredEvent(
        String eventId, String day, long revision, Instant time, String actor, String commandId, DayEvent event) {
    /** Actor of events that the service adds by itself. */
    public static final String SERVICE = "service";
}
