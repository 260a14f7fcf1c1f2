package stirtide.planner.day.setup;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Optional;
import java.util.regex.Pattern;
import stirtide.events.day.StoredEvent;
import stirtide.events.setup.Salon;

/** What a salon must be: an id fit for names, a time zone, chairs, and people, scales and bowls with names of their own. */
final class SalonRules {
    private static final int MOST_CHAIRS = 500;
    /** The id is part of the name of the day's stream and of addresses. */
    private static final Pattern SALON_ID = Pattern.compile("[A-Za-z0-9._-]{1,64}");

    private SalonRules() {}

    static Optional<String> objection(Salon salon) {
        if (!SALON_ID.matcher(salon.salonId()).matches())
            return Optional.of("A salon's id has 1 to 64 letters, digits, dots, hyphens or underscores.");
        if (!knownZone(salon.zone()))
            return Optional.of(
                    "\"" + salon.zone() + "\" is no time zone. Accepted: an IANA name such as Europe/Lisbon.");
        if (salon.chairs() < 1 || salon.chairs() > MOST_CHAIRS)
            return Optional.of("A salon has 1 to " + MOST_CHAIRS + " chairs, not " + salon.chairs() + ".");
        if (!SetupChecks.isMinutes(salon.handOverMinutes(), 0) || !SetupChecks.isMinutes(salon.washMinutes(), 0))
            return Optional.of("Minutes of hand-over and washing are 0 to " + SetupChecks.MOST_MINUTES + ".");
        for (var size : salon.bowls())
            if (size.residueMilligrams() < 0 || size.usableMilligrams() <= size.residueMilligrams() || size.count() < 1)
                return Optional.of("Bowl size \"" + size.bowlSizeId()
                        + "\" needs a count of 1 or more and a usable fill above its residue.");
        return SetupChecks.unique(
                        "person",
                        salon.people().stream().map(person -> person.personId()).toList())
                .or(() -> SetupChecks.unique(
                        "scale",
                        salon.scales().stream().map(scale -> scale.scaleId()).toList()))
                .or(() -> SetupChecks.unique(
                        "bowl size",
                        salon.bowls().stream().map(size -> size.bowlSizeId()).toList()))
                .or(() -> salon.people().stream()
                        .filter(person -> person.personId().equals(StoredEvent.SERVICE))
                        .map(person -> "No person may have the id \"service\"; choose another.")
                        .findFirst());
    }

    private static boolean knownZone(String zone) {
        try {
            return !ZoneId.of(zone).getId().isBlank();
        } catch (DateTimeException unknown) {
            return false;
        }
    }
}
