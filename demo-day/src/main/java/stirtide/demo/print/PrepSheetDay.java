package stirtide.demo.print;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.Booking;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.Plan;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Person;
import stirtide.events.view.DayView;
import stirtide.mixing.text.AmountText;
import stirtide.planner.day.allowance.LearnedAllowances;

/**
 * What a prep sheet is made from, with the look-ups its parts share.
 *
 * @param setup what is in force on the day
 * @param bookings the day's services by number
 * @param plan the plan to print
 * @param cards what is known of each service: tests, and what was mixed for the client before
 */
public record PrepSheetDay(
        DaySetup setup, SortedMap<Integer, Booking> bookings, Plan plan, List<DayView.ServiceCard> cards) {
    public PrepSheetDay {
        bookings = new TreeMap<>(bookings);
        cards = List.copyOf(cards);
    }

    ZoneId zone() {
        return ZoneId.of(setup.salon().zone());
    }

    String clock(Instant instant) {
        return Wording.clock(instant, zone());
    }

    /** What is remembered of the client of a service. */
    Optional<DayView.MemoryCard> memory(int service) {
        return cards.stream()
                .filter(card -> card.service() == service)
                .findFirst()
                .flatMap(DayView.ServiceCard::memory);
    }

    /** What the client is called on paper: the reference of the booking, or nothing. */
    String client(int service) {
        Booking booking = bookings.get(service);
        return booking == null ? "" : booking.clientRef();
    }

    String menuName(Booking booking) {
        return setup.menu().entries().stream()
                .filter(entry -> entry.menuId().equals(booking.menuId()))
                .map(MenuEntry::name)
                .findFirst()
                .orElse(booking.menuId());
    }

    /** Why zones get other grams than the menu says, one line each. */
    List<String> allowances(Booking booking) {
        return setup.menu().entries().stream()
                .filter(entry -> entry.menuId().equals(booking.menuId()))
                .flatMap(entry -> entry.zones().stream())
                .flatMap(zone -> LearnedAllowances.of(setup, booking, zone).stream()
                        .map(learned -> zone.zone() + " " + learned.sentence()))
                .toList();
    }

    String personName(String personId) {
        return setup.salon().people().stream()
                .filter(person -> person.personId().equals(personId))
                .map(Person::name)
                .findFirst()
                .orElse(personId);
    }

    String lightenerName(String lightenerId) {
        return setup.directions().stream()
                .filter(directions -> directions.lightenerId().equals(lightenerId))
                .map(Directions::name)
                .findFirst()
                .orElse(lightenerId);
    }

    /** One liquid in words: weight, name, and strength where it has one. */
    String part(DeveloperPart part) {
        String grams = AmountText.scaleGrams(part.milligrams());
        if (part.developerId().equals(DeveloperPart.WATER)) return grams + " water";
        return setup.developers().stream()
                .filter(developer -> developer.developerId().equals(part.developerId()))
                .findFirst()
                .map(developer -> grams + " " + liquid(developer))
                .orElse(grams + " " + part.developerId());
    }

    private static String liquid(Developer developer) {
        return developer.name() + ", " + AmountText.strength(developer.strengthHundredths());
    }
}
