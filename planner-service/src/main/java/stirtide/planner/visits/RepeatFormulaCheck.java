package stirtide.planner.visits;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.events.formula.BowlFormula;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.mixing.formula.FormulaAnswer;
import stirtide.mixing.formula.FormulaQuestion;
import stirtide.mixing.formula.FormulaSearch;
import stirtide.mixing.strength.LegalLimits;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.Ratios;

/** Checks a zone of the last visit against today's directions, products and scales. */
record RepeatFormulaCheck(DaySetup setup, MenuZone zone, PastZone past) {
    /** How far apart two ratios are still called the same, in thousandths of the ratio. A choice of this tool, no source. */
    private static final int SAME_RATIO_PERMILLE = 10;

    static RepeatedZone of(DaySetup setup, MenuZone zone, PastZone past) {
        return new RepeatFormulaCheck(setup, zone, past).check();
    }

    private RepeatedZone check() {
        Optional<Directions> product = setup.directions(past.lightenerId());
        if (product.isEmpty()) return otherProduct(past.lightenerId() + " is not on the shelf any more");
        Optional<TechniqueRule> rule = rule(product.get());
        if (rule.isEmpty())
            return otherProduct("the directions of " + product.get().name() + " do not permit " + zone.technique());
        int ceiling = LegalLimits.ceilingHundredths(rule.get());
        int strength = Math.min(past.strengthHundredths(), ceiling);
        int ratio = inside(rule.get());
        return weighed(product.get(), strength, ratio, changed(rule.get(), strength, ratio));
    }

    private Optional<TechniqueRule> rule(Directions product) {
        return product.techniques().stream()
                .filter(one -> one.technique().equals(zone.technique()))
                .findFirst();
    }

    private int inside(TechniqueRule rule) {
        return Math.max(
                rule.lowestRatioThousandths(), Math.min(past.ratioThousandths(), rule.highestRatioThousandths()));
    }

    /**
     * The menu's lightener stands in, with the ratio and the strength of last time as far as its own directions go, and
     * never stronger than the menu has it: what one lightener did with a developer says little about another. A choice of
     * this tool, no source.
     */
    private RepeatedZone otherProduct(String why) {
        Optional<Directions> product = setup.directions(zone.lightenerId());
        Optional<TechniqueRule> rule = product.flatMap(this::rule);
        if (rule.isEmpty()) return byMenu(why);
        int strength = Math.min(past.strengthHundredths(), zone.strengthHundredths());
        String caution = why + " and another lightener may lift otherwise, so test a swatch first";
        return weighed(product.get(), strength, inside(rule.get()), Optional.of(caution));
    }

    private Optional<String> changed(TechniqueRule rule, int strength, int ratio) {
        if (strength != past.strengthHundredths())
            return Optional.of("the directions now permit up to " + AmountText.strength(strength) + " for "
                    + zone.technique() + " and not " + AmountText.strength(past.strengthHundredths()));
        if (ratio != past.ratioThousandths())
            return Optional.of("the directions now permit " + AmountText.ratio(rule.lowestRatioThousandths()) + " to "
                    + AmountText.ratio(rule.highestRatioThousandths()) + " for " + zone.technique() + " and not "
                    + AmountText.ratio(past.ratioThousandths()));
        return Optional.empty();
    }

    /** Tries the formula on every scale and in every bowl; the one closest to the wanted ratio counts. */
    private RepeatedZone weighed(Directions product, int strength, int ratio, Optional<String> why) {
        Optional<BowlFormula> best = attempts(product, strength, ratio)
                .filter(FormulaAnswer.Weigh.class::isInstance)
                .map(answer -> ((FormulaAnswer.Weigh) answer).formula())
                .min(closestTo(ratio));
        if (best.isEmpty()) {
            String refused = refused(product, strength, ratio);
            int menu = zone.strengthHundredths();
            boolean other = zone.lightenerId().equals(product.lightenerId()) && menu != strength;
            return other ? weighed(product, menu, ratio, Optional.of(refused)) : byMenu(refused);
        }
        int real =
                Ratios.thousandths(best.get().lightenerMilligrams(), best.get().developerMilligrams());
        boolean same = Math.abs(real - ratio) * 1000L <= (long) SAME_RATIO_PERMILLE * ratio;
        if (!same) {
            String coarse = "the scales here weigh " + AmountText.grams(past.usedMilligrams()) + " at "
                    + AmountText.ratio(real) + " and not at " + AmountText.ratio(ratio);
            return answer(RepeatedZone.Answer.NEAREST, product, strength, real, why.orElse(coarse) + "; planned ");
        }
        return why.map(reason -> answer(RepeatedZone.Answer.NEAREST, product, strength, ratio, reason + "; planned "))
                .orElseGet(() -> answer(RepeatedZone.Answer.EXACT, product, strength, ratio, "again "));
    }

    private static Comparator<BowlFormula> closestTo(int ratio) {
        return (one, other) -> Ratios.compareCloseness(
                one.lightenerMilligrams(),
                one.developerMilligrams(),
                other.lightenerMilligrams(),
                other.developerMilligrams(),
                ratio);
    }

    private String refused(Directions product, int strength, int ratio) {
        return attempts(product, strength, ratio)
                .map(answer -> (FormulaAnswer.Impossible) answer)
                .findFirst()
                .map(no -> no.reason() + " " + no.whatHelps())
                .orElse("there is no scale and bowl for it");
    }

    private Stream<FormulaAnswer> attempts(Directions product, int strength, int ratio) {
        return setup.salon().scales().stream()
                .flatMap(scale -> setup.salon().bowls().stream()
                        .map(bowl -> FormulaSearch.find(new FormulaQuestion(
                                product,
                                zone.technique(),
                                strength,
                                ratio,
                                setup.developers(),
                                Math.max(1, Math.min(past.usedMilligrams(), capacity(bowl))),
                                bowl.residueMilligrams(),
                                bowl.usableMilligrams(),
                                scale))));
    }

    private static int capacity(BowlSize bowl) {
        return bowl.usableMilligrams() - bowl.residueMilligrams();
    }

    private RepeatedZone byMenu(String why) {
        String name = setup.directions(zone.lightenerId()).map(Directions::name).orElse(zone.lightenerId());
        return new RepeatedZone(
                zone.zone(),
                RepeatedZone.Answer.NEAREST,
                zone.lightenerId(),
                zone.strengthHundredths(),
                zone.ratioThousandths(),
                past.usedMilligrams(),
                zone.zone() + ": " + why + "; planned by the menu, " + name + " "
                        + AmountText.ratio(zone.ratioThousandths()) + " with "
                        + AmountText.strength(zone.strengthHundredths()));
    }

    private RepeatedZone answer(
            RepeatedZone.Answer kind, Directions product, int strength, int ratio, String introduction) {
        return new RepeatedZone(
                zone.zone(),
                kind,
                product.lightenerId(),
                strength,
                ratio,
                past.usedMilligrams(),
                zone.zone() + ": " + introduction + product.name() + " " + AmountText.ratio(ratio) + " with "
                        + AmountText.strength(strength) + ", " + AmountText.grams(past.usedMilligrams())
                        + " used last time");
    }
}
