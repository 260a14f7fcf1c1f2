package stirtide.bar.link;

import java.time.Instant;
import java.util.List;
import stirtide.bar.scene.Advice;
import stirtide.bar.scene.PastDay;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;
import stirtide.events.view.PourAdvice;
import stirtide.events.view.SetupView;

/** What the link tells the desk. */
public sealed interface LinkNews {
    /** A newer picture of the day. */
    record Seen(DayView view) implements LinkNews {}

    /** A picture from this machine's disk, shown until the service answers. */
    record Remembered(DayView view) implements LinkNews {}

    /** The service said that it is still there. */
    record Heard() implements LinkNews {}

    /** The way is cut; it is tried again. */
    record Cut(String why) implements LinkNews {}

    /** The salon's clock. */
    record Clock(Instant now, int ratePermille, boolean canBeDriven) implements LinkNews {}

    /** The service took an entry. {@code afterWaiting} says that it had waited on disk. */
    record Taken(DayCommand command, String words, boolean afterWaiting) implements LinkNews {}

    /** The service did not take an entry; {@code sentence} is the service's own. */
    record Refused(DayCommand command, String words, String sentence) implements LinkNews {}

    /** What to pour next into a bowl after {@code poured}. */
    record Advised(PourAdvice advice, String poured) implements LinkNews {}

    /** How many entries wait on disk. */
    record Waiting(int entries) implements LinkNews {}

    /** What the planner answers. */
    record Tried(Advice advice) implements LinkNews {}

    /** Earlier days the service knows, oldest first. */
    record Past(List<PastDay> days) implements LinkNews {
        public Past {
            days = List.copyOf(days);
        }
    }

    /** What is in force on the day. */
    record InForce(SetupView setup) implements LinkNews {}

    /** Something about the link a person should know. */
    record Trouble(String words) implements LinkNews {}

    /** What the service says about who works at this terminal. */
    sealed interface SignOn extends LinkNews {
        /** This is a terminal at which nobody has signed on; nothing can be changed before. */
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
         * Nobody was signed on.
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
