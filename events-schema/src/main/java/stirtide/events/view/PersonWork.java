package stirtide.events.view;

import java.time.Instant;

/**
 * One piece of work of a person. One mix for two bowls is one piece, named by the service it is mixed in.
 *
 * @param kind what is done
 * @param service service number
 * @param from begin
 * @param to end, after {@code from}
 * @param done whether it is known to be over; otherwise it is planned or going on
 */
public record PersonWork(Kind kind, int service, Instant from, Instant to, boolean done) {
    /** What a person does; carrying is left out where the salon says that others carry. */
    public enum Kind {
        MIXING,
        CARRYING,
        APPLYING
    }
}
