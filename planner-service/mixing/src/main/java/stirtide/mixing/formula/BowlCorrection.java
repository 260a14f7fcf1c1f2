package stirtide.mixing.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.mixing.formula.NextPour.Unreadable;
import stirtide.mixing.strength.Liquid;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.WorstCaseCheck;

/**
 * Keeps a bowl inside the directions while it is weighed. After each real weight the rest is computed anew: first with
 * the parts still to come, else with one part topped up besides, else the bowl is lost. Called again after a correction
 * that went wrong in turn, it corrects that too, and the errors of all pours count.
 */
public final class BowlCorrection {
    private BowlCorrection() {}

    /**
     * What to do next.
     *
     * @param question what the bowl was planned for
     * @param planned the formula the bowl was begun with, an answer to {@code question}
     * @param poured what was poured so far, in order; where a pour went on without a tare in between, its sum
     */
    public static NextPour next(FormulaQuestion question, BowlFormula planned, List<Pour> poured) {
        Optional<TechniqueRule> rule = FormulaLimits.ruleOf(question);
        if (rule.isEmpty()) {
            FormulaAnswer.Impossible unknown = FormulaLimits.unknownTechnique(question);
            return new Unreadable(unknown.reason(), unknown.whatHelps());
        }
        WorstCaseCheck check = FormulaLimits.checkOf(question, rule.get());
        List<Liquid> liquids = liquidsOf(question, planned);
        Optional<Unreadable> unreadable = unreadable(planned, poured, check);
        if (unreadable.isPresent()) return unreadable.get();
        PouredBowl bowl = bowlOf(planned, poured);
        Bench bench = new Bench(question, planned, check, liquids);
        return poured.isEmpty() ? bench.begin() : bench.goOn(bowl);
    }

    private static List<Liquid> liquidsOf(FormulaQuestion question, BowlFormula planned) {
        List<Liquid> liquids = new ArrayList<>();
        for (DeveloperPart part : planned.developerParts())
            liquids.add(question.shelf().stream()
                    .filter(developer -> developer.developerId().equals(part.developerId()))
                    .findFirst()
                    .map((Developer developer) -> Liquid.of(developer))
                    .orElse(Liquid.WATER));
        return liquids;
    }

    private static Optional<Unreadable> unreadable(BowlFormula planned, List<Pour> poured, WorstCaseCheck check) {
        long total = 0;
        for (Pour pour : poured) {
            total += pour.milligrams();
            if (kindOf(planned, pour.partId()) < 0)
                return Optional.of(new Unreadable(
                        pour.partId() + " is not part of this bowl.",
                        "One of: " + String.join(", ", partIds(planned)) + "."));
            if (pour.milligrams() <= 0 || !check.errors().shows(check.runningTotal() ? total : pour.milligrams()))
                return Optional.of(new Unreadable(
                        "The scale cannot show " + AmountText.grams(pour.milligrams()) + " here.",
                        "A weight above 0 in steps of "
                                + AmountText.grams(check.errors().stepMilligrams()) + ", up to "
                                + AmountText.grams(check.errors().maximumMilligrams()) + "."));
        }
        return Optional.empty();
    }

    private static List<String> partIds(BowlFormula planned) {
        List<String> ids = new ArrayList<>();
        ids.add(planned.lightenerId());
        planned.developerParts().forEach(part -> ids.add(part.developerId()));
        return ids;
    }

    private static int kindOf(BowlFormula planned, String partId) {
        return partIds(planned).indexOf(partId);
    }

    private static PouredBowl bowlOf(BowlFormula planned, List<Pour> poured) {
        int[] kinds =
                poured.stream().mapToInt(pour -> kindOf(planned, pour.partId())).toArray();
        return new PouredBowl(kinds, poured.stream().mapToInt(Pour::milligrams).toArray());
    }

