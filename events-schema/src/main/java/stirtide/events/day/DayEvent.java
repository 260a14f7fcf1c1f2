package stirtide.events.day;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.Plan;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.SetupPiece;
import stirtide.events.setup.Span;
import stirtide.events.setup.SwatchTest;

/**
 * Something that happened on a day. The events of one day form one stream with revisions 1, 2, 3 and so on; the state
 * of the day is their replay. Who did it and when stands in the {@link StoredEvent} around it.
 *
 * <p>Services are numbered 1, 2, 3 in the order of booking. A bowl's id is its service's number and a letter:
 * {@code "7b"} is the second bowl of service 7. The names of the events in JSON are listed in
 * {@code EventTypes}.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "type")
public sealed interface DayEvent {
    /** The day was opened with the directions, people and menu in force. Always the first event. */
    record DayOpened(DaySetup setup) implements DayEvent {}

    /** A service was booked and got its number. */
    record ServiceBooked(int service, Booking booking) implements DayEvent {}

    /** A service that has not started got another start or chair. */
    record ServiceMoved(int service, Instant start, int chair, String reason) implements DayEvent {}

    /** A service will not take place, or ends before its time because the client left. */
    record ServiceCancelled(int service, String reason) implements DayEvent {}

    /** The client is in the chair and the stylist is ready to apply. */
    record ServiceStarted(int service) implements DayEvent {}

    /** All of a zone is applied. */
    record ZoneFinished(int service, String zone) implements DayEvent {}

    /** A section was rinsed: the processing of its zones has ended. */
    record SectionRinsed(int service, int section) implements DayEvent {}

    /** A bowl was begun: lightener and developer meet, the working life runs from here. */
    record BowlBegun(
            String bowl,
            int service,
            int run,
            String personId,
            String scaleId,
            String bowlSizeId,
            BowlFormula planned,
            Instant lifeEnds)
            implements DayEvent {}

    /**
     * What is really in the bowl. A later weighing of the same bowl replaces an earlier one.
     *
     * @param ratioThousandths developer per lightener, in thousandths, rounded to nearest
     * @param insideDirections whether the ratio is inside the window of the directions
     */
    record BowlWeighed(
            String bowl,
            int lightenerMilligrams,
            List<DeveloperPart> developerParts,
            int ratioThousandths,
            boolean insideDirections)
            implements DayEvent {
        public BowlWeighed {
            developerParts = List.copyOf(developerParts);
        }
    }

    /** The bowl is at its chair. */
    record BowlHandedOver(String bowl) implements DayEvent {}

    /** The bowl is empty but for its residue. */
    record BowlFinished(String bowl) implements DayEvent {}

    /** What was left in the bowl was thrown away. */
    record BowlBinned(String bowl, int leftMilligrams, OverMixCause cause) implements DayEvent {}

    /**
     * One mix was begun for two bowls of different clients: the working life of both runs from here.
     *
     * @param shares the bowl it is mixed in, then the bowl that gets its share from it
     * @param planned what is to be weighed, for both together
     */
    record BatchBegun(List<BatchShare> shares, String personId, String scaleId, BowlFormula planned, Instant lifeEnds)
            implements DayEvent {
        public BatchBegun {
            shares = List.copyOf(shares);
        }
    }

    /**
     * What is really in one mix for two bowls, before it is divided. A later weighing replaces an earlier one.
     *
     * @param batch the bowl it is mixed in
     * @param ratioThousandths developer per lightener, in thousandths, rounded to nearest
     * @param insideDirections whether the directions permit the mix for both clients
     */
    record BatchWeighed(
            String batch,
            int lightenerMilligrams,
            List<DeveloperPart> developerParts,
            int ratioThousandths,
            boolean insideDirections)
            implements DayEvent {
        public BatchWeighed {
            developerParts = List.copyOf(developerParts);
        }
    }

    /**
     * A mix was divided: so much was poured into the second bowl, the rest stays in the bowl it was mixed in. A later
     * dividing of the same batch replaces an earlier one.
     *
     * @param batch the bowl it was mixed in
     */
    record BatchDivided(String batch, int pouredMilligrams) implements DayEvent {}

    /** A mix for two bowls was thrown away before it was divided, all of it. */
    record BatchBinned(String batch, OverMixCause cause) implements DayEvent {}

    /** The hours of a person on this day changed; the list replaces the one before. */
    record ShiftChanged(String personId, List<Span> onDuty) implements DayEvent {
        public ShiftChanged {
            onDuty = List.copyOf(onDuty);
        }
    }

    /** One piece of what is in force was added, changed or taken out. */
    record SetupChanged(SetupPiece piece) implements DayEvent {}

    /** A manager pinned the grams planned for a zone of medium hair, in milligrams; learning goes on but is not used. */
    record AllowancePinned(String menuId, String zone, int milligrams) implements DayEvent {}

    /** A manager dropped the pin and all that was learned of a zone before this day. */
    record AllowanceReset(String menuId, String zone) implements DayEvent {}

    /** A product was counted on the shelf: so much is there, in milligrams. */
    record StockCounted(String productId, int milligrams) implements DayEvent {}

    /** Packs of a product came in. */
    record GoodsReceived(String productId, int packs) implements DayEvent {}

    /** It was recorded when a client's strand or patch test was done. */
    record TestRecorded(int service, ClientTests.Kind kind, Instant doneAt) implements DayEvent {}

    /** A service that has not started is to have the formula of the client's last visit, or that of the menu again. */
    record FormulaRepeated(int service, boolean asLastTime) implements DayEvent {}

    /** The level of the hair was recorded in a zone, in tenths; what is empty stays as it was. */
    record LevelsRecorded(
            int service, String zone, Optional<Integer> levelBeforeTenths, Optional<Integer> levelAfterTenths)
            implements DayEvent {}

    /** A test swatch was judged. */
    record SwatchRecorded(SwatchTest swatch) implements DayEvent {}

    /** A pH strip was read in a test mix. */
    record StripRecorded(MixStrip strip) implements DayEvent {}

    /** A manager set how often in a thousand allowances are to be enough; empty: the costs say so again. */
    record AllowanceFractionSet(Optional<Integer> permille) implements DayEvent {}

    /** An earlier action was a mistake; the day is what it would be without that event. */
    record ActionTakenBack(long takenBackRevision) implements DayEvent {}

    /** Whoever a client was is forgotten; the id stood for that client in sealed references and says nothing else. */
    record ClientErased(String clientId) implements DayEvent {}

    /** An alarm was seen. */
    record AlarmAcknowledged(String alarmId) implements DayEvent {}

    /** The day is over: nothing more may happen on it. */
    record DayClosed() implements DayEvent {}

    /** The service drew a plan that stands on all events up to {@link Plan#basedOnRevision()}. */
    record PlanDrawn(Plan plan) implements DayEvent {}

    /**
     * The search for a better plan than the first is over and found none; what it proved is true of the plan on show.
     *
     * @param basedOnRevision newest event the plan on show knows
     * @param rounds rounds of improvement and proof granted
     * @param waitBound proven least wait, if known
     * @param bowlBound proven least number of bowls of plans that wait no longer, if known
     * @param proof in words what is proven
     */
    record PlanKept(
            long basedOnRevision,
            int rounds,
            Optional<Integer> waitBound,
            Optional<Integer> bowlBound,
            List<String> proof)
            implements DayEvent {
        public PlanKept {
            proof = List.copyOf(proof);
        }
    }

    /** The time to begin a planned bowl has come. */
    record BowlDue(String bowl, Instant dueAt) implements DayEvent {}

    /** A planned bowl was not begun in time; the day is planned anew. */
    record BowlLate(String bowl, Instant dueAt) implements DayEvent {}

    /** A live bowl has only few minutes of working life left. */
    record LifeEnding(String bowl, Instant lifeEnds) implements DayEvent {}

    /** A live bowl must no longer be applied. */
    record LifeEnded(String bowl, Instant lifeEnds) implements DayEvent {}
}
