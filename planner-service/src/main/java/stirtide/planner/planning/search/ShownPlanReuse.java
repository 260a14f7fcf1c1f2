package stirtide.planner.planning.search;

import java.util.List;
import java.util.Optional;
import stirtide.events.plan.PlannedBowl;
import stirtide.mixing.formula.FormulaAnswer.Weigh;

/** Takes a service over from the plan on show as it is, when nothing that matters to it has changed. */
final class ShownPlanReuse {
    private final ServiceTimeline timeline;
    private final ResourceCalendar bar;
    private final PlanQuestion question;
    private final ShownPlan shown;

    private ShownPlanReuse(ServiceTimeline timeline, ResourceCalendar bar, ShownPlan shown) {
        this.timeline = timeline;
        this.bar = bar;
        this.question = bar.question();
        this.shown = shown;
    }

    /** The service as shown, or empty when a bowl of it cannot be mixed, carried and used exactly so any more. */
    static Optional<ServicePlan> of(ServiceTimeline timeline, ResourceCalendar bar, ShownPlan shown) {
        ShownPlanReuse keeping = new ShownPlanReuse(timeline, bar, shown);
        return BowlSequence.through(timeline, keeping::bowl)
                .map(assignments ->
                        ServicePlan.of(timeline, assignments, timeline.noHolds(), SearchScore.moves(0), bar.question()))
                .filter(plan -> plan.score().overMinutes() == 0);
    }

    private Optional<MixAssignment> bowl(FeedSegment feed, int at, int late, List<MixAssignment> before) {
        return shown.bowl(ShownPlan.idOf(timeline.task(), before.size()))
                .flatMap(bowl -> assignment(feed, bowl, at, late, before));
    }

    private Optional<MixAssignment> assignment(
            FeedSegment feed, PlannedBowl bowl, int at, int late, List<MixAssignment> before) {
        Optional<ShownPlan.Mix> known = shown.mixOf(bowl);
        int size = shown.sizeOf(bowl);
        if (known.isEmpty() || size < 0 || bowl.run() != feed.run()) return Optional.empty();
        ShownPlan.Mix mix = known.get();
        int mixMinutes = feed.recipe().mixMinutes();
        int use = Math.max(timeline.starts()[at] + late, mix.start() + mixMinutes + question.handOverMinutes());
        int end = question.minuteOf(bowl.neededTo());
        int to = at + 1;
        int shift = use - timeline.starts()[at];
        while (to < feed.to() && timeline.endOf(to) + shift < end) to++;
        boolean same = use == question.minuteOf(bowl.neededFrom())
                && end == timeline.endOf(to) + shift
                && end <= mix.start() + feed.recipe().lifeMinutes()
                && timeline.need(at, to) == bowl.neededMilligrams();
        if (!same || !free(mix, mixMinutes, size, end, before)) return Optional.empty();
        if (!(feed.recipe().find(timeline.need(at, to), size, mix.scale()) instanceof Weigh weigh))
            return Optional.empty();
        return Optional.of(
                new MixAssignment(feed, at, to, mix.start(), use, end, mix.person(), mix.scale(), size, weigh));
    }

    private boolean free(ShownPlan.Mix mix, int mixMinutes, int size, int end, List<MixAssignment> before) {
        int earliest = before.isEmpty()
                ? question.nowMinute()
                : before.get(before.size() - 1).mixEnd();
        int clean = end + question.washMinutes();
        return mix.start() >= Math.max(earliest, question.nowMinute())
                && bar.personFree(mix.person(), mix.start(), mix.start() + mixMinutes)
                && bar.scaleFree(mix.scale(), mix.start(), mix.start() + mixMinutes)
                && bar.bowlUntil(size, bar.stillOut(before, size, mix.start()), mix.start(), clean) >= clean;
    }
}
