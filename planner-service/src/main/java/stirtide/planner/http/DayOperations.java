package stirtide.planner.http;

import io.vertx.core.Future;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.CommandResult;
import stirtide.events.day.StoredEvent;
import stirtide.planner.planning.whatif.WhatIfAnswer;
import stirtide.planner.planning.whatif.WhatIfQuestion;

/** Operations of the planner as the HTTP handlers call them. Called on one context only; listeners are called on it too. */
public interface DayOperations {
    /** What can be shown of a day, each as one record of the contract. */
    enum View {
        /** The day itself, as {@code DayView}. */
        DAY,
        /** What is in force, as {@code SetupView}. */
        SETUP,
        /** Where grams come from and what they cost, as {@code GramsView}. */
        GRAMS,
        /** Results of swatches and strips, as {@code SwatchView}. */
        SWATCHES
    }

    /**
     * Carries out a command once. Fails with {@link ApiException} when nothing could be stored.
     *
     * @param day stream id
     * @param ifMatch revision the sender has seen, if the command is to be taken on that revision only
     * @param role role of the sender, empty on an open service
     */
    Future<CommandAnswer> command(String day, CommandRequest request, Optional<Long> ifMatch, Optional<String> role);

    /** Completes when the day is in memory: at once, unless it is over and has to be read from the log. */
    Future<Void> load(String day);

    /** A view of the day as it is now; empty when the day was never opened. */
    Optional<ShownDay> show(String day, View view);

    /**
     * What to pour next into a live bowl, as {@code PourAdvice}.
     *
     * @param poured what was poured so far, as the contract writes it
     */
    QueryAnswer nextPour(String day, String bowl, String poured);

    /**
     * Earlier visits of the client of a service, as {@code VisitsView}.
     *
     * @param first day of one visit to compare, if named
     * @param second day of the other, if named
     */
    QueryAnswer visits(String day, int service, Optional<LocalDate> first, Optional<LocalDate> second);

    /** A text with sealed client references opened, for callers who may know who clients are. */
    String shown(String text);

    /**
     * What is kept of a client, as {@code ClientRecord} in JSON; empty when no client of that reference is known.
     *
     * @param reference as booked
     * @param salon the only salon to look at, empty for all
     */
    Future<Optional<String>> exportClient(String reference, Optional<String> salon);

    /**
     * Destroys what identifies a client; false when no client of that reference is known.
     *
     * <p>Fails with {@link ApiException} when it cannot be stored.
     */
    Future<Boolean> eraseClient(String reference);

    /**
     * Copies the log as it is now into a new SQLite file while the service goes on.
     *
     * <p>Fails with {@link ApiException} when the log is damaged or the file cannot be written.
     */
    Future<Void> backup(Path file);

    /** Newest revision of every day that was opened, sorted by day. */
    SortedMap<String, Long> revisions();

    /** Events after a revision, in order; empty list when there are none yet. */
    Future<List<StoredEvent>> events(String day, long after, int limit);

    /** Calls the listener after every change of the day or of the clock, until the returned action is run. */
    Runnable listen(String day, Runnable listener);

    /**
     * Plans a hypothetical change; empty when the day was never opened.
     *
     * <p>Fails with {@link ApiException} when too many such questions wait already.
     */
    Future<Optional<WhatIfAnswer>> whatIf(String day, WhatIfQuestion question);

    /** The salon's clock now. */
    ClockReading clock();

    /** Sets the rate of a driven clock, in thousandths of real time; empty on a wall clock. */
    Optional<ClockReading> setRate(int ratePermille);

    /**
     * Moves a driven clock through everything that falls due; empty on a wall clock.
     *
     * <p>Fails with {@link ApiException} when it is too far ahead or too many requests wait for the clock already.
     */
    Future<Optional<ClockReading>> advance(Instant to);

    /** A view ready to be sent: revision of the day, and the view as JSON. */
    record ShownDay(long revision, String json) {}

    /** Answer to a question about one part of a day. */
    sealed interface QueryAnswer {
        /** The answer, as JSON. */
        record Found(String json) implements QueryAnswer {}

        /** There is no such part, or it cannot be asked that. */
        record Refused(String code, String sentence) implements QueryAnswer {}

        /** The day was never opened. */
        record UnknownDay() implements QueryAnswer {}
    }

    /** The clock: its time, its rate in thousandths of real time, and whether it can be driven. */
    record ClockReading(Instant now, int ratePermille, boolean driven) {}

    /** Answer to a command. */
    sealed interface CommandAnswer {
        /** Accepted and durable, now or before. */
        record Done(CommandResult result) implements CommandAnswer {}

        /** The day does not allow it. */
        record Refused(String code, String sentence) implements CommandAnswer {}

        /** The day has moved on to {@code currentRevision}. */
        record Stale(long currentRevision) implements CommandAnswer {}

        /** The command id belongs to another request. */
        record Reused() implements CommandAnswer {}

        /** The day was never opened. */
        record UnknownDay() implements CommandAnswer {}
    }
}
