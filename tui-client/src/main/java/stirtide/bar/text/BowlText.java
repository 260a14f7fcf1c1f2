package stirtide.bar.text;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.view.DayView;

/** Bowls in words. */
public final class BowlText {
    private BowlText() {}

    /**
     * The zones a live bowl is for by the plan on show: of those it may still be used for, the ones that begin before the
     * next bowl of its service is needed; all of them where the plan has no next bowl or does not say.
     */
    public static List<String> zones(DayView.LiveBowl bowl, DayView view) {
        Optional<Instant> next = view.queue().stream()
                .map(DayView.QueuedBowl::bowl)
                .filter(queued -> queued.service() == bowl.service())
                .map(PlannedBowl::neededFrom)
                .min(Comparator.naturalOrder());
        if (next.isEmpty()) return bowl.zones();
        List<String> before = view.service(bowl.service()).stream()
                .flatMap(service -> service.zones().stream())
                .filter(zone -> zone.applyStart().isBefore(next.get()))
                .map(PlannedZone::zone)
                .filter(bowl.zones()::contains)
                .toList();
        return before.isEmpty() ? bowl.zones() : before;
    }
}
