package stirtide.planner.service;

import io.vertx.core.Future;
import java.time.Instant;
import java.util.Optional;

/** Records everything that falls due on all days, one instant after the other. */
record CatchUp(SalonClock clock, DayRegistry days) {
    /**
     * Completes when all days are planned. On a driven clock better plans are waited for, so that the same steps give the
     * same events; on a wall clock they are not.
     */
    Future<Void> settled() {
        return Future.join(days.loaded().stream()
                        .map(LoadedDay::plans)
                        .map(plans -> clock instanceof DrivenClock ? plans.settled() : plans.planned())
                        .toList())
                .mapEmpty();
    }

    /**
     * Steps through every instant at which something falls due, with all plans drawn at each.
     *
     * @param coarseUntil what fell due up to here is recorded at once, without plans in between
     */
    Future<Void> walk(Instant to, Instant coarseUntil) {
        return settled().compose(settled -> {
            Optional<Instant> next = days.loaded().stream()
                    .flatMap(day -> day.nextAt().stream())
                    .min(Instant::compareTo)
                    .filter(at -> !at.isAfter(to));
            if (next.isEmpty()) return Future.succeededFuture();
            if (clock instanceof DrivenClock driven) driven.moveTo(next.get());
            Instant at = next.get().isBefore(coarseUntil) ? coarseUntil : next.get();
            return noteDue(at).compose(noted -> walk(to, coarseUntil));
        });
    }

    private Future<Void> noteDue(Instant at) {
        return Future.join(days.loaded().stream()
                        .map(day -> day.actor().step(() -> day.actor().noteDue(at)))
                        .toList())
                .mapEmpty();
    }
}
