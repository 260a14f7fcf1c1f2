package stirtide.planner.day.history;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;
import stirtide.events.day.ClientTests.Kind;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.view.DayView.TestCard;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/**
 * Tests the directions demand before a service, and what is recorded of them. The tool keeps the salon's record; it never
 * says that a client is safe, and nothing switches a missing test off but recording when it was done.
 */
public final class DemandedTests {
    private static final String MISSING = "MISSING";
    private static final String TOO_LATE = "TOO_LATE";
    private static final String RECORDED = "RECORDED";

    private DemandedTests() {}

    /** Tests demanded for a service of a day, in the order of its lighteners. */
    public static List<TestCard> of(Day day, ServiceState service) {
        return of(day.opened(), service.booking(), day.menuEntry(service));
    }

    /** Tests demanded for a booking with this menu entry. */
    public static List<TestCard> of(DaySetup setup, Booking booking, MenuEntry entry) {
        var cards = new ArrayList<TestCard>();
        var used = entry.zones().stream().map(zone -> zone.lightenerId()).toList();
        for (var product : setup.directions()) {
            if (!used.contains(product.lightenerId())) continue;
            product.strandTestHours().ifPresent(hours -> cards.add(card(setup, booking, product, Kind.STRAND, hours)));
            product.patchTestHours().ifPresent(hours -> cards.add(card(setup, booking, product, Kind.PATCH, hours)));
        }
        return cards;
    }

    /** Whether a test still has to be seen to. */
    public static boolean open(TestCard card) {
        return !card.state().equals(RECORDED);
    }

    private static TestCard card(DaySetup setup, Booking booking, Directions product, Kind kind, int hours) {
        var latest = booking.start().minus(Duration.ofHours(hours));
        var done = booking.tests().orElse(ClientTests.NONE).at(kind);
        var state = done.map(at -> at.isAfter(latest) ? TOO_LATE : RECORDED).orElse(MISSING);
        var zone = ZoneId.of(setup.salon().zone());
        return new TestCard(
                kind.name(),
                product.name(),
                hours,
                latest,
                done,
                state,
                sentence(product, kind, hours, latest, done, zone));
    }

    private static String sentence(
            Directions product, Kind kind, int hours, Instant latest, Optional<Instant> done, ZoneId zone) {
        var test = kind.name().toLowerCase(Locale.ROOT) + " test";
        var demand = "the directions of " + product.name() + " ask for a " + test + " at least " + hours
                + " hours before, by " + moment(latest, zone);
        if (done.isEmpty())
            return "No " + test + " is recorded: " + demand + ". Record when it was done, or move the service.";
        var at = moment(done.get(), zone);
        if (done.get().isAfter(latest))
            return "The " + test + " of " + at + " is too late: " + demand
                    + ". Move the service, or record an earlier test.";
        return "A " + test + " is recorded for " + at
                + ". What it showed, and whether to go on, is for a licensed professional to judge.";
    }

    private static String moment(Instant at, ZoneId zone) {
        return DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH).format(at.atZone(zone));
    }
}
