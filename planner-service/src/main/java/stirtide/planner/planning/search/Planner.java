package stirtide.planner.planning.search;

import java.util.List;
import stirtide.events.plan.Plan;
import stirtide.planner.planning.stagger.SearchRounds;

/** Draws the plan of a day. */
public final class Planner {
    /** Rounds of a plan drawn at once: as many as the press of a key leaves time for. */
    private static final int ROUNDS_AT_ONCE = 12;

    private Planner() {}

    /**
     * A plan drawn at once.
     *
     * @param plan the plan
     * @param unbeatable whether more rounds could not find a better one
     */
    public record AtOnce(Plan plan, boolean unbeatable) {}

    /**
     * Draws a plan. There is always one: where no assistant can mix, the stylist does; where nothing may be mixed, a note
     * says why. The same question and rounds give the same plan, which is never worse than the one drawn at once.
     *
     * @param question all that may be known
     * @param rounds rounds of improvement granted, 0 for the first complete plan
     */
    public static Plan draw(PlanQuestion question, int rounds) {
        return draw(question, SearchRounds.of(rounds));
    }

    /**
     * Draws a plan that may be cancelled before it is done.
     *
     * @throws SearchRounds.BrokenOff when the plan is not wanted any more
     */
    public static Plan draw(PlanQuestion question, SearchRounds rounds) {
        List<ServiceTimeline> timelines = ServiceTimelines.of(question);
        ShownPlan shown = new ShownPlan(question);
        PlanDraft atOnce = new PlanSearch(question, timelines, shown).quick(rounds.granted() == 0 ? 0 : ROUNDS_AT_ONCE);
        if (rounds.granted() == 0) return written(question, shown, atOnce, 0);
        PlanDraft searched = new PlanSearch(question, timelines, shown).run(rounds);
        PlanDraft best = searched.score().compareTo(atOnce.score()) < 0 ? searched : atOnce;
        return written(question, shown, best, rounds.granted());
    }

    /**
     * Draws a plan at once: it keeps of the plan on show what still holds, and spends a few rounds only where clients would
     * wait longer than shown.
     *
     * @param question all that may be known
     */
    public static AtOnce atOnce(PlanQuestion question) {
        List<ServiceTimeline> timelines = ServiceTimelines.of(question);
        ShownPlan shown = new ShownPlan(question);
        PlanSearch search = new PlanSearch(question, timelines, shown);
        PlanDraft draft = search.quick(ROUNDS_AT_ONCE);
        return new AtOnce(written(question, shown, draft, ROUNDS_AT_ONCE), search.unbeatable(draft));
    }

    private static Plan written(PlanQuestion question, ShownPlan shown, PlanDraft draft, int rounds) {
        return BatchPairing.join(question, new PlanWriter(question, shown, draft).write(rounds));
    }
}
