package stirtide.planner.day.state;

import java.util.Comparator;
import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuEntry;

/** What a booking means on the day's menu. */
public final class Bookings {
    /** Order in which the bookings of a new day get their numbers. */
    public static final Comparator<Booking> BY_START =
            Comparator.comparing(Booking::start).thenComparing(Booking::chair).thenComparing(Booking::bookingUid);

    private Bookings() {}

    public static Booking moved(Booking old, DayEvent.ServiceMoved to) {
        return old.at(to.start(), to.chair());
    }

    public static Optional<MenuEntry> entry(DaySetup setup, String menuId) {
        return setup.menu().entries().stream()
                .filter(entry -> entry.menuId().equals(menuId))
                .findFirst();
    }

    /**
     * Menu entry of a service that was accepted, so it is on the menu; with the formula of the client's last visit where
     * that is planned again.
     */
    public static MenuEntry entry(Day day, ServiceState service) {
        var repeat = day.ledger().repeat(service.service());
        if (repeat.isPresent()) return repeat.get().entry();
        var menuId = service.booking().menuId();
        return entry(day.opened(), menuId)
                .orElseThrow(() -> new IllegalStateException(
                        "service " + service.service() + " is booked as \"" + menuId + "\", which is not on the menu"));
    }
}
