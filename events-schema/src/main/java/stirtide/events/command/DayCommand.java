package stirtide.events.command;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;
import stirtide.events.day.OverMixCause;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.SetupPiece;
import stirtide.events.setup.Span;
import stirtide.events.setup.SwatchTest;

/**
 * Something a person asks for. The answer is a list of events or a refusal, never both. In JSON a command is named as its
 * record is.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "type")
public sealed interface DayCommand {
    /** Opens a day and books all its services at once: all of it or nothing. */
    record OpenDay(DaySetup setup, List<Booking> bookings) implements DayCommand {
        public OpenDay {
            bookings = List.copyOf(bookings);
        }
    }

    /** Books one more service, a walk-in for instance. */
    record BookService(Booking booking) implements DayCommand {}

    /** Gives a service that has not started another start, and another chair if one is named. */
    record MoveService(int service, Instant start, Optional<Integer> chair, String reason) implements DayCommand {}

    /** Takes a service off the day, or ends it because the client left. */
    record CancelService(int service, String reason) implements DayCommand {}

    /** Says that the client is in the chair. */
    record StartService(int service) implements DayCommand {}

    /** Says that a zone is applied. */
    record FinishZone(int service, String zone) implements DayCommand {}

    /** Says that a section whose zones are all applied was rinsed. */
    record RinseSection(int service, int section) implements DayCommand {}

    /** Begins to mix a bowl of the plan on show. */
    record BeginBowl(String bowl, String personId) implements DayCommand {}

    /** Records what was weighed into a bowl. */
    record WeighBowl(String bowl, int lightenerMilligrams, List<DeveloperPart> developerParts) implements DayCommand {
        public WeighBowl {
            developerParts = List.copyOf(developerParts);
        }
    }

    /** Hands a weighed bowl over to its chair. */
    record HandOverBowl(String bowl) implements DayCommand {}

    /** Says that a bowl is empty but for its residue. */
    record FinishBowl(String bowl) implements DayCommand {}

    /** Throws away what is left in a bowl. */
    record BinBowl(String bowl, int leftMilligrams, OverMixCause cause) implements DayCommand {}

    /** Begins one mix for two bowls of the plan on show, the bowl it is mixed in first. */
    record BeginBatch(List<String> bowls, String personId) implements DayCommand {
        public BeginBatch {
            bowls = List.copyOf(bowls);
        }
    }

    /** Records what was weighed for both bowls of a batch together; {@code batch} is the bowl it is mixed in. */
    record WeighBatch(String batch, int lightenerMilligrams, List<DeveloperPart> developerParts) implements DayCommand {
        public WeighBatch {
            developerParts = List.copyOf(developerParts);
        }
    }

    /** Records how much was poured into the second bowl of a batch. */
    record DivideBatch(String batch, int pouredMilligrams) implements DayCommand {}

    /** Throws away a mix for two bowls that is not divided yet. */
    record BinBatch(String batch, OverMixCause cause) implements DayCommand {}

    /** Replaces the hours of a person on this day. */
    record ChangeShift(String personId, List<Span> onDuty) implements DayCommand {
        public ChangeShift {
            onDuty = List.copyOf(onDuty);
        }
    }

    /** Adds, changes or takes out one piece of what is in force on this day. For managers, colorists and an empty salon. */
    record ChangeSetup(SetupPiece piece) implements DayCommand {}

    /** Pins the grams planned for a zone, in milligrams. For managers. */
    record PinAllowance(String menuId, String zone, int milligrams) implements DayCommand {}

    /** Drops the pin and all that was learned of a zone before this day. For managers. */
    record ResetAllowance(String menuId, String zone) implements DayCommand {}

    /** Says how much of a product is on the shelf, in milligrams. */
    record CountStock(String productId, int milligrams) implements DayCommand {}

    /** Says that packs of a product came in. */
    record ReceiveGoods(String productId, int packs) implements DayCommand {}

    /** Records when a client's strand or patch test was done. */
    record RecordTest(int service, ClientTests.Kind kind, Instant doneAt) implements DayCommand {}

    /** Asks for the formula of the client's last visit ({@code true}) or for that of the menu ({@code false}). */
    record RepeatFormula(int service, boolean asLastTime) implements DayCommand {}

    /** Records the level of the hair in a zone, in tenths, before, after, or both. */
    record RecordLevels(
            int service, String zone, Optional<Integer> levelBeforeTenths, Optional<Integer> levelAfterTenths)
            implements DayCommand {}

    /** Records a test swatch. */
    record RecordSwatch(SwatchTest swatch) implements DayCommand {}

    /** Records the reading of a pH strip in a test mix. */
    record RecordStrip(MixStrip strip) implements DayCommand {}

    /** Sets how often in a thousand allowances are to be enough, or lets the costs say so again. For managers. */
    record SetAllowanceFraction(Optional<Integer> permille) implements DayCommand {}

    /** Takes back an earlier action of the same person. */
    record TakeBack(long revision) implements DayCommand {}

    /** Says that an alarm was seen. */
    record AcknowledgeAlarm(String alarmId) implements DayCommand {}

    /** Ends the day. */
    record CloseDay() implements DayCommand {}
}
