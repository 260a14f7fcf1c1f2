package stirtide.planner.salonfiles.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.SwatchTest;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.salonfiles.json.HistoryReader;

/**
 * What a setup remembers as {@code history.json}, the way back of {@link HistoryReader}. Grams of clients without a
 * reference have no visit and are not written.
 */
final class HistoryFile {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private HistoryFile() {}

    static ObjectNode of(DaySetup setup) {
        SalonMemory memory = setup.learned().remembered();
        ObjectNode node = NODES.objectNode();
        ArrayNode visits = node.putArray("visits");
        memory.visits().forEach(visit -> visits.add(visit(setup, visit)));
        ArrayNode swatches = node.putArray("swatches");
        memory.swatches().forEach(swatch -> swatches.add(swatch(swatch)));
        ArrayNode strips = node.putArray("strips");
        memory.strips().forEach(strip -> strips.add(strip(strip)));
        rules(setup).ifPresent(rules -> node.set("allowances", rules));
        memory.fractionPermille().ifPresent(permille -> node.put("enoughPermille", permille));
        return node;
    }

    /** Rules of zones that are on the menu; of others nothing is planned. */
    private static Optional<ArrayNode> rules(DaySetup setup) {
        ArrayNode rules = NODES.arrayNode();
        for (AllowanceRule rule : setup.learned().rules()) {
            boolean known = setup.menu().entries().stream()
                    .filter(entry -> entry.menuId().equals(rule.menuId()))
                    .flatMap(entry -> entry.zones().stream())
                    .anyMatch(zone -> zone.zone().equals(rule.zone()));
            if (!known) continue;
            ObjectNode node = rules.addObject().put("menuId", rule.menuId()).put("zone", rule.zone());
            rule.pinnedMilligrams().ifPresent(grams -> node.set("pinnedGrams", SetupFiles.thousandths(grams)));
            rule.resetOn().ifPresent(day -> node.put("learnedFrom", day.toString()));
        }
        return rules.isEmpty() ? Optional.empty() : Optional.of(rules);
    }

    private static ObjectNode visit(DaySetup setup, PastVisit visit) {
        ObjectNode node = NODES.objectNode()
                .put("date", visit.on().toString())
                .put("clientRef", visit.clientRef())
                .put("menuId", visit.menuId());
        Optional<PastUse> use = setup.learned().uses().stream()
                .filter(one -> one.on().equals(visit.on())
                        && one.clientRef().equals(visit.clientRef())
                        && one.menuId().equals(visit.menuId()))
                .findFirst();
        use.flatMap(one -> word(setup.menu().lengthPermille(), one.lengthPermille()))
                .ifPresent(word -> node.put("length", word));
        use.flatMap(one -> word(setup.menu().densityPermille(), one.densityPermille()))
                .ifPresent(word -> node.put("density", word));
        ArrayNode zones = node.putArray("zones");
        visit.zones().forEach(zone -> zones.add(zone(zone)));
        return node;
    }

    /** The word of the menu for a factor; one that has no word any more is left out. */
    private static Optional<String> word(Map<String, Integer> factors, int permille) {
        return factors.entrySet().stream()
                .filter(factor -> factor.getValue() == permille)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private static ObjectNode zone(PastZone zone) {
        ObjectNode node = NODES.objectNode().put("zone", zone.zone()).put("technique", zone.technique());
        node.setAll(mix(zone.lightenerId(), zone.ratioThousandths(), zone.strengthHundredths()));
        node.set("mixedGrams", SetupFiles.thousandths(zone.mixedMilligrams()));
        node.set("usedGrams", SetupFiles.thousandths(zone.usedMilligrams()));
        node.put("applyMinutes", zone.applyMinutes()).put("processMinutes", zone.processMinutes());
        zone.rinsedAfterMinutes().ifPresent(minutes -> node.put("rinsedAfterMinutes", minutes));
        zone.levelBeforeTenths().ifPresent(level -> node.set("levelBefore", SetupFiles.decimal(level, 1)));
        zone.levelAfterTenths().ifPresent(level -> node.set("levelAfter", SetupFiles.decimal(level, 1)));
        return node;
    }

    private static ObjectNode mix(String lightenerId, int ratio, int strength) {
        ObjectNode node = NODES.objectNode().put("lightenerId", lightenerId).put("ratio", SetupFiles.ratio(ratio));
        node.set("strengthPercent", SetupFiles.hundredths(strength));
        return node;
    }

    private static ObjectNode dated(LocalDate on, ObjectNode rest) {
        ObjectNode node = NODES.objectNode().put("date", on.toString());
        node.setAll(rest);
        return node;
    }

    private static ObjectNode swatch(SwatchTest swatch) {
        ObjectNode node =
                dated(swatch.on(), mix(swatch.lightenerId(), swatch.ratioThousandths(), swatch.strengthHundredths()));
        node.put("minutes", swatch.minutes());
        node.set("levelBefore", SetupFiles.decimal(swatch.levelBeforeTenths(), 1));
        node.set("levelAfter", SetupFiles.decimal(swatch.levelAfterTenths(), 1));
        return node;
    }

    private static ObjectNode strip(MixStrip strip) {
        ObjectNode node =
                dated(strip.on(), mix(strip.lightenerId(), strip.ratioThousandths(), strip.strengthHundredths()));
        node.set("ph", SetupFiles.decimal(strip.phTenths(), 1));
        node.set("chartStep", SetupFiles.decimal(strip.stepTenths(), 1));
        return node;
    }
}
