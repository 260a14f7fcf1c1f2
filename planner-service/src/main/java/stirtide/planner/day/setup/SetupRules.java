package stirtide.planner.day.setup;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stirtide.events.day.StoredEvent;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.Salon;
import stirtide.mixing.strength.LegalLimits;
import stirtide.mixing.text.AmountText;

/**
 * What a setup must hold so that everything later may rely on it: known names, positive weights and times, and no menu
 * entry outside the directions. Gives the first thing that is wrong, with what would be accepted.
 */
public final class SetupRules {
    /** Nothing that is planned for a day takes longer than one. */
    private static final int MOST_MINUTES = 24 * 60;

    private static final int MOST_CHAIRS = 500;
    /** The id is part of the name of the day's stream and of addresses. */
    private static final Pattern SALON_ID = Pattern.compile("[A-Za-z0-9._-]{1,64}");

    private SetupRules() {}

    public static Optional<String> objection(DaySetup setup) {
        return unready(setup)
                .or(() -> salon(setup.salon()))
                .or(() -> shelf(setup))
                .or(() -> first(setup.directions().stream().map(SetupRules::directions)))
                .or(() -> menu(setup))
                .or(() -> BroughtHistoryRules.objection(setup));
    }

    /** A salon that is being set up lacks this and that; once there is something to book, it must be possible to mix it. */
    private static Optional<String> unready(DaySetup setup) {
        if (setup.menu().entries().isEmpty()) return Optional.empty();
        if (setup.salon().scales().isEmpty() || setup.salon().bowls().isEmpty())
            return Optional.of("A bar with a menu needs at least one scale and one size of bowl.");
        if (setup.developers().isEmpty())
            return Optional.of("A bar with a menu needs at least one developer on the shelf.");
        return Optional.empty();
    }

    private static Optional<String> salon(Salon salon) {
        if (!SALON_ID.matcher(salon.salonId()).matches())
            return Optional.of("A salon's id has 1 to 64 letters, digits, dots, hyphens or underscores.");
        if (!knownZone(salon.zone()))
            return Optional.of(
                    "\"" + salon.zone() + "\" is no time zone. Accepted: an IANA name such as Europe/Lisbon.");
        if (salon.chairs() < 1 || salon.chairs() > MOST_CHAIRS)
            return Optional.of("A salon has 1 to " + MOST_CHAIRS + " chairs, not " + salon.chairs() + ".");
        if (!isMinutes(salon.handOverMinutes(), 0) || !isMinutes(salon.washMinutes(), 0))
            return Optional.of("Minutes of hand-over and washing are 0 to " + MOST_MINUTES + ".");
        for (var size : salon.bowls())
            if (size.residueMilligrams() < 0 || size.usableMilligrams() <= size.residueMilligrams() || size.count() < 1)
                return Optional.of("Bowl size \"" + size.bowlSizeId()
                        + "\" needs a count of 1 or more and a usable fill above its residue.");
        return unique(
                        "person",
                        salon.people().stream().map(person -> person.personId()).toList())
                .or(() -> unique(
                        "scale",
                        salon.scales().stream().map(scale -> scale.scaleId()).toList()))
                .or(() -> unique(
                        "bowl size",
                        salon.bowls().stream().map(size -> size.bowlSizeId()).toList()))
                .or(() -> salon.people().stream()
                        .filter(person -> person.personId().equals(StoredEvent.SERVICE))
                        .map(person -> "Nobody may have the id \"service\"; choose another.")
                        .findFirst());
    }

    private static Optional<String> shelf(DaySetup setup) {
        for (var developer : setup.developers()) {
            if (developer.developerId().equals(DeveloperPart.WATER))
                return Optional.of("\"water\" stands for water; give the developer another id.");
            if (developer.strengthHundredths() < 1 || developer.strengthHundredths() > LegalLimits.ON_HAIR_HUNDREDTHS)
                return Optional.of("Developer \"" + developer.developerId() + "\" has "
                        + AmountText.strength(developer.strengthHundredths()) + ". Accepted: above 0 % up to "
                        + AmountText.strength(LegalLimits.ON_HAIR_HUNDREDTHS) + ".");
        }
        return unique(
                        "developer",
                        setup.developers().stream()
                                .map(one -> one.developerId())
                                .toList())
                .or(() -> unique(
                        "lightener",
                        setup.directions().stream().map(Directions::lightenerId).toList()));
    }

