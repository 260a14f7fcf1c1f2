package stirtide.planner.day.setup;

import java.util.Optional;
import java.util.stream.Stream;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.mixing.text.AmountText;

/** What a menu must be: zones with grams and minutes, and no formula outside the directions of its lightener. */
final class MenuRules {
    private MenuRules() {}

    static Optional<String> objection(DaySetup setup) {
        var menu = setup.menu();
        if (Stream.concat(menu.lengthPermille().values().stream(), menu.densityPermille().values().stream())
                .anyMatch(factor -> factor < 1))
            return Optional.of("Factors of length and density are above 0; 1000 changes nothing.");
        return SetupChecks.unique(
                        "menu entry",
                        menu.entries().stream().map(MenuEntry::menuId).toList())
                .or(() -> SetupChecks.first(menu.entries().stream().map(entry -> entry(setup, entry))));
    }

    private static Optional<String> entry(DaySetup setup, MenuEntry entry) {
        if (entry.zones().isEmpty()) return Optional.of("Menu entry \"" + entry.menuId() + "\" needs a zone.");
        return SetupChecks.unique(
                        "zone of " + entry.menuId(),
                        entry.zones().stream().map(MenuZone::zone).toList())
                .or(() -> SetupChecks.first(entry.zones().stream().map(zone -> zone(setup, entry, zone))));
    }

    private static Optional<String> zone(DaySetup setup, MenuEntry entry, MenuZone zone) {
        var of = "Zone \"" + zone.zone() + "\" of menu entry \"" + entry.menuId() + "\" ";
        var rule = setup.directions(zone.lightenerId()).stream()
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
                || !SetupChecks.isMinutes(zone.applyMinutes(), 1)
                || !SetupChecks.isMinutes(zone.gapMinutes(), 0)
                || !SetupChecks.isMinutes(zone.processMinutes(), 0))
            return Optional.of(
                    of + "needs base grams and minutes of application above 0, other minutes 0 or more, none above "
                            + SetupChecks.MOST_MINUTES + ".");
        return Optional.empty();
    }
}
