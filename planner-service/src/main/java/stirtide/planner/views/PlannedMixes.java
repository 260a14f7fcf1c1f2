package stirtide.planner.views;

import java.time.Instant;
import java.util.Optional;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.day.state.BowlIds;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/** Planned bowls that are still to be mixed, alone or two as one mix. */
final class PlannedMixes {
    private PlannedMixes() {}

    /** Whether a bowl is still to be begun and its service still stands. */
    static boolean isAhead(Day day, String bowl) {
        return day.bowl(bowl).isEmpty()
                && BowlIds.serviceOf(bowl).stream()
                        .mapToObj(day::service)
                        .flatMap(Optional::stream)
                        .anyMatch(ServiceState::standing);
    }

    /** The mix for two bowls that a planned bowl may still be part of. */
    static Optional<PlannedBatch> batchOf(Day day, PlannedBowl bowl) {
        return day.plan()
                .flatMap(plan -> plan.batchOf(bowl.bowl()))
                .filter(batch -> batch.bowlIds().stream().allMatch(id -> isAhead(day, id)));
    }

    /** When mixing begins. */
    static Instant begin(Day day, PlannedBowl bowl) {
        return batchOf(day, bowl).map(PlannedBatch::mixStart).orElse(bowl.mixStart());
    }

    /** The bowl that the mix of a bowl is made in, so that two bowls of one mix stand together. */
    static String mixedIn(Day day, PlannedBowl bowl) {
        return batchOf(day, bowl).map(batch -> batch.bowlIds().get(0)).orElse(bowl.bowl());
    }

    /** A planned bowl with person, scale and times of the mix it is part of. */
    static PlannedBowl timed(Day day, PlannedBowl bowl) {
        return batchOf(day, bowl)
                .map(batch -> bowl.with(copy -> {
                    copy.mixStart(batch.mixStart());
                    copy.mixEnd(batch.mixEnd());
                    copy.lifeEnds(batch.lifeEnds());
                    copy.personId(Optional.of(batch.personId()));
                    copy.scaleId(batch.scaleId());
                }))
                .orElse(bowl);
    }
}