    private static Optional<String> directions(Directions directions) {
        var of = "The directions of \"" + directions.lightenerId() + "\" ";
        if (!isMinutes(directions.workingLifeMinutes(), 1) || !isMinutes(directions.mixMinutes(), 1))
            return Optional.of(of + "need a working life and mixing time of 1 to " + MOST_MINUTES + " minutes.");
        if (directions.techniques().isEmpty()) return Optional.of(of + "need at least one technique.");
        for (var rule : directions.techniques()) {
            if (rule.lowestRatioThousandths() < 1 || rule.highestRatioThousandths() < rule.lowestRatioThousandths())
                return Optional.of(of + "need a ratio window for " + rule.technique()
                        + " that rises: lowest above 0, highest not below lowest.");
            if (rule.highestStrengthHundredths() < 1
                    || rule.highestStrengthHundredths() > LegalLimits.ON_HAIR_HUNDREDTHS)
                return Optional.of(of + "permit " + AmountText.strength(rule.highestStrengthHundredths())
                        + ". Accepted: above 0 % up to " + AmountText.strength(LegalLimits.ON_HAIR_HUNDREDTHS) + ".");
            if (!isMinutes(rule.longestProcessingMinutes(), 1))
                return Optional.of(of + "need a longest processing time of 1 to " + MOST_MINUTES + " minutes.");
        }
        return Optional.empty();
    }

    private static Optional<String> menu(DaySetup setup) {
        var menu = setup.menu();
        if (Stream.concat(menu.lengthPermille().values().stream(), menu.densityPermille().values().stream())
                .anyMatch(factor -> factor < 1))
            return Optional.of("Factors of length and density are above 0; 1000 changes nothing.");
        return unique(
                        "menu entry",
                        menu.entries().stream().map(MenuEntry::menuId).toList())
                .or(() -> first(menu.entries().stream().map(entry -> entry(setup, entry))));
    }

    private static Optional<String> entry(DaySetup setup, MenuEntry entry) {
        if (entry.zones().isEmpty()) return Optional.of("Menu entry \"" + entry.menuId() + "\" needs a zone.");
        return unique(
                        "zone of " + entry.menuId(),
                        entry.zones().stream().map(MenuZone::zone).toList())
                .or(() -> first(entry.zones().stream().map(zone -> zone(setup, entry, zone))));
    }

    private static Optional<String> zone(DaySetup setup, MenuEntry entry, MenuZone zone) {
        var of = "Zone \"" + zone.zone() + "\" of menu entry \"" + entry.menuId() + "\" ";
        var rule = setup.directions().stream()
                .filter(directions -> directions.lightenerId().equals(zone.lightenerId()))
                .flatMap(directions -> directions.techniques().stream())
                .filter(one -> one.technique().equals(zone.technique()))
                .findFirst();
        if (rule.isEmpty())
            return Optional.of(of + "uses lightener \"" + zone.lightenerId() + "\" for " + zone.technique()
                    + ", which no directions permit.");
        int low = rule.get().lowestRatioThousandths();
        int high = rule.get().highestRatioThousandths();
        if (zone.ratioThousandths() < low || zone.ratioThousandths() > high)
            return Optional.of(of + "wants " + AmountText.ratio(zone.ratioThousandths()) + ". The directions permit "
                    + AmountText.ratio(low) + " to " + AmountText.ratio(high) + ".");
        int strongest = rule.get().highestStrengthHundredths();
        if (zone.strengthHundredths() < 1 || zone.strengthHundredths() > strongest)
            return Optional.of(of + "wants " + AmountText.strength(zone.strengthHundredths())
                    + ". The directions permit up to " + AmountText.strength(strongest) + ".");
        if (zone.baseMilligrams() < 1
                || !isMinutes(zone.applyMinutes(), 1)
                || !isMinutes(zone.gapMinutes(), 0)
                || !isMinutes(zone.processMinutes(), 0))
            return Optional.of(
                    of + "needs base grams and minutes of application above 0, other minutes 0 or more, none above "
                            + MOST_MINUTES + ".");
        return Optional.empty();
    }

    /** Whether something can take so many minutes of a day. */
    static boolean isMinutes(int minutes, int least) {
        return minutes >= least && minutes <= MOST_MINUTES;
    }

    private static boolean knownZone(String zone) {
        try {
            return !ZoneId.of(zone).getId().isBlank();
        } catch (DateTimeException unknown) {
            return false;
        }
    }

    private static Optional<String> unique(String what, List<String> ids) {
        var seen = new HashSet<String>();
        for (var id : ids) {
            if (id.isBlank()) return Optional.of("A " + what + " has no name. Each needs its own.");
            if (!seen.add(id))
                return Optional.of("The " + what + " \"" + id + "\" stands twice. Each needs its own name.");
        }
        return Optional.empty();
    }

    private static Optional<String> first(Stream<Optional<String>> objections) {
        return objections.flatMap(Optional::stream).findFirst();
    }
}
