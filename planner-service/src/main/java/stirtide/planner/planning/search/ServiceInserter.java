package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.mixing.formula.FormulaAnswer.Weigh;
import stirtide.planner.planning.search.BowlPathStep.Bowl;

/** Feeds one service in what the bar has free, by the path search if it can, by the last resort if it must. */
final class ServiceInserter {
    /** Paths given up because their weights turn out impossible, before the last resort is taken. */
    private static final int MOST_TRIES = 40;

    private final PlanQuestion question;
    private final ShownPlan shown;

    ServiceInserter(PlanQuestion question, ShownPlan shown) {
        this.question = question;
        this.shown = shown;
    }

    /**
     * Feeds a service. Mixes of the plan on show that start before {@code keepBefore} stay, unless the client would then
     * wait longer or need more bowls.
     *
     * @param early minutes by which mixes start earlier than need be, to leave later minutes to others
     */
    ServicePlan insert(ServiceTimeline track, ResourceCalendar bar, int keepBefore, int early) {
        if (track.minutes() == 0) return course(track, List.of(), track.noHolds());
        ServicePlan free = insertWith(track, bar, early);
        List<ShownPlan.Mix> pins = shown.mixes(track.task(), keepBefore);
        while (!pins.isEmpty()) {
            Optional<ServicePlan> kept = byPath(track, bar, pins, early);
            if (kept.isPresent() && !worse(kept.get(), free)) return kept.get();
            pins = pins.subList(0, pins.size() - 1);
        }
        return free;
    }

    private static boolean worse(ServicePlan kept, ServicePlan free) {
        return kept.score().overMinutes() > free.score().overMinutes()
                || kept.score().waitMinutes() > free.score().waitMinutes()
                || kept.portions().size() > free.portions().size();
    }

    private ServicePlan insertWith(ServiceTimeline track, ResourceCalendar bar, int early) {
        return byPath(track, bar, List.of(), early).orElseGet(() -> {
            LastResort.Way way = LastResort.find(track, bar);
            return course(way.track(), way.portions(), way.holds());
        });
    }

    private Optional<ServicePlan> byPath(
            ServiceTimeline track, ResourceCalendar bar, List<ShownPlan.Mix> pins, int early) {
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            Optional<List<Bowl>> bowls = new BowlPathSearch(track, bar, pins, early).find();
            if (bowls.isEmpty()) return Optional.empty();
            Optional<List<MixAssignment>> portions = portions(track, bar, bowls.get(), pins);
            if (portions.isEmpty()) continue;
            ServicePlan course = course(track, portions.get(), track.noHolds());
            return course.firstOver() < 0 ? Optional.of(course) : Optional.empty();
        }
        return Optional.empty();
    }

    ServicePlan course(ServiceTimeline track, List<MixAssignment> portions, int[] holds) {
        return ServicePlan.of(track, portions, holds, SearchScore.moves(shown.moves(track.task(), portions)), question);
    }

    private Optional<List<MixAssignment>> portions(
            ServiceTimeline track, ResourceCalendar bar, List<Bowl> bowls, List<ShownPlan.Mix> pins) {
        List<MixAssignment> portions = new ArrayList<>();
        boolean possible = true;
        for (Bowl bowl : bowls) {
            FeedSegment feed = track.feed(bowl.from());
            var answer = feed.recipe().find(track.need(bowl.from(), bowl.to()), bowl.size(), bowl.scale());
            if (!(answer instanceof Weigh weigh)) {
                feed.recipe().narrow(track.need(bowl.from(), bowl.to()), bowl.size(), bowl.scale());
                possible = false;
                continue;
            }
            int place = portions.size();
            List<Integer> wanted = place < pins.size()
                    ? List.of(pins.get(place).person())
                    : shown.mix(track.task(), place).map(ShownPlan.Mix::person).stream()
                            .toList();
            int person = bar.personFor(bowl.mix(), bowl.mix() + feed.recipe().mixMinutes(), wanted);
            portions.add(new MixAssignment(
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
        return possible ? Optional.of(portions) : Optional.empty();
    }
}
