package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import stirtide.events.plan.Plan;
import stirtide.planner.planning.floor.FloorEngine;
import stirtide.planner.planning.floor.PlacedBowl;
import stirtide.planner.planning.stagger.SearchRounds;

/** Draws the plan of a day. */
public final class Planner {
    /** Steps of a plan drawn at once: as many as the press of a key leaves time for. */
    private static final int STEPS_AT_ONCE = 40;

    /** Steps at least while the engine has no place for some service. */
    private static final int STEPS_TO_PLACE_ALL = 30;

    /** Steps of the engine for each round granted. */
    private static final int STEPS_PER_ROUND = 25;

    private final PlanQuestion question;
    private final List<ServiceTimeline> timelines;
    private final ShownPlan shown;
    private final FloorTranslation translation;

    private Planner(PlanQuestion question) {
        this.question = question;
        this.timelines = ServiceTimelines.of(question);
        this.shown = new ShownPlan(question);
        this.translation = new FloorTranslation(question, timelines, shown);
    }

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
        return new Planner(question)
                .drawn(rounds, rounds.granted() == 0 ? 0 : STEPS_AT_ONCE)
                .plan();
    }

    /**
     * Draws a plan at once: it keeps of the plan on show what still holds, and searches only for a moment.
     *
     * @param question all that may be known
     */
    public static AtOnce atOnce(PlanQuestion question) {
        return new Planner(question).drawn(SearchRounds.of(0), STEPS_AT_ONCE);
    }

    private AtOnce drawn(SearchRounds rounds, int steps) {
        if (translation.parts().isEmpty() || question.assistants().isEmpty())
            return new AtOnce(written(placed(List.of()), rounds), true);
        int frozenBefore = question.nowMinute() + question.frozenMinutes();
        FloorEngine engine = begun(frozenBefore, steps);
        PlanDraft atOnce = placed(engine.bowls());
        if (engine.score().lateness() > 0 && anyPinned(frozenBefore)) {
            FloorEngine free = begun(question.nowMinute(), steps);
            // Mixes that are about to begin move only if clients wait less for it.
            if (free.score().lateness() < engine.score().lateness()) {
                PlanDraft moved = placed(free.bowls());
                if (moved.score().compareTo(atOnce.score()) < 0) {
                    engine = free;
                    atOnce = moved;
                }
            }
        }
        if (rounds.granted() == 0) return new AtOnce(written(atOnce, rounds), engine.provenLevels() == 3);
        engine.search((long) STEPS_PER_ROUND * rounds.granted(), () -> rounds.another(0));
        PlanDraft searched = placed(engine.bowls());
        return new AtOnce(written(worse(searched, atOnce) ? atOnce : searched, rounds), engine.provenLevels() == 3);
    }

    private FloorEngine begun(int keepBefore, int steps) {
        List<FloorServicePart> parts = translation.parts();
        var bowls = new ArrayList<PlacedBowl>();
        for (int place = 0; place < parts.size(); place++)
            bowls.addAll(parts.get(place).shown(place, question, shown, translation.scales(), keepBefore));
        FloorEngine engine =
                new FloorEngine(translation.day(), translation.conditions(), bowls, new SplittableRandom(seed()));
        engine.begin(steps, Math.max(steps, STEPS_TO_PLACE_ALL));
        return engine;
    }

    /**
     * A seed made from what is asked, so that the same question gives the same plan. Minutes count from now: a change of the clock before
     * changes nothing.
     */
    private long seed() {
        long seed = question.basedOnRevision();
        for (var task : question.services())
            seed = seed * 1_000_003 + task.service() * 97L + task.startMinute() - question.nowMinute();
        return seed;
    }

    private boolean anyPinned(int keepBefore) {
        return timelines.stream()
                .anyMatch(timeline -> !shown.mixes(timeline.task(), keepBefore).isEmpty());
    }

    /** What the engine finds no place for is placed afterwards; that may turn the order of two of its plans. */
    private static boolean worse(PlanDraft searched, PlanDraft atOnce) {
        SearchScore then = searched.score();
        SearchScore now = atOnce.score();
        int order = Integer.compare(then.overMinutes(), now.overMinutes());
        if (order == 0) order = Integer.compare(then.stylistMixes(), now.stylistMixes());
        return (order == 0 ? Integer.compare(then.waitMinutes(), now.waitMinutes()) : order) > 0;
    }

    private PlanDraft placed(List<PlacedBowl> bowls) {
        return new FloorPlacement(question, timelines, shown, translation).draft(bowls);
    }

    private Plan written(PlanDraft draft, SearchRounds rounds) {
        return BatchPairing.join(question, new PlanWriter(question, shown, draft).write(rounds.granted()));
    }
}
