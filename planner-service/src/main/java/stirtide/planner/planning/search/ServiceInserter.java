package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.mixing.formula.FormulaAnswer.Weigh;
import stirtide.planner.planning.search.BowlPathStep.Bowl;

/** Feeds one service in what the bar has free, by the path search if it can, by the last resort if it must. */
record ServiceInserter(PlanQuestion question, ShownPlan shown) {
    /** Paths given up because their weights turn out impossible, before the last resort is taken. */
    private static final int MOST_TRIES = 40;

    /**
     * Feeds a service. Mixes of the plan on show that start before {@code keepBefore} stay, unless the client would then
     * wait longer or need more bowls.
     *
     * @param early minutes by which mixes start earlier than need be, to leave later minutes to others
     */
    ServicePlan insert(ServiceTimeline timeline, ResourceCalendar bar, int keepBefore, int early) {
        if (timeline.minutes() == 0) return plan(timeline, List.of(), timeline.noHolds());
        ServicePlan free = insertWith(timeline, bar, early);
        List<ShownPlan.Mix> pins = shown.mixes(timeline.task(), keepBefore);
        while (!pins.isEmpty()) {
            Optional<ServicePlan> kept = byPath(timeline, bar, pins, early);
            if (kept.isPresent() && !worse(kept.get(), free)) return kept.get();
            pins = pins.subList(0, pins.size() - 1);
        }
        return free;
    }

    private static boolean worse(ServicePlan kept, ServicePlan free) {
        return kept.score().overMinutes() > free.score().overMinutes()
                || kept.score().waitMinutes() > free.score().waitMinutes()
                || kept.assignments().size() > free.assignments().size();
    }

    private ServicePlan insertWith(ServiceTimeline timeline, ResourceCalendar bar, int early) {
        return byPath(timeline, bar, List.of(), early).orElseGet(() -> {
            LastResort.Way way = LastResort.find(timeline, bar);
            return plan(way.timeline(), way.assignments(), way.holds());
        });
    }

    private Optional<ServicePlan> byPath(
            ServiceTimeline timeline, ResourceCalendar bar, List<ShownPlan.Mix> pins, int early) {
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            Optional<List<Bowl>> bowls = new BowlPathSearch(timeline, bar, pins, early).find();
            if (bowls.isEmpty()) return Optional.empty();
            Optional<List<MixAssignment>> assignments = assignments(timeline, bar, bowls.get(), pins);
            if (assignments.isEmpty()) continue;
            ServicePlan plan = plan(timeline, assignments.get(), timeline.noHolds());
            return plan.firstOver() < 0 ? Optional.of(plan) : Optional.empty();
        }
        return Optional.empty();
    }

    ServicePlan plan(ServiceTimeline timeline, List<MixAssignment> assignments, int[] holds) {
        return ServicePlan.of(
                timeline, assignments, holds, SearchScore.moves(shown.moves(timeline.task(), assignments)), question);
    }

    private Optional<List<MixAssignment>> assignments(
            ServiceTimeline timeline, ResourceCalendar bar, List<Bowl> bowls, List<ShownPlan.Mix> pins) {
        List<MixAssignment> assignments = new ArrayList<>();
        boolean possible = true;
        for (Bowl bowl : bowls) {
            FeedSegment feed = timeline.feed(bowl.from());
            var answer = feed.recipe().find(timeline.need(bowl.from(), bowl.to()), bowl.size(), bowl.scale());
            if (!(answer instanceof Weigh weigh)) {
                feed.recipe().narrow(timeline.need(bowl.from(), bowl.to()), bowl.size(), bowl.scale());
                possible = false;
                continue;
            }
            int place = assignments.size();
            List<Integer> wanted = place < pins.size()
                    ? List.of(pins.get(place).person())
                    : shown.mix(timeline.task(), place).map(ShownPlan.Mix::person).stream()
                            .toList();
            int person = bar.personFor(bowl.mix(), bowl.mix() + feed.recipe().mixMinutes(), wanted);
            assignments.add(new MixAssignment(
                    feed,
                    bowl.from(),
                    bowl.to(),
                    bowl.mix(),
                    bowl.use(),
                    bowl.end(),
                    person,
                    bowl.scale(),
                    bowl.size(),
                    weigh));
        }
        return possible ? Optional.of(assignments) : Optional.empty();
    }
}
