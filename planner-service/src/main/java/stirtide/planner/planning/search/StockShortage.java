package stirtide.planner.planning.search;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.Plan.PlanNote;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.mixing.text.AmountText;

/** Notes which lightener or developer, where it was counted, does not last for the bowls of the plan. */
final class StockShortage {
    private final List<PlannedBowl> bowls;
    private final PlanText words;
    private final List<PlanNote> notes = new ArrayList<>();

    private StockShortage(PlanQuestion question, List<PlannedBowl> bowls) {
        this.bowls = bowls;
        this.words = new PlanText(question);
    }

    /** One note for each product that runs out; bowls in order of mixing. */
    static List<PlanNote> notes(PlanQuestion question, List<PlannedBowl> bowls) {
        StockShortage stock = new StockShortage(question, bowls);
        for (Directions each : question.directions())
            each.countedMilligrams()
                    .ifPresent(counted -> stock.product(each.name(), counted, bowl -> lightener(bowl, each)));
        for (Developer each : question.developers())
            each.countedMilligrams()
                    .ifPresent(counted -> stock.product(label(each), counted, bowl -> developer(bowl, each)));
        return stock.notes;
    }

    /** Developers of one maker often share a name: the strength distinguishes them. */
    private static String label(Developer developer) {
        var percent = BigDecimal.valueOf(developer.strengthHundredths(), 2).stripTrailingZeros();
        return developer.name() + " of " + percent.toPlainString() + " %";
    }

    private static long lightener(PlannedBowl bowl, Directions directions) {
        boolean same = bowl.formula().lightenerId().equals(directions.lightenerId());
        return same ? bowl.formula().lightenerMilligrams() : 0;
    }

    private static long developer(PlannedBowl bowl, Developer developer) {
        return bowl.formula().developerParts().stream()
                .filter(part -> part.developerId().equals(developer.developerId()))
                .mapToLong(DeveloperPart::milligrams)
                .sum();
    }

    private void product(String name, long counted, ToLongFunction<PlannedBowl> used) {
        long needed = 0;
        Optional<PlannedBowl> lacks = Optional.empty();
        for (PlannedBowl bowl : bowls) {
            needed += used.applyAsLong(bowl);
            if (needed > counted && lacks.isEmpty()) lacks = Optional.of(bowl);
        }
        long lacking = needed - counted;
        lacks.ifPresent(bowl -> notes.add(new PlanNote(
                "STOCK_SHORT",
                bowl.service(),
                name + " runs out at " + words.time(bowl.mixStart()) + ", with bowl " + bowl.bowl() + ": "
                        + AmountText.roundedGrams(counted) + " are left by the count and "
                        + AmountText.roundedGrams(lacking)
                        + " more are needed today.")));
    }
}
