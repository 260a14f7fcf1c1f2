package stirtide.planner.day.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.day.OverMixCause;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.day.allowance.LearnedAllowances;
import stirtide.planner.day.allowance.ZoneGrams;
import stirtide.planner.day.booking.FormulaRun;
import stirtide.planner.day.bowl.BowlBalance;
import stirtide.planner.day.state.Bookings;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/** What the days of a salon teach a later day. */
public final class PastUses {
    private static final Comparator<PastUse> OLDEST_FIRST = Comparator.comparing(PastUse::on)
            .thenComparing(PastUse::menuId)
            .thenComparing(PastUse::zone)
            .thenComparing(PastUse::clientRef)
            .thenComparing(PastUse::usedMilligrams);

    private PastUses() {}

    /**
     * The setup of a day with what it brings along and what earlier days of the same salon used, the newest uses only.
     * The rules are those in force on the newest earlier day; a rule the setup brings along wins.
     *
     * @param newest the newest earlier day of the salon; empty when there is none, and then nothing is learned
     * @param days days of the service, of any salon and date, the newest earlier one among them
     * @param most most uses kept
     * @param booked bookings of the day: the visits of their clients are remembered before others
     */
    public static DaySetup learned(
            DaySetup setup, Optional<Day> newest, Collection<CarriedDay> days, int most, List<Booking> booked) {
        var earlier = days.stream()
                .filter(day -> day.salonId().equals(setup.salon().salonId())
                        && day.date().isBefore(setup.date()))
                .sorted(Comparator.comparing(CarriedDay::date))
                .toList();
        if (newest.isEmpty() || earlier.isEmpty()) return setup;
        var brought = setup.learned();
        var uses = new ArrayList<>(brought.uses());
        earlier.forEach(day -> uses.addAll(day.uses()));
        uses.sort(OLDEST_FIRST);
        var ledger = newest.get().ledger();
        for (var rule : brought.rules()) ledger = ledger.ruled(rule);
        var kept = uses.subList(Math.max(0, uses.size() - most), uses.size());
        var memory = CarriedHistory.of(brought.remembered(), newest.get(), earlier, booked);
        return setup.with(new UseHistory(kept, ledger.rules(), Optional.of(memory)));
    }

    /** What the zones of a day used: of every run that was applied whole and whose bowls are all closed. */
    public static List<PastUse> of(Day day) {
        var uses = new ArrayList<PastUse>();
        for (var service : day.services()) {
            int done = service.zonesDone().size();
            for (var run : FormulaRun.of(Bookings.entry(day, service)))
                if (run.firstZone() + run.zones().size() <= done) ofRun(day, service, run, uses);
        }
        return uses;
    }

    private static void ofRun(Day day, ServiceState service, FormulaRun run, List<PastUse> uses) {
        var bowls = service.bowls().stream()
                .filter(bowl -> bowl.run() == run.number())
                .toList();
        if (bowls.stream().anyMatch(BowlState::live)) return;
        long applied = bowls.stream()
                .mapToLong(bowl -> BowlBalance.of(day, bowl).appliedMilligrams())
                .sum();
        boolean spilled = bowls.stream()
                .anyMatch(bowl -> bowl.closed().flatMap(BowlState.Closed::cause).equals(SPILLED));
        long planned = run.zones().stream()
                .mapToLong(zone -> ZoneGrams.medianMilligrams(day, service, zone))
                .sum();
        for (MenuZone zone : run.zones()) {
            // bowls are weighed, zones are not: what a run used is shared out as it was planned
            long used = applied * ZoneGrams.medianMilligrams(day, service, zone) / Math.max(1, planned);
            if (used < 1) continue;
            LocalDate on = day.opened().date();
            uses.add(new PastUse(
                    on,
                    service.booking().menuId(),
                    zone.zone(),
                    service.booking().clientRef(),
                    zone.baseMilligrams(),
                    LearnedAllowances.lengthPermille(day.opened(), service.booking()),
                    LearnedAllowances.densityPermille(day.opened(), service.booking()),
                    (int) used,
                    spilled));
        }
    }

    private static final Optional<OverMixCause> SPILLED = Optional.of(OverMixCause.SPILLED);
}
