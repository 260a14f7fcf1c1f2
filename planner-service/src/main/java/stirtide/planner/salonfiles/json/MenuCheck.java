package stirtide.planner.salonfiles.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.mixing.text.AmountText;

/** Checks the menu against the directions of the lighteners and the developers on the shelf. */
public final class MenuCheck {
    private final List<Directions> directions;
    private final List<Developer> developers;

    public MenuCheck(List<Directions> directions, List<Developer> developers) {
        this.directions = directions;
        this.developers = developers;
    }

    public void check(MenuReader reader) {
        List<LocatedValue> items = reader.entryItems();
        List<Menu.MenuEntry> entries = reader.menu().entries();
        for (int i = 0; i < entries.size(); i++) {
            List<LocatedValue> zoneItems = items.get(i).items("zones");
            List<MenuZone> zones = entries.get(i).zones();
            List<Optional<TechniqueRule>> rules = new ArrayList<>();
            for (int j = 0; j < zones.size(); j++) rules.add(checkZone(zones.get(j), zoneItems.get(j)));
            checkSections(zones, zoneItems, rules);
        }
    }

    private Optional<TechniqueRule> checkZone(MenuZone zone, LocatedValue item) {
        Optional<Directions> lightener = directions.stream()
                .filter(each -> each.lightenerId().equals(zone.lightenerId()))
                .findFirst();
        if (lightener.isEmpty()) {
            item.at("lightenerId")
                    .refuse("one of the lighteners with directions: "
                            + directions.stream()
                                    .map(Directions::lightenerId)
                                    .sorted()
                                    .collect(Collectors.joining(", ")));
            return Optional.empty();
        }
        Optional<TechniqueRule> rule = rule(lightener.get(), zone.technique());
        if (rule.isEmpty()) {
            item.at("technique")
                    .refuse("one of the techniques in the directions of " + zone.lightenerId() + ": "
                            + lightener.get().techniques().stream()
                                    .map(TechniqueRule::technique)
                                    .collect(Collectors.joining(", ")));
            return rule;
        }
        checkRatio(zone, item, rule.get());
        checkStrength(zone, item, lightener.get(), rule.get());
        return rule;
    }

    private static Optional<TechniqueRule> rule(Directions lightener, String technique) {
        return lightener.techniques().stream()
                .filter(each -> each.technique().equals(technique))
                .findFirst();
    }

    private static void checkRatio(MenuZone zone, LocatedValue item, TechniqueRule rule) {
        int low = rule.lowestRatioThousandths();
        int high = rule.highestRatioThousandths();
        if (zone.ratioThousandths() >= low && zone.ratioThousandths() <= high) return;
        item.at("ratio")
                .refuse("a ratio from " + AmountText.ratio(low) + " to " + AmountText.ratio(high)
                        + ", as the directions of " + zone.lightenerId() + " permit for " + zone.technique());
    }

    private void checkStrength(MenuZone zone, LocatedValue item, Directions lightener, TechniqueRule rule) {
        int wanted = zone.strengthHundredths();
        if (wanted > rule.highestStrengthHundredths()) {
            item.at("strengthPercent")
                    .refuse("at most " + AmountText.strength(rule.highestStrengthHundredths())
                            + ", as the directions of " + zone.lightenerId() + " permit for " + zone.technique());
            return;
        }
        TreeSet<Integer> shelf =
                developers.stream().map(Developer::strengthHundredths).collect(Collectors.toCollection(TreeSet::new));
        if (shelf.isEmpty()) return;
        int lowest = lightener.waterPermitted() ? 0 : shelf.first();
        if (wanted < lowest || wanted > shelf.last()) {
            item.at("strengthPercent")
                    .refuse("a strength that can be blended from the shelf, " + AmountText.strength(lowest) + " to "
                            + AmountText.strength(shelf.last()));
        }
    }

    /**
     * Without any wait, is the time from first application to rinse of every zone within the maker's longest time? Zones
     * of one section are rinsed together, when the last of them has processed.
     */
    private static void checkSections(
            List<MenuZone> zones, List<LocatedValue> items, List<Optional<TechniqueRule>> rules) {
        int[] starts = new int[zones.size()];
        int clock = 0;
        for (int j = 0; j < zones.size(); j++) {
            starts[j] = clock + zones.get(j).gapMinutes();
            clock = starts[j] + zones.get(j).applyMinutes();
        }
        for (int j = 0; j < zones.size(); j++) {
            int elapsed = rinse(zones, starts, zones.get(j).section()) - starts[j];
            if (rules.get(j).isEmpty()) continue;
            int longest = rules.get(j).get().longestProcessingMinutes();
            if (elapsed > longest) refuseLong(zones.get(j), items.get(j), elapsed, longest);
        }
    }

    private static int rinse(List<MenuZone> zones, int[] starts, int section) {
        int rinse = 0;
        for (int j = 0; j < zones.size(); j++) {
            MenuZone zone = zones.get(j);
            if (zone.section() == section) {
                rinse = Math.max(rinse, starts[j] + zone.applyMinutes() + zone.processMinutes());
            }
        }
        return rinse;
    }

    private static void refuseLong(MenuZone zone, LocatedValue item, int elapsed, int longest) {
        item.at("processMinutes")
                .refuse(
                        zone.processMinutes() + " (" + elapsed + " minutes from first application to rinse)",
                        "minutes that keep the zone within " + longest
                                + " from first application to the rinse of section "
                                + zone.section() + ", as the directions of " + zone.lightenerId()
                                + " demand; process shorter "
                                + "or rinse in more sections");
    }
}
