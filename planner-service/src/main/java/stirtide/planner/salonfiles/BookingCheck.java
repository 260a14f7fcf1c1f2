package stirtide.planner.salonfiles;

import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import stirtide.events.day.Booking;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.planner.salonfiles.source.BookingLocation;

/** Checks the bookings of the day against the salon and the menu. */
final class BookingCheck {
    private record Seat(int chair, Instant start) {}

    private final Salon salon;
    private final Menu menu;
    private final Map<Seat, BookingLocation> taken = new HashMap<>();

    BookingCheck(Salon salon, Menu menu) {
        this.salon = salon;
        this.menu = menu;
    }

    void check(Booking booking, BookingLocation spot) {
        among(
                spot,
                BookingLocation.Part.MENU,
                booking.menuId(),
                menu.entries().stream().map(Menu.MenuEntry::menuId).toList());
        among(
                spot,
                BookingLocation.Part.LENGTH,
                booking.length(),
                menu.lengthPermille().keySet());
        among(
                spot,
                BookingLocation.Part.DENSITY,
                booking.density(),
                menu.densityPermille().keySet());
        booking.stylistId()
                .ifPresent(stylist -> among(
                        spot,
                        BookingLocation.Part.STYLIST,
                        stylist,
                        salon.people().stream().map(Person::personId).toList()));
        checkChair(booking, spot);
    }

    private static void among(BookingLocation spot, BookingLocation.Part part, String value, Collection<String> known) {
        if (known.contains(value)) return;
        String whose = part == BookingLocation.Part.STYLIST ? " (people at work on the day)" : " (menu.json)";
        spot.refuse(part, value, "one of " + String.join(", ", known) + whose);
    }

    private void checkChair(Booking booking, BookingLocation spot) {
        if (booking.chair() < 1 || booking.chair() > salon.chairs()) {
            spot.refuse(BookingLocation.Part.CHAIR, "chair " + booking.chair(), "a chair from 1 to " + salon.chairs());
        }
        BookingLocation other = taken.putIfAbsent(new Seat(booking.chair(), booking.start()), spot);
        if (other != null) {
            spot.refuse(
                    BookingLocation.Part.CHAIR,
                    "chair " + booking.chair() + " a second time at " + booking.start(),
                    "another chair or another start; the first stands in " + other.where());
        }
    }
}
