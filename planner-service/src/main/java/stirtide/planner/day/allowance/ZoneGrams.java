package stirtide.planner.day.allowance;

import java.util.List;
import stirtide.events.day.Booking;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.planner.allowance.Allowance;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/**
 * Grams planned for one zone of one client: what was learned or pinned, else base grams times the factors of length and
 * density, rounded up.
 */
public final class ZoneGrams {
    private static final long PERMILLE_SQUARED = 1_000_000;

    private ZoneGrams() {}

    /** Milligrams planned for a zone of a service, 1 or more. */
    public static int milligrams(Day day, ServiceState service, MenuZone zone) {
        return day.ledger()
                .allowance(service.service(), zone.zone())
                .map(Allowance::plannedMilligrams)
                .orElseGet(() -> milligrams(day.opened(), service.booking(), zone));
    }

    /** Milligrams of a zone without the safety that the last bowl carries, 1 or more. */
    public static int medianMilligrams(Day day, ServiceState service, MenuZone zone) {
        return day.ledger()
                .allowance(service.service(), zone.zone())
                .map(Allowance::medianMilligrams)
                .orElseGet(() -> milligrams(day.opened(), service.booking(), zone));
    }

    /** The same for several zones together. */
    public static long medianMilligrams(Day day, ServiceState service, List<MenuZone> zones) {
        return zones.stream()
                .mapToLong(zone -> medianMilligrams(day, service, zone))
                .sum();
    }

    /** Milligrams a zone needs by the menu alone, 1 or more. Whole numbers only: the same booking always needs the same. */
    public static int milligrams(DaySetup setup, Booking booking, MenuZone zone) {
        long length = setup.menu().lengthPermille(booking.length());
        long density = setup.menu().densityPermille(booking.density());
        long product = zone.baseMilligrams() * length * density;
        return (int) Math.min(Integer.MAX_VALUE, (product + PERMILLE_SQUARED - 1) / PERMILLE_SQUARED);
    }
}
