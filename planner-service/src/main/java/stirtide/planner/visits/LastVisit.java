package stirtide.planner.visits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;

/** Looks up what was mixed for a client before and checks it against what is in force today. */
public final class LastVisit {
    private static final Comparator<PastVisit> OLDEST_FIRST =
            Comparator.comparing(PastVisit::on).thenComparing(PastVisit::menuId);

    private LastVisit() {}

    /** Earlier visits of the client of a booking, newest first; none when the booking names no client. */
    public static List<PastVisit> visits(DaySetup setup, Booking booking) {
        if (booking.clientRef().isBlank()) return List.of();
        return setup.learned().remembered().visits().stream()
                .filter(visit -> visit.clientRef().equals(booking.clientRef())
                        && visit.on().isBefore(setup.date()))
                .sorted(OLDEST_FIRST.reversed())
                .toList();
    }

    /**
     * The formula of the client's last visit with the same menu entry, zone by zone; empty when there was none. What is
     * no longer allowed is replaced by the nearest that is; there is no way round that.
     */
    public static Optional<RepeatedFormula> of(DaySetup setup, Booking booking) {
        Optional<MenuEntry> entry = setup.menuEntry(booking.menuId());
        Optional<PastVisit> last = visits(setup, booking).stream()
                .filter(visit -> visit.menuId().equals(booking.menuId()))
                .findFirst();
        if (entry.isEmpty() || last.isEmpty()) return Optional.empty();
        List<RepeatedZone> answers = new ArrayList<>();
        List<MenuZone> zones = new ArrayList<>();
        for (MenuZone zone : entry.get().zones()) {
            Optional<PastZone> past = last.get().zones().stream()
                    .filter(one -> one.zone().equals(zone.zone()))
                    .findFirst();
            RepeatedZone answer =
                    past.map(one -> RepeatFormulaCheck.of(setup, zone, one)).orElseGet(() -> fresh(zone));
            answers.add(answer);
            zones.add(again(zone, answer));
        }
        MenuEntry repeated = new MenuEntry(entry.get().menuId(), entry.get().name(), zones);
        return Optional.of(new RepeatedFormula(last.get(), repeated, answers));
    }

    private static RepeatedZone fresh(MenuZone zone) {
        return new RepeatedZone(
                zone.zone(),
                RepeatedZone.Answer.NEW,
                zone.lightenerId(),
                zone.strengthHundredths(),
                zone.ratioThousandths(),
                0,
                zone.zone() + ": not among what is remembered, planned by the menu");
    }

    private static MenuZone again(MenuZone zone, RepeatedZone answer) {
        return zone.with(copy -> {
            copy.lightenerId(answer.lightenerId());
            copy.strengthHundredths(answer.strengthHundredths());
            copy.ratioThousandths(answer.ratioThousandths());
        });
    }
}
