package stirtide.planner.day.history;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.events.day.Booking;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.SwatchTest;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.day.state.Day;

/** What a later day takes over from earlier ones, bounded so that opening a day stays small. */
public final class CarriedHistory {
    private static final Comparator<PastUse> OLDEST_FIRST = Comparator.comparing(PastUse::on)
            .thenComparing(PastUse::menuId)
            .thenComparing(PastUse::zone)
            .thenComparing(PastUse::clientRef)
            .thenComparing(PastUse::usedMilligrams);

    /** Visits kept of one client. */
    private static final int MOST_OF_CLIENT = 12;

    /** Visits kept in all; those of clients who are booked come first. */
    private static final int MOST_VISITS = 400;

    /** Swatches and strips kept, the newest. */
    private static final int MOST_TESTS = 500;

    private CarriedHistory() {}

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
        var memory = memory(brought.remembered(), newest.get(), earlier, booked);
        return setup.with(new UseHistory(kept, ledger.rules(), Optional.of(memory)));
    }

    /**
     * Visits, swatches and strips from what a day brings along and what earlier days of the salon hold.
     *
     * @param newest the newest day before it
     * @param earlier all days before it, oldest first
     * @param booked bookings of the day
     */
    public static SalonMemory memory(SalonMemory brought, Day newest, List<CarriedDay> earlier, List<Booking> booked) {
        var carried = newest.opened().learned().remembered();
        var visits =
                distinct(brought.visits(), carried.visits(), earlier.stream().flatMap(day -> day.visits().stream()));
        var swatches = distinct(
                brought.swatches(), carried.swatches(), earlier.stream().flatMap(day -> day.swatches().stream()));
        var strips =
                distinct(brought.strips(), carried.strips(), earlier.stream().flatMap(day -> day.strips().stream()));
        swatches.sort(Comparator.comparing(SwatchTest::on));
        strips.sort(Comparator.comparing(MixStrip::on));
        return new SalonMemory(
                bounded(visits, booked),
                newest(swatches, MOST_TESTS),
                newest(strips, MOST_TESTS),
                brought.fractionPermille().or(() -> newest.ledger().fractionPermille()));
    }

    private static <T> List<T> distinct(List<T> brought, List<T> carried, Stream<T> own) {
        var all = new LinkedHashSet<>(brought);
        all.addAll(carried);
        own.forEach(all::add);
        return new ArrayList<>(all);
    }

    private static <T> List<T> newest(List<T> oldestFirst, int most) {
        return oldestFirst.subList(Math.max(0, oldestFirst.size() - most), oldestFirst.size());
    }

    /** Newest visits of each client, booked clients before others; given oldest first. */
    private static List<PastVisit> bounded(List<PastVisit> visits, List<Booking> booked) {
        var expected = booked.stream().map(Booking::clientRef).toList();
        var order = Comparator.comparing((PastVisit visit) -> !expected.contains(visit.clientRef()))
                .thenComparing(PastVisit::on, Comparator.reverseOrder())
                .thenComparing(PastVisit::clientRef)
                .thenComparing(PastVisit::menuId);
        Map<String, Integer> kept = new HashMap<>();
        return visits.stream()
                .sorted(order)
                .filter(visit -> kept.merge(visit.clientRef(), 1, Integer::sum) <= MOST_OF_CLIENT)
                .limit(MOST_VISITS)
                .sorted(Comparator.comparing(PastVisit::on)
                        .thenComparing(PastVisit::clientRef)
                        .thenComparing(PastVisit::menuId))
                .toList();
    }
}
