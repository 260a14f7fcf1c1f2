package stirtide.planner.salonfiles.rules;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stirtide.events.setup.Menu;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.setup.SwatchTest;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.mixing.text.AmountText;
import stirtide.planner.salonfiles.json.FieldPath;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.json.FieldText;
import stirtide.planner.salonfiles.json.HistoryFile;
import stirtide.planner.salonfiles.json.UniqueIds;

/**
 * Rules of what a salon brings along from earlier days.
 *
 * @param menu menu of the salon
 */
public record VisitHistoryRules(Menu menu) {
    /** Refuses what cannot be. */
    public void check(HistoryFile history, FieldPath at) {
        for (Located<HistoryFile.Visit> each : at.each("visits", history.visits())) visit(each.value(), each.path());
        for (Located<SwatchTest> each : at.each("swatches", history.swatches()))
            ratio(each.value().ratioThousandths(), each.path());
        for (Located<MixStrip> each : at.each("strips", history.strips()))
            ratio(each.value().ratioThousandths(), each.path());
        Set<String> ruled = new HashSet<>();
        for (Located<AllowanceRule> each : at.each("allowances", history.allowances()))
            rule(each.value(), each.path().at("zone"), ruled);
    }

    private void visit(HistoryFile.Visit visit, FieldPath at) {
        factor(visit.length(), menu.lengthPermille(), at.at("length"));
        factor(visit.density(), menu.densityPermille(), at.at("density"));
        UniqueIds zones = new UniqueIds("zone");
        for (Located<PastZone> each : at.each("zones", visit.zones())) {
            PastZone zone = each.value();
            zones.take(zone.zone(), each.path().at("zone"));
            ratio(zone.ratioThousandths(), each.path());
            if (zone.usedMilligrams() > zone.mixedMilligrams())
                each.path()
                        .refuse(
                                "usedGrams",
                                FieldText.thousandths(zone.usedMilligrams()),
                                "at most the grams mixed, " + FieldText.thousandths(zone.mixedMilligrams()));
        }
    }

    private static void factor(Optional<String> word, Map<String, Integer> known, FieldPath at) {
        word.filter(each -> !known.containsKey(each))
                .ifPresent(each -> at.refuse(
                        FieldText.quoted(each), "one of " + String.join(", ", known.keySet()) + " (menu.json)"));
    }

    private static void ratio(int thousandths, FieldPath mix) {
        if (thousandths == 0)
            mix.refuse("ratio", FieldText.quoted(AmountText.ratio(0)), "more developer than none, such as \"1:1\"");
    }

    private void rule(AllowanceRule rule, FieldPath at, Set<String> ruled) {
        String zone = FieldText.quoted(rule.zone());
        if (HistoryFile.zone(menu, rule.menuId(), rule.zone()).isEmpty())
            at.refuse(zone, "a zone of the menu entry " + rule.menuId() + " (menu.json)");
        if (!ruled.add(rule.menuId() + " " + rule.zone())) at.refuse(zone + " a second time", "one rule for each zone");
    }
}
