package stirtide.planner.planning.bounds;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import stirtide.events.day.DayEvent;
import stirtide.events.day.DayEvent.PlanDrawn;
import stirtide.events.day.DayEvent.PlanKept;
import stirtide.events.plan.Plan;
import stirtide.events.plan.Plan.PlanTotals;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.Planner;
import stirtide.planner.planning.stagger.SearchRounds;

/**
 * Plans in two steps: one within the press of a key, then a better one if rounds of search find it. Both answer the same
 * question, so both list what differs from the plan that was on show before, and both are functions of the events.
 */
public final class TwoStepPlanner {
    private TwoStepPlanner() {}

    /**
     * The plan to be shown at once. It names the rounds of the second step; none where that could find nothing better and
     * prove nothing more.
     *
     * @param question all that may be known
     * @param rounds rounds of improvement and of proof granted to the second step, 0 for none
     */
    public static Plan first(PlanQuestion question, int rounds) {
        Planner.AtOnce drawn = Planner.atOnce(question);
        Plan plan = BoundedPlanner.prove(question, drawn.plan(), SearchRounds.of(0));
        boolean done = drawn.unbeatable() && tight(plan.totals());
        return rounds == 0 || done ? plan : plan.first(rounds);
    }

    private static boolean tight(PlanTotals totals) {
        return totals.waitBound().filter(least -> least == totals.waitMinutes()).isPresent()
                && totals.bowlBound()
                        .filter(least -> least == totals.bowlCount())
                        .isPresent();
    }

    /**
     * What the second step adds: a better plan whole, or the same with more reasons for its bowls; else that the first
     * is kept, with what was proved of it.
     *
     * @param question the question the first plan answers
     * @param first that plan
     * @param breakOff asked again and again; once it says so, no answer is wanted any more
     * @throws SearchRounds.BrokenOff when no answer is wanted any more
     */
    public static DayEvent second(PlanQuestion question, Plan first, BooleanSupplier breakOff) {
        int rounds = first.roundsToCome().orElse(0);
        Plan searched = BoundedPlanner.draw(question, new SearchRounds(rounds, breakOff));
        boolean sameReasons =
                searched.totals().bowlReasons().equals(first.totals().bowlReasons());
        if (!searched.sameWork(first) || !sameReasons) return new PlanDrawn(searched);
        Optional<Integer> wait =
                larger(first.totals().waitBound(), searched.totals().waitBound());
        Optional<Integer> bowls =
                larger(first.totals().bowlBound(), searched.totals().bowlBound());
        return new PlanKept(
                first.basedOnRevision(),
                rounds,
                wait,
                bowls,
                wait.isPresent() && bowls.isPresent()
                        ? BoundedPlanner.sentences(first.totals(), wait.get(), bowls.get())
                        : first.totals().proof());
    }

    private static Optional<Integer> larger(Optional<Integer> one, Optional<Integer> other) {
        return Stream.of(one, other).flatMap(Optional::stream).max(Integer::compare);
    }
}
