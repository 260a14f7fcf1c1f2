package stirtide.planner.planning.search;

import java.util.List;
import java.util.Optional;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;

/**
 * A stretch of a run whose zones may share bowls: minutes {@code from} to {@code to} of its timeline.
 *
 * @param run number of the run
 * @param from first minute of application, counted over the service
 * @param to minute after the last
 * @param recipe what is mixed for it
 * @param live bowls begun already that feed it first
 * @param refusal why nothing may be mixed for it, if so
 */
record FeedSegment(int run, int from, int to, FeedFormula recipe, List<LiveSupply> live, Optional<Refusal> refusal) {
    /** Why nothing may be mixed, and what helps. */
    record Refusal(String reason, String whatHelps) {}
}
