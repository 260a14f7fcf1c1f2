package stirtide.planner.files;

import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import stirtide.events.day.Booking;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;

/** Checks the bookings of the day against the salon and the menu. */
final class BookingCheck {
    private record Seat(int chair, Instant start) {}

    private final Salon salon;
    private final Menu menu;
    private final Map<Seat, Spot> taken = new HashMap<>();

    BookingCheck(Salon salon, Menu menu) {
        this.salon = salon;
        this.menu = menu;
    }

    void check(Booking booking, Spot spot) {
        among(
                spot,
                Spot.Part.MENU,
                booking.menuId(),
                menu.entries().stream().map(Menu.MenuEntry::menuId).toList());
        among(spot, Spot.Part.LENGTH, booking.length(), menu.lengthPermille().keySet());
        among(spot, Spot.Part.DENSITY, booking.density(), menu.densityPermille().keySet());
        booking.stylistId()
                .ifPresent(stylist -> among(
                        spot,
                        Spot.Part.STYLIST,
                        stylist,
                        salon.people().stream().map(Person::personId).toList()));
        checkChair(booking, spot);
    }

    private static void among(Spot spot, Spot.Part part, String value, Collection<String> known) {
        if (known.contains(value)) return;
        String whose = part == Spot.Part.STYLIST ? " (people at work on the day)" : " (menu.json)";
        spot.refuse(part, value, "one of " + String.join(", ", known) + whose);
    }

    private void checkChair(Booking booking, Spot spot) {
        if (booking.chair() < 1 || booking.chair() > salon.chairs()) {
            spot.refuse(Spot.Part.CHAIR, "chair " + booking.chair(), "a chair from 1 to " + salon.chairs());
        }
        Spot other = taken.putIfAbsent(new Seat(booking.chair(), booking.start()), spot);
        if (other != null) {
            spot.refuse(
                    Spot.Part.CHAIR,
                    "chair " + booking.chair() + " a second time at " + booking.start(),
                    "another chair or another start; the first stands in " + other.where());
        }
    }
}
