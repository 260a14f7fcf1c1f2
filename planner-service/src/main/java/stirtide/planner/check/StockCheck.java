package stirtide.planner.check;

import java.math.BigDecimal;
import java.util.Map;
import java.util.TreeMap;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.Developer;
import stirtide.planner.planning.search.PlanQuestion;

/** A plan says of every counted product that it will not last, and of no other. */
final class StockCheck {
    private StockCheck() {}

    static void check(PlanQuestion question, Plan plan, Findings findings) {
        Map<String, Long> left = new TreeMap<>();
        question.directions()
                .forEach(each -> each.countedMilligrams().ifPresent(grams -> left.put(each.name(), (long) grams)));
        question.developers()
                .forEach(each -> each.countedMilligrams().ifPresent(grams -> left.put(label(each), (long) grams)));
        for (PlannedBowl bowl : plan.bowls()) {
            question.directions().stream()
                    .filter(each -> each.lightenerId().equals(bowl.formula().lightenerId()))
                    .forEach(each -> take(left, each.name(), bowl.formula().lightenerMilligrams()));
            for (DeveloperPart part : bowl.formula().developerParts())
                question.developers().stream()
                        .filter(each -> each.developerId().equals(part.developerId()))
                        .forEach(each -> take(left, label(each), part.milligrams()));
        }
        left.forEach((name, milligrams) -> findings.unless(
                noted(plan, name) == milligrams < 0,
                "%s: %d mg are left after the day, the notes say otherwise",
                name,
                milligrams));
    }

    /** As the notes name it: several strengths may share a name. */
    private static String label(Developer developer) {
        return developer.name() + " of "
                + new BigDecimal(developer.strengthHundredths())
                        .movePointLeft(2)
                        .stripTrailingZeros()
                        .toPlainString()
                + " %";
    }

    private static void take(Map<String, Long> left, String name, int milligrams) {
        left.computeIfPresent(name, (key, grams) -> grams - milligrams);
    }

    private static boolean noted(Plan plan, String name) {
        return plan.notes().stream()
                .anyMatch(note ->
                        note.kind().equals("STOCK_SHORT") && note.sentence().startsWith(name + " runs out"));
    }
}
