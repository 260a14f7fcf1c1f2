package stirtide.bar.link;

import java.time.Instant;
import java.util.List;
import stirtide.bar.client.ServiceClock;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.model.Inquiry;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;
import stirtide.events.view.PourAdvice;
import stirtide.events.view.SetupView;

/** What the connection to the service reports. */
public sealed interface LinkEvent {
    /** A newer picture of the day. */
    record Seen(DayView view) implements LinkEvent {}

    /** A picture from this machine's disk, shown until the service answers. */
    record Remembered(DayView view) implements LinkEvent {}

    /** The service said that it is still there. */
    record Heard() implements LinkEvent {}

    /** The way is cut; it is tried again. */
    record Cut(String why) implements LinkEvent {}

    /** The salon's clock. */
    record Clock(Instant now, int ratePermille, boolean canBeDriven) implements LinkEvent {
        static Clock of(ServiceClock clock) {
            return new Clock(clock.now(), clock.ratePermille(), clock.driven());
        }
    }

    /** The service took an entry. {@code afterWaiting} says that it had waited on disk. */
    record Taken(DayCommand command, String words, boolean afterWaiting) implements LinkEvent {}

    /** The service did not take an entry; {@code sentence} is the service's own. */
    record Refused(DayCommand command, String words, String sentence) implements LinkEvent {}

    /** What to pour next into a bowl after {@code poured}. */
    record Advised(PourAdvice advice, String poured) implements LinkEvent {}

    /** How many entries wait on disk. */
    record Waiting(int entries) implements LinkEvent {}

    /** What the planner answers. */
    record Tried(Inquiry advice) implements LinkEvent {}

    /** Earlier days the service knows, oldest first. */
    record Past(List<DayOverMix> days) implements LinkEvent {
        public Past {
            days = List.copyOf(days);
        }
    }

    /** What is in force on the day. */
    record InForce(SetupView setup) implements LinkEvent {}

    /** Something about the link a person should know. */
    record Trouble(String words) implements LinkEvent {}

    /** What the service says about who works at this terminal. */
    sealed interface SignOn extends LinkEvent {
        /** No person has signed on at this terminal yet; nothing can be changed before. */
        record Needed() implements SignOn {}

        /**
         * A person has signed on.
         *
         * @param role the service's word for what that person may do
         * @param entriesOfOthers entries on this disk that others made and that wait until they sign on again
         */
        record Begun(String personId, String role, int entriesOfOthers) implements SignOn {
            /** The same with the entries of others counted. */
            Begun with(int others) {
                return new Begun(personId, role, others);
            }
        }

        /**
         * The sign-on was rejected.
         *
         * @param sentence the service's own
         * @param waitSeconds seconds before the service looks at another code, 0 when it looks at once
         */
        record Refused(String sentence, int waitSeconds) implements SignOn {}

        /**
         * The sign-on has ended.
         *
         * @param why what to tell
         * @param waitingEntries entries of that person that stay on disk until the person signs on again
         */
        record Ended(String why, int waitingEntries) implements SignOn {}
    }
}
