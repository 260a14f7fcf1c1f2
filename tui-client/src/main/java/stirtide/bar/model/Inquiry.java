package stirtide.bar.model;

import java.time.Instant;
import java.util.Optional;
import stirtide.events.plan.AssistantAdvice;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.WalkInAdvice;
import stirtide.events.view.GramsView;
import stirtide.events.view.SwatchView;
import stirtide.events.view.VisitsView;

/**
 * A question to the service, such as what the planner would do, and its answer. Asking changes nothing.
 *
 * @param ask what was asked
 * @param askedNanos monotonic reading when it was asked
 * @param answer the answer, empty while it is being worked out
 */
public record Inquiry(Ask ask, long askedNanos, Optional<Answer> answer) {
    /** What can be asked. */
    public sealed interface Ask {
        /** Which services to move, best first. */
        record Moves() implements Ask {}

        /** What moving one service to that start would do. */
        record Move(int service, Instant start) implements Ask {}

        /** The earliest start of a client without a booking. */
        record WalkIn(String menuId, String length, String density, int chair) implements Ask {}

        /** One more assistant for some time. */
        record Help(Instant from, Instant to) implements Ask {}

        /** Where the grams of the day come from and what they cost. */
        record Grams() implements Ask {}

        /** The results of test swatches and pH strips. */
        record Tests() implements Ask {}

        /** Visits of the client of a service, two side by side; the last two where no days are named. */
        record Visits(int service, Optional<String> first, Optional<String> second) implements Ask {}
    }

    /** What can be answered. */
    public sealed interface Answer {
        record Moves(MoveAdvice advice) implements Answer {}

        record WalkIn(WalkInAdvice advice) implements Answer {}

        record Help(AssistantAdvice advice) implements Answer {}

        record Grams(GramsView view) implements Answer {}

        record Tests(SwatchView view) implements Answer {}

        record Visits(VisitsView view) implements Answer {}

        /** No answer, with the reason. */
        record Failed(String sentence) implements Answer {}
    }
}