    /** One bowl on one scale. */
    private record Bench(FormulaQuestion question, BowlFormula planned, WorstCaseCheck check, List<Liquid> liquids) {
        NextPour begin() {
            int first = planned.lightenerMilligrams();
            return new NextPour.Add(planned.lightenerId(), first, first, false, false, planned, (int)
                    (planned.totalMilligrams() - question.leastMilligrams()));
        }

        NextPour goOn(PouredBowl bowl) {
            TopUps topUps = new TopUps(check, liquids, question);
            List<Integer> missing = new ArrayList<>();
            for (int kind = 0; kind <= liquids.size(); kind++) if (!bowl.has(kind)) missing.add(kind);
            if (missing.isEmpty() && topUps.isEnough(bowl)) return ready(bowl);
            Optional<TopUps.Found> found = bowl.kinds().length == 1 && bowl.has(0) && liquids.size() > 2
                    ? allLiquids(bowl)
                    : topUps(topUps, bowl, missing);
            return found.map(way -> add(bowl, way)).orElseGet(() -> bin(bowl));
        }

        /** With only lightener poured and three liquids to come, they are split as in the search for a formula. */
        private Optional<TopUps.Found> allLiquids(PouredBowl bowl) {
            LiquidSplit split = new LiquidSplit(check, liquids, question.strengthHundredths());
            return WeightSearch.withLightener(check, split, question, bowl.of(0))
                    .map(found -> {
                        PouredBowl after = bowl;
                        List<int[]> pours = new ArrayList<>();
                        for (int k = 0; k < found.parts().length; k++) {
                            pours.add(new int[] {k + 1, found.parts()[k]});
                            after = after.plus(k + 1, found.parts()[k]);
                        }
                        return new TopUps.Found(pours, after);
                    });
        }

        private Optional<TopUps.Found> topUps(TopUps topUps, PouredBowl bowl, List<Integer> missing) {
            if (missing.size() > 2) return Optional.empty();
            if (missing.size() == 2) return topUps.best(bowl, List.of(new int[] {missing.get(0), missing.get(1)}));
            List<int[]> ones = new ArrayList<>();
            List<int[]> twos = new ArrayList<>();
            for (int a = 0; a <= liquids.size(); a++) {
                if (missing.isEmpty() || missing.get(0) == a) ones.add(new int[] {a});
                for (int b = 0; b <= liquids.size(); b++)
                    if (a != b && (missing.isEmpty() || missing.get(0) == a || missing.get(0) == b))
                        twos.add(new int[] {a, b});
            }
            Optional<TopUps.Found> one = topUps.best(bowl, ones);
            return one.isPresent() ? one : topUps.best(bowl, twos);
        }

        private NextPour add(PouredBowl bowl, TopUps.Found way) {
            int kind = way.pours().get(0)[0];
            int milligrams = way.pours().get(0)[1];
            boolean continues = bowl.lastIs(kind);
            int shown = check.runningTotal()
                    ? bowl.total() + milligrams
                    : continues ? bowl.amounts()[bowl.amounts().length - 1] + milligrams : milligrams;
            return new NextPour.Add(
                    partIds(planned).get(kind),
                    milligrams,
                    shown,
                    bowl.has(kind),
                    continues,
                    way.after().asFormula(planned, liquids, check),
                    (int) (way.after().total() - question.leastMilligrams()));
        }

        private NextPour ready(PouredBowl bowl) {
            return new NextPour.Ready(
                    bowl.asFormula(planned, liquids, check),
                    (int) (bowl.total() - question.leastMilligrams()),
                    Math.max(0, bowl.total() - question.usableMilligrams()));
        }

        private NextPour bin(PouredBowl bowl) {
            return new NextPour.BinAndRestart(
                    bowl.total(),
                    "No correction brings the bowl inside " + AmountText.ratio(check.lowestRatio()) + " to "
                            + AmountText.ratio(check.highestRatio()) + " and the strength within the "
                            + AmountText.grams(question.usableMilligrams()) + " it may hold: bin it and start again, "
                            + AmountText.grams(bowl.total()) + " lost.");
        }
    }
}
