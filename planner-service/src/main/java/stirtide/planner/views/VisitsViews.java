package stirtide.planner.views;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.setup.PastVisit;
import stirtide.events.view.VisitsView;
import stirtide.events.view.VisitsView.ZoneAgain;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.visits.LastVisit;
import stirtide.planner.visits.RepeatedZone;
import stirtide.planner.visits.VisitComparison;

/** Makes the view of what is remembered of one client. */
public final class VisitsViews {
    private VisitsViews() {}

    /**
     * Visits of the client of a service.
     *
     * @param first day of the visit on the left; the last but one when empty or unknown
     * @param second day of the visit on the right; the last when empty or unknown
     */
    public static VisitsView of(Day day, ServiceState service, Optional<LocalDate> first, Optional<LocalDate> second) {
        Booking booking = service.booking();
        List<PastVisit> visits = LastVisit.visits(day.opened(), booking);
        return new VisitsView(
                service.service(),
                booking.clientRef(),
                visits,
                day.ledger().repeat(service.service()).isPresent(),
                LastVisit.of(day.opened(), booking)
                        .map(repeat ->
                                repeat.zones().stream().map(VisitsViews::zone).toList())
                        .orElse(List.of()),
                sideBySide(visits, first, second));
    }

    /** Two of the visits, newest first, side by side; empty when there are fewer than two. */
    public static Optional<VisitsView.SideBySide> sideBySide(
            List<PastVisit> visits, Optional<LocalDate> first, Optional<LocalDate> second) {
        if (visits.size() < 2) return Optional.empty();
        PastVisit right = on(visits, second).orElse(visits.get(0));
        PastVisit left = on(visits, first).orElse(visits.get(Math.min(visits.indexOf(right) + 1, visits.size() - 1)));
        return Optional.of(VisitComparison.of(left, right));
    }

    private static Optional<PastVisit> on(List<PastVisit> visits, Optional<LocalDate> date) {
        return date.flatMap(
                day -> visits.stream().filter(visit -> visit.on().equals(day)).findFirst());
    }

    private static ZoneAgain zone(RepeatedZone zone) {
        return new ZoneAgain(
                zone.zone(),
                zone.answer().name(),
                zone.lightenerId(),
                zone.strengthHundredths(),
                zone.ratioThousandths(),
                zone.usedMilligrams(),
                zone.sentence());
    }
}
