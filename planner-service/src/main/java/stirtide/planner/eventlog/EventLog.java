package stirtide.planner.eventlog;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import stirtide.events.day.StoredEvent;

/**
 * The streams of all days. Revisions of a stream are dense from 1. Implementations are used by one thread at a time.
 * Every method throws {@link LogFailure} when the store behind it does not work.
 */
public interface EventLog extends AutoCloseable {
    /** Command id of events that no command caused. */
    String NO_COMMAND = "";

    /** Largest number of events one {@link #read} gives. */
    int READ_LIMIT = 500;

    /**
     * Stores the events of one command, all or none, and answers when they are durable.
     *
     * @param day stream id, {@code "salonId/date"}
     * @param expectedRevision revision the caller decided upon: the newest of the stream, 0 when it has none
     * @param commandId id of the command, or {@link #NO_COMMAND}
     * @param requestDigest digest of the whole request; empty with {@link #NO_COMMAND}
     * @param events events with revisions {@code expectedRevision + 1} and so on; may be empty for a command that
     *     changes nothing
     * @throws IllegalArgumentException when the revisions or the day of the events do not fit
     */
    Append append(String day, long expectedRevision, String commandId, byte[] requestDigest, List<StoredEvent> events);

    /** What became of a command, if the stream knows it. */
    Optional<KnownCommand> command(String day, String commandId);

    /**
     * Events of a stream in order.
     *
     * @param after revision after which to read, 0 for all
     * @param limit largest number wanted, 1 to {@link #READ_LIMIT}
     */
    List<StoredEvent> read(String day, long after, int limit);

    /** Ids of all streams, sorted. */
    List<String> days();

    /** Newest revision of a stream, 0 when it has no event. */
    long head(String day);

    /** Newest revision of a stream and the digest over all its events, as text: while it is the same, so are they. */
    String seal(String day);

    /** All streams, sorted, each with its seal. */
    SortedMap<String, String> seals();

    /** Holds every event of a stream against its digest. A damage shows in {@link #readOnly}. */
    default void check(String day) {}

    /** Looks whether the store is still where it was opened. If not, it shows in {@link #readOnly}. */
    default void checkPlace() {}

    /** Why nothing can be stored any more, as a sentence; empty while all is well. May be asked from any thread. */
    default Optional<String> readOnly() {
        return Optional.empty();
    }

    /** Reads the whole log and names every event that is changed, missing or out of place; empty when all is well. */
    List<Damage> verify();

    @Override
    void close();

    /** Answer to an append. */
    sealed interface Append {
        /** Stored now. Both revisions are the events'; {@code first > last} when there was none. */
        record Appended(long first, long last) implements Append {}

        /** The same command was stored before; nothing new was stored. */
        record Repeated(long first, long last) implements Append {}

        /** The stream has moved on; {@code actual} is its newest revision. Nothing was stored. */
        record Conflict(long actual) implements Append {}

        /** The command id belongs to another request. Nothing was stored. */
        record Reused() implements Append {}
    }

    /** A command that was stored: digest of its request, first and last revision of its events. */
    record KnownCommand(byte[] requestDigest, long first, long last) {
        /** Answer to an append with the id of this command and the digest of its request. */
        Append answer(byte[] digest) {
            return Arrays.equals(requestDigest, digest) ? new Append.Repeated(first, last) : new Append.Reused();
        }
    }

    /**
     * Something wrong with a stored stream.
     *
     * @param day stream, or the name of the file when no stream can be named
     * @param revision first revision concerned, 0 when unknown
     * @param what what is wrong
     */
    record Damage(String day, long revision, String what) {
        @Override
        public String toString() {
            return revision == 0 ? day + ": " + what : day + " revision " + revision + ": " + what;
        }
    }
}
