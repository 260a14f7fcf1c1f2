package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import stirtide.mixing.formula.FormulaAnswer.Weigh;
import stirtide.planner.planning.floor.PlacedBowl;

/**
 * Takes the bowls of the floor engine over into a draft: names their scales and weighs them. Services that the engine found no place for
 * are fed in what is free then, by the stylist if need be.
 */
final class FloorPlacement {
    private final PlanQuestion question;
    private final List<ServiceTimeline> timelines;
    private final ShownPlan shown;
    private final FloorTranslation translation;
    private final ResourceCalendar bar;
    private final int now;

    FloorPlacement(
            PlanQuestion question, List<ServiceTimeline> timelines, ShownPlan shown, FloorTranslation translation) {
        this.question = question;
        this.timelines = timelines;
        this.shown = shown;
        this.translation = translation;
        this.bar = new ResourceCalendar(question);
        this.now = question.nowMinute();
    }

    PlanDraft draft(List<PlacedBowl> bowls) {
        Map<Integer, ServicePlan> plans = new TreeMap<>();
        Map<Integer, List<MixAssignment>> assignments =
                assignments(WorkShares.share(question, translation, shown, bowls));
        for (int place = 0; place < timelines.size(); place++) {
            List<MixAssignment> own = assignments.getOrDefault(place, List.of());
            ServicePlan plan =
                    plan(timelines.get(place), own, timelines.get(place).noHolds());
            if (plan.complete() && plan.firstOver() < 0) put(plans, place, plan);
        }
        IntStream.range(0, timelines.size())
                .filter(place -> !plans.containsKey(place))
                .boxed()
                .sorted(Comparator.comparingInt(place -> firstMinute(timelines.get(place))))
                .toList()
                .forEach(place -> {
                    LastResort.Way way = LastResort.find(timelines.get(place), bar);
                    put(plans, place, plan(way.timeline(), way.assignments(), way.holds()));
                });
        return new PlanDraft(List.copyOf(plans.values()), bar);
    }

    private static int firstMinute(ServiceTimeline timeline) {
        return timeline.minutes() == 0 ? 0 : timeline.starts()[0];
    }

    private void put(Map<Integer, ServicePlan> plans, int place, ServicePlan plan) {
        plan.assignments().forEach(bar::take);
        plans.put(place, plan);
    }

    private ServicePlan plan(ServiceTimeline timeline, List<MixAssignment> assignments, int[] holds) {
        return ServicePlan.of(
                timeline, assignments, holds, SearchScore.moves(shown.moves(timeline.task(), assignments)), question);
    }

    /** Bowls of each service by its place in the question; of a service with a bowl that cannot be weighed only those before it. */
    private Map<Integer, List<MixAssignment>> assignments(List<PlacedBowl> bowls) {
        Map<Integer, List<MixAssignment>> assignments = new TreeMap<>();
        int[] freeFrom = new int[question.scales().size()];
        for (int scale = 0; scale < freeFrom.length; scale++)
            freeFrom[scale] = translation.scales().busyUntil(scale);
        for (PlacedBowl bowl : bowls.stream()
                .sorted(Comparator.comparingInt(PlacedBowl::mixStart))
                .toList()) {
            FloorServicePart part = translation.parts().get(bowl.service());
            List<MixAssignment> own = assignments.computeIfAbsent(part.place(), key -> new ArrayList<>());
            int wanted = shown.mix(part.timeline().task(), own.size())
                    .map(ShownPlan.Mix::scale)
                    .orElse(-1);
            int scale = scale(bowl, freeFrom, wanted);
            freeFrom[scale] =
                    now + bowl.mixStart() + part.feed(bowl.from()).recipe().mixMinutes();
            assignment(part, bowl, scale).ifPresent(own::add);
        }
        return assignments;
    }

    /** The wanted scale if it is free, else another of the kind: there is one, since the floor counts them. */
    private int scale(PlacedBowl bowl, int[] freeFrom, int wanted) {
        List<Integer> alike = translation.scales().of(bowl.scale());
        if (alike.contains(wanted) && freeFrom[wanted] <= now + bowl.mixStart()) return wanted;
        return alike.stream()
                .filter(scale -> freeFrom[scale] <= now + bowl.mixStart())
                .max(Comparator.comparingInt(scale -> freeFrom[scale]))
                .orElseThrow();
    }

    private Optional<MixAssignment> assignment(FloorServicePart part, PlacedBowl bowl, int scale) {
        int from = part.minutes()[bowl.from()];
        int to = part.end(bowl.to());
        ServiceTimeline timeline = part.timeline();
        FeedSegment feed = part.feed(bowl.from());
        return feed.recipe().find(timeline.need(from, to), bowl.size(), scale) instanceof Weigh weigh
                ? Optional.of(new MixAssignment(
                        feed,
                        from,
                        to,
                        now + bowl.mixStart(),
                        now + bowl.useStart(),
                        timeline.endOf(to) + now + bowl.useStart() - timeline.starts()[from],
                        bowl.assistant(),
                        scale,
                        bowl.size(),
                        weigh))
                : Optional.empty();
    }
}
