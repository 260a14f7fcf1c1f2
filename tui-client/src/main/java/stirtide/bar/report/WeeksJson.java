package stirtide.bar.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.model.OverMixBars;
import stirtide.bar.model.OverMixSelection;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

/** The known days as JSON: sums, what was over-mixed by cause, service, stylist and lightener, and the limits. */
final class WeeksJson {
    private WeeksJson() {}

    static String of(DayView view, List<DayOverMix> past) {
        ObjectNode node = ContractJson.mapper().createObjectNode();
        node.put("salonId", view.salonId()).put("currency", view.currency());
        ArrayNode days = node.putArray("days");
        var all = new ArrayList<>(past);
        all.add(DayOverMix.of(view));
        all.forEach(day -> day(days.addObject(), day));
        OverMixBars.limits(past)
                .ifPresent(limits -> node.putObject("limits")
                        .put("meanMilligrams", limits.mean())
                        .put("meanRangeMilligrams", limits.meanRange())
                        .put("lowerMilligrams", limits.lower())
                        .put("upperMilligrams", limits.upper()));
        return node.toPrettyString() + "\n";
    }

    private static void day(ObjectNode node, DayOverMix day) {
        node.put("date", day.date().toString())
                .put("mixedMilligrams", day.mixedMilligrams())
                .put("overMixedMilligrams", day.overMixedMilligrams())
                .put("overMixedCost", day.cost());
        for (OverMixSelection.Sort sort : OverMixSelection.Sort.OF_MANY_DAYS) {
            ObjectNode by = node.putObject("by"
                    + Character.toUpperCase(sort.word().charAt(0)) + sort.word().substring(1));
            OverMixBars.bars(List.of(day), sort).forEach(bar -> by.put(bar.label(), bar.milligrams()));
        }
    }
}
