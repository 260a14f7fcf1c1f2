package stirtide.planner.day.bowl;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Directions;
import stirtide.mixing.formula.BowlCorrection;
import stirtide.mixing.formula.FormulaQuestion;
import stirtide.mixing.formula.NextPour;
import stirtide.mixing.formula.Pour;
import stirtide.mixing.formula.PourText;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;

/**
 * What to pour next into a bowl of the day. The bowl is held to what {@link DirectionsCheck} holds it to: the window it was
 * begun with and the lowest ceiling among the techniques of its run. Enough is what was planned. One mix for two bowls is
 * asked about as it lies in the bowl it is mixed in.
 */
public final class NextPours {
    private static final String TECHNIQUE = "this bowl";

    private NextPours() {}

    /** What to pour after what was poured so far, in the order of pouring. */
    public static NextPour next(Day day, BowlState bowl, List<Pour> poured) {
        return BowlCorrection.next(question(day, bowl), bowl.planned(), poured);
    }

    /** The same in one sentence. */
    public static String sentence(Day day, NextPour next) {
        return PourText.sentence(next, names(day));
    }

    /** What was weighed as pours, lightener first. A liquid that weighs nothing was not poured. */
    static List<Pour> of(BowlState bowl, int lightenerMilligrams, List<DeveloperPart> parts) {
        List<Pour> pours = new ArrayList<>();
        pours.add(new Pour(bowl.planned().lightenerId(), lightenerMilligrams));
        for (DeveloperPart part : parts)
            if (part.milligrams() > 0) pours.add(new Pour(part.developerId(), part.milligrams()));
        return pours;
    }

    private static FormulaQuestion question(Day day, BowlState bowl) {
        var planned = bowl.planned();
        var directions = DirectionsCheck.directions(day, bowl);
        int ceiling = Math.max(DirectionsCheck.strengthCeiling(day, bowl, directions), planned.strengthHundredths());
        int residue = Math.min(BowlBalance.residueMilligrams(day, bowl), planned.totalMilligrams() - 1);
        return new FormulaQuestion(
                only(directions, planned.lowestRatioThousandths(), planned.highestRatioThousandths(), ceiling),
                TECHNIQUE,
                planned.strengthHundredths(),
                planned.wantedRatioThousandths(),
                day.opened().developers(),
                planned.totalMilligrams() - residue,
                residue,
                day.opened()
                        .salon()
                        .bowlSize(bowl.bowlSizeId())
                        .map(BowlSize::usableMilligrams)
                        .orElse(planned.totalMilligrams()),
                DirectionsCheck.scale(day, bowl));
    }

    private static Directions only(Directions all, int lowestRatio, int highestRatio, int ceiling) {
        var rule = new Directions.TechniqueRule(TECHNIQUE, false, lowestRatio, highestRatio, ceiling, 0);
        return all.withTechniques(List.of(rule));
    }

    private static Map<String, String> names(Day day) {
        Map<String, String> names = new TreeMap<>();
        day.opened().directions().forEach(product -> names.put(product.lightenerId(), product.name()));
        day.opened().developers().forEach(product -> names.put(product.developerId(), product.name()));
        return names;
    }
}
