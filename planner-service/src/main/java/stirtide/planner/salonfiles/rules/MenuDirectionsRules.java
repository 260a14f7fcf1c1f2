package stirtide.planner.salonfiles.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.mixing.text.AmountText;
import stirtide.planner.salonfiles.json.FieldPath;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.json.FieldText;
import stirtide.planner.salonfiles.json.MenuFile;

/**
 * Rules of a menu against what is on the shelf.
 *
 * @param directions directions of the lighteners
 * @param developers developers
 */
public record MenuDirectionsRules(List<Directions> directions, List<Developer> developers) {
    /** Refuses zones that the directions or the shelf do not permit. */
    public void check(MenuFile menu, FieldPath at) {
        for (Located<MenuEntry> entry : at.each("entries", menu.entries())) {
            List<Located<MenuZone>> zones =
                    entry.path().each("zones", entry.value().zones());
            List<Optional<TechniqueRule>> rules = new ArrayList<>();
            for (Located<MenuZone> zone : zones) rules.add(checkZone(zone.value(), zone.path()));
            checkSections(zones, rules);
        }
    }

    private Optional<TechniqueRule> checkZone(MenuZone zone, FieldPath at) {
        Optional<Directions> lightener = directions.stream()
                .filter(each -> each.lightenerId().equals(zone.lightenerId()))
                .findFirst();
        if (lightener.isEmpty()) {
            at.refuse(
                    "lightenerId",
                    FieldText.quoted(zone.lightenerId()),
                    "one of the lighteners with directions: "
                            + directions.stream()
                                    .map(Directions::lightenerId)
                                    .sorted()
                                    .collect(Collectors.joining(", ")));
            return Optional.empty();
        }
        List<TechniqueRule> techniques = lightener.get().techniques();
        Optional<TechniqueRule> rule = techniques.stream()
                .filter(each -> each.technique().equals(zone.technique()))
                .findFirst();
        if (rule.isEmpty()) {
            at.refuse(
                    "technique",
                    FieldText.quoted(zone.technique()),
                    "one of the techniques in the directions of " + zone.lightenerId() + ": "
                            + techniques.stream().map(TechniqueRule::technique).collect(Collectors.joining(", ")));
            return rule;
        }
        checkStrength(zone, at.at("strengthPercent"), lightener.get(), rule.get());
        checkRatio(zone, at.at("ratio"), rule.get());
        return rule;
    }

    private static void checkRatio(MenuZone zone, FieldPath at, TechniqueRule rule) {
        int low = rule.lowestRatioThousandths();
        int high = rule.highestRatioThousandths();
        if (zone.ratioThousandths() >= low && zone.ratioThousandths() <= high) return;
        at.refuse(
                FieldText.quoted(AmountText.ratio(zone.ratioThousandths())),
                "a ratio from " + AmountText.ratio(low) + " to " + AmountText.ratio(high) + ", as the directions of "
                        + zone.lightenerId() + " permit for " + zone.technique());
    }

    private void checkStrength(MenuZone zone, FieldPath at, Directions lightener, TechniqueRule rule) {
        int wanted = zone.strengthHundredths();
        String shown = FieldText.hundredths(wanted);
        if (wanted > rule.highestStrengthHundredths()) {
            at.refuse(
                    shown,
                    "at most " + AmountText.strength(rule.highestStrengthHundredths()) + ", as the directions of "
                            + zone.lightenerId() + " permit for " + zone.technique());
            return;
        }
        TreeSet<Integer> shelf =
                developers.stream().map(Developer::strengthHundredths).collect(Collectors.toCollection(TreeSet::new));
        if (shelf.isEmpty()) return;
        int lowest = lightener.waterPermitted() ? 0 : shelf.first();
        if (wanted < lowest || wanted > shelf.last())
            at.refuse(
                    shown,
                    "a strength that can be blended from the shelf, " + AmountText.strength(lowest) + " to "
                            + AmountText.strength(shelf.last()));
    }

    /**
     * Refuses zones that pass the maker's longest time from first application to rinse even without any wait. Zones of one
     * section are rinsed together, when the last of them has processed.
     */
    private static void checkSections(List<Located<MenuZone>> zones, List<Optional<TechniqueRule>> rules) {
        int[] starts = new int[zones.size()];
        int clock = 0;
        for (int j = 0; j < zones.size(); j++) {
            starts[j] = clock + zones.get(j).value().gapMinutes();
            clock = starts[j] + zones.get(j).value().applyMinutes();
        }
        for (int j = 0; j < zones.size(); j++) {
            if (rules.get(j).isEmpty()) continue;
            int elapsed = rinse(zones, starts, zones.get(j).value().section()) - starts[j];
            int longest = rules.get(j).get().longestProcessingMinutes();
            if (elapsed > longest)
                refuseLong(zones.get(j).value(), zones.get(j).path().at("processMinutes"), elapsed, longest);
        }
    }

    private static int rinse(List<Located<MenuZone>> zones, int[] starts, int section) {
        int rinse = 0;
        for (int j = 0; j < zones.size(); j++) {
            MenuZone zone = zones.get(j).value();
            if (zone.section() == section)
                rinse = Math.max(rinse, starts[j] + zone.applyMinutes() + zone.processMinutes());
        }
        return rinse;
    }

    private static void refuseLong(MenuZone zone, FieldPath at, int elapsed, int longest) {
        at.refuse(
                zone.processMinutes() + " (" + elapsed + " minutes from first application to rinse)",
                "minutes that keep the zone within " + longest
                        + " from first application to the rinse of section "
                        + zone.section() + ", as the directions of " + zone.lightenerId()
                        + " demand; process shorter "
                        + "or rinse in more sections");
    }
}
