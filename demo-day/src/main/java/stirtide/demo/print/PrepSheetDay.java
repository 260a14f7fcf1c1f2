package stirtide.demo.print;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.bar.text.TimeText;
import stirtide.events.day.Booking;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedService;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Person;
import stirtide.events.view.DayView;
import stirtide.mixing.text.AmountText;
import stirtide.planner.day.allowance.LearnedAllowances;
import stirtide.planner.day.chair.SectionRinses;

/**
 * Data of a prep sheet, with the look-ups its sections share.
 *
 * @param setup what is in force on the day
 * @param bookings the day's services by number
 * @param plan the plan to print
 * @param cards tests and earlier visits of each service
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
        return TimeText.minute(instant, zone());
    }

    /** Earlier visits of the client of a service. */
    Optional<DayView.MemoryCard> memory(int service) {
        return cards.stream()
                .filter(card -> card.service() == service)
                .findFirst()
                .flatMap(DayView.ServiceCard::memory);
    }

    /** Client reference of the booking; empty when the service is unknown. */
    String client(int service) {
        Booking booking = bookings.get(service);
        return booking == null ? "" : booking.clientRef();
    }

    String menuName(Booking booking) {
        return setup.menuEntry(booking.menuId()).map(MenuEntry::name).orElse(booking.menuId());
    }

    /** Zones of a planned service, with the latest rinse of their section. */
    List<PlannedZone> zones(PlannedService service) {
        return Optional.ofNullable(bookings.get(service.service()))
                .flatMap(booking -> setup.menuEntry(booking.menuId()))
                .map(entry -> SectionRinses.of(entry, service.zones()))
                .orElse(service.zones());
    }

    /** Reasons for grams that differ from the menu, one line for each zone. */
    List<String> allowances(Booking booking) {
        return setup.menuEntry(booking.menuId()).stream()
                .flatMap(entry -> entry.zones().stream())
                .flatMap(zone -> LearnedAllowances.of(setup, booking, zone).stream()
                        .map(learned -> zone.zone() + " " + learned.sentence()))
                .toList();
    }

    String personName(String personId) {
        return setup.salon().person(personId).map(Person::name).orElse(personId);
    }

    String lightenerName(String lightenerId) {
        return setup.directions(lightenerId).map(Directions::name).orElse(lightenerId);
    }

    /** Name of one liquid, and strength where it has one. */
    String liquidName(String developerId) {
        if (developerId.equals(DeveloperPart.WATER)) return "water";
        return setup.developer(developerId).map(PrepSheetDay::liquid).orElse(developerId);
    }

    /** Name and strength of a developer. */
    static String liquid(Developer developer) {
        return developer.name() + ", " + AmountText.strength(developer.strengthHundredths());
    }
}
