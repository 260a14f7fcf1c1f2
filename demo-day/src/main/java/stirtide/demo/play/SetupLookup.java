package stirtide.demo.play;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import stirtide.events.day.Booking;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.Person;
import stirtide.events.view.DayView.LiveBowl;

/**
 * Look-ups in the setup of a day: menu, bowls, products, people.
 *
 * @param setup what is in force on the day
 */
public record SetupLookup(DaySetup setup) {
    /** A time of day on the day of the setup. */
    public Instant at(LocalTime time) {
        return setup.date().atTime(time).atZone(ZoneId.of(setup.salon().zone())).toInstant();
    }

    MenuEntry entry(String menuId) {
        return setup.menuEntry(menuId).orElseThrow(() -> new IllegalArgumentException("not on the menu: " + menuId));
    }

    /** Mix the plan expects for a zone of this client, in milligrams. */
    int plannedNeed(Booking booking, MenuZone zone) {
        long length = setup.menu().lengthPermille(booking.length());
        long density = setup.menu().densityPermille(booking.density());
        return (int) (zone.baseMilligrams() * length * density / 1_000_000);
    }

    int mixMinutes(String lightenerName) {
        return setup.directions().stream()
                .filter(directions -> directions.name().equals(lightenerName))
                .mapToInt(Directions::mixMinutes)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("not on the shelf: " + lightenerName));
    }

    /** Residue that stays in the bowl, in milligrams. */
    int residue(LiveBowl bowl) {
        return setup.salon().bowls().stream()
                .filter(size -> size.usableMilligrams() == bowl.planned().usableMilligrams())
                .mapToInt(BowlSize::residueMilligrams)
                .findFirst()
                .orElse(0);
    }

    /** Milligrams mixed in the bowl that can be applied. */
    int applicable(LiveBowl bowl) {
        return bowl.weighed()
                .map(weighed -> weighed.lightenerMilligrams() + weighed.developerMilligrams() - residue(bowl))
                .orElse(0);
    }

    /** All people of a role, in the order of the setup. */
    public List<Person> people(Person.Role role) {
        return setup.salon().people().stream()
                .filter(person -> person.role() == role)
                .toList();
    }

    /** Person id for actions at the chair of a service: its stylist, or the first stylist of the setup. */
    String stylist(Booking booking) {
        return booking.stylistId()
                .orElseGet(() -> people(Person.Role.STYLIST).stream()
                        .findFirst()
                        .map(Person::personId)
                        .orElseGet(this::receptionist));
    }

    /** Person id for bookings and moves: the manager, or the first person of the setup. */
    public String receptionist() {
        return people(Person.Role.MANAGER).stream()
                .findFirst()
                .orElseGet(() -> setup.salon().people().get(0))
                .personId();
    }
}
