package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import stirtide.mixing.formula.FormulaAnswer.Weigh;
import stirtide.planner.planning.stagger.SearchRounds;
import stirtide.planner.planning.stagger.StaggerEngine;
import stirtide.planner.planning.stagger.StaggerMix;

/**
 * One more start for the search: the stagger engine plans all services whose mixes may move, and what of its plan holds in
 * the product's model is taken over. A client who waits is later from then on, bowls and scales are counted, and zones must
 * not process too long: a service whose bowls do not fit that any more is fed anew around the others.
 */
final class StaggerSeeding {
    private final PlanQuestion question;
    private final List<ServiceTimeline> timelines;
    private final PlanDraft draft;
    private final ResourceCalendar bar;

    StaggerSeeding(PlanQuestion question, List<ServiceTimeline> timelines, PlanDraft draft) {
        this.question = question;
        this.timelines = timelines;
        this.draft = draft;
        this.bar = draft.bar();
    }

    /**
     * Places all services that are not placed yet.
     *
     * @param order the services still to be placed, in the order in which those that do not fit are fed anew
     * @param rounds of the engine
     */
    void place(List<Integer> order, SearchRounds rounds, int keepBefore, long seed) {
        StaggerModel day = new StaggerModel(question, bar);
        for (int place : order) day.add(place, timelines.get(place));
        TreeMap<Integer, List<Planned>> mixes = day.stretches().isEmpty() ? new TreeMap<>() : mixes(day, rounds, seed);
        List<Integer> left = new ArrayList<>();
        for (int place : order)
            plan(timelines.get(place), mixes.getOrDefault(place, List.of()))
                    .ifPresentOrElse(plan -> draft.put(place, plan), () -> left.add(place));
        for (int place : left) draft.insert(place, keepBefore, 0);
    }

    /** A bowl of the engine in minutes of application of its timeline. */
    private record Planned(int from, int to, int mix, int person) {}

    private static TreeMap<Integer, List<Planned>> mixes(StaggerModel day, SearchRounds rounds, long seed) {
        StaggerEngine engine = new StaggerEngine(day.problem(), new SplittableRandom(seed));
        TreeMap<Integer, List<Planned>> byPlace = new TreeMap<>();
        for (StaggerMix mix : engine.improve(rounds::another).mixes()) {
            StaggerModel.Stretch stretch = day.stretches().get(mix.runIndex());
            byPlace.computeIfAbsent(stretch.place(), place -> new ArrayList<>())
                    .add(new Planned(
                            stretch.from(mix.fromMinute()),
                            stretch.to(mix.toMinute()),
                            mix.mixStartMinute(),
                            mix.assistant()));
        }
        byPlace.values().forEach(list -> list.sort(Comparator.comparingInt(Planned::from)));
        return byPlace;
    }

    /** The service with these bowls, or empty when one of them breaks a rule of the product's model. */
    private Optional<ServicePlan> plan(ServiceTimeline timeline, List<Planned> mixes) {
        return BowlSequence.through(
                        timeline,
                        (feed, at, late, before) -> before.size() < mixes.size() && mixes.get(before.size()).from == at
                                ? assignment(timeline, feed, mixes.get(before.size()), late, before)
                                : Optional.empty())
                .filter(assignments -> assignments.size() == mixes.size())
                .map(assignments -> draft.plan(timeline, assignments))
                .filter(plan -> plan.firstOver() < 0);
    }

    private Optional<MixAssignment> assignment(
            ServiceTimeline timeline, FeedSegment feed, Planned mix, int late, List<MixAssignment> before) {
        if (mix.person == StaggerMix.STYLIST) return Optional.empty();
        int mixEnd = mix.mix + feed.recipe().mixMinutes();
        int use = Math.max(timeline.starts()[mix.from] + late, mixEnd + question.handOverMinutes());
        int end = timeline.endOf(mix.to) + use - timeline.starts()[mix.from];
        if (end > mix.mix + feed.recipe().lifeMinutes()) return Optional.empty();
        int need = timeline.need(mix.from, mix.to);
        int clean = end + question.washMinutes();
        for (int size : bar.sizesByResidue()) {
            var bowl = question.bowlSizes().get(size);
            if (need + bowl.residueMilligrams() > bowl.usableMilligrams()) continue;
            if (bar.bowlUntil(size, bar.stillOut(before, size, mix.mix), mix.mix, clean) < clean) continue;
            for (int scale = 0; scale < bar.scaleCount(); scale++)
                if (bar.scaleFree(scale, mix.mix, mixEnd)
                        && apart(before, scale, mix.mix, mixEnd)
                        && feed.recipe().find(need, size, scale) instanceof Weigh weigh)
                    return Optional.of(new MixAssignment(
                            feed, mix.from, mix.to, mix.mix, use, end, mix.person, scale, size, weigh));
        }
        return Optional.empty();
    }

    private static boolean apart(List<MixAssignment> before, int scale, int from, int to) {
        return before.stream().noneMatch(each -> each.scale() == scale && each.mix() < to && from < each.mixEnd());
    }
}
