package stirtide.planner.http;

import io.vertx.core.Future;
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

/** What the HTTP edge asks of the days. Called on one context only; listeners are called on it too. */
public interface DayOperations {
    /**
     * Carries out a command once.
     *
     * @param day stream id
     * @param ifMatch revision the sender has seen, if the command is to be taken on that revision only
     * @param role role of the sender, empty on an open service
     */
    Future<CommandAnswer> command(String day, CommandRequest request, Optional<Long> ifMatch, Optional<String> role);

    /** Completes when a day that is over is read again from the log; at once for all others. */
    Future<Void> atHand(String day);

    /** The day as it is now, empty when it was never opened. */
    Optional<ShownDay> show(String day);

    /** What is in force on the day, as {@code SetupView} in JSON; empty when it was never opened. */
    Optional<ShownDay> setup(String day);

    /**
     * What to pour next into a live bowl.
     *
     * @param poured what was poured so far, as the contract writes it
     */
    PourAnswer nextPour(String day, String bowl, String poured);

    /** Where grams come from and what they cost, as {@code GramsView} in JSON; empty when the day was never opened. */
    Optional<ShownDay> grams(String day);

    /** What swatches and strips tell, as {@code SwatchView} in JSON; empty when the day was never opened. */
    Optional<ShownDay> swatches(String day);

    /**
     * What is remembered of the client of a service.
     *
     * @param first day of one visit to compare, if named
     * @param second day of the other, if named
     */
    VisitsAnswer visits(String day, int service, Optional<LocalDate> first, Optional<LocalDate> second);

    /** A text with sealed client references opened, for those who may know who clients are. */
    String shown(String text);

    /**
     * What is kept of a client, as {@code ClientRecord} in JSON; empty when nobody of that reference is known.
     *
     * @param reference as booked
     * @param salon the only salon to look at, empty for all
     */
    Future<Optional<String>> clientRecord(String reference, Optional<String> salon);

    /**
     * Destroys what says who a client is; whether anybody of that reference was known.
     *
     * <p>Fails with {@link ApiException} when it cannot be stored.
     */
    Future<Boolean> eraseClient(String reference);

    /** Newest revision of every day that was opened, sorted by day. */
    SortedMap<String, Long> revisions();

    /** Events after a revision, in order; empty list when there are none yet. */
    Future<List<StoredEvent>> events(String day, long after, int limit);

    /** Calls the listener after every change of the day or of the clock, until the answer is run. */
    Runnable listen(String day, Runnable listener);

    /**
     * What would happen if, drawn beside the day's work; empty when the day was never opened.
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
     * <p>Fails with {@link ApiException} when it is too far ahead or too many wait for the clock already.
     */
    Future<Optional<ClockReading>> advance(Instant to);

    /** A day ready to be sent: revision and {@code DayView} or {@code SetupView} as JSON. */
    record ShownDay(long revision, String json) {}

    /** Answer about a pour. */
    sealed interface PourAnswer {
        /** What to do, as {@code PourAdvice} in JSON. */
        record Advised(String json) implements PourAnswer {}

        /** There is no such bowl to pour into. */
        record Refused(String code, String sentence) implements PourAnswer {}

        /** The day was never opened. */
        record Unknown() implements PourAnswer {}
    }

    /** Answer about visits. */
    sealed interface VisitsAnswer {
        /** What is remembered, as {@code VisitsView} in JSON. */
        record Told(String json) implements VisitsAnswer {}

        /** There is no such service. */
        record Refused(String code, String sentence) implements VisitsAnswer {}

        /** The day was never opened. */
        record Unknown() implements VisitsAnswer {}
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
        record Unknown() implements CommandAnswer {}

        /** Nothing is stored until an operator has looked: the log is damaged or its disk has failed. */
        record ReadOnly() implements CommandAnswer {}

        /** Nothing was stored, for a reason that passes; {@code full} when it is the disk. */
        record NotNow(boolean full, String sentence) implements CommandAnswer {}
    }
}
