package stirtide.planner.plan;

import java.util.List;
import stirtide.events.plan.Plan;

/** Draws the plan of a day. */
public final class Planner {
    private Planner() {}

    /**
     * Draws a plan. There is always one: where no assistant can mix, the stylist does; where nothing may be mixed, a note
     * says why. The same question and rounds give the same plan.
     *
     * @param question all that may be known
     * @param rounds rounds of improvement granted, 0 for the first complete plan
     */
    public static Plan draw(PlanQuestion question, int rounds) {
        List<Track> tracks = Tracks.of(question);
        Shown shown = new Shown(question);
        Draft draft = new Search(question, tracks, shown).run(rounds);
        return Batches.join(question, new PlanWriter(question, shown, draft).write(rounds));
    }
}
