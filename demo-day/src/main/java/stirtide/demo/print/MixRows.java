package stirtide.demo.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stirtide.bar.text.CountText;
import stirtide.demo.print.MixRow.Weight;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.Person;
import stirtide.events.setup.Scale;
import stirtide.mixing.strength.BowlStrength;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.Ratios;

/** The bowls of a day as rows of a prep sheet. */
final class MixRows {
    private static final String STYLIST = "The stylist";

    private MixRows() {}

    /**
     * The rows of each person who mixes, in the order of mixing: assistants as the salon lists them, those with nothing to
     * mix among them, then others, then the bowls the stylists mix.
     */
    static Map<String, List<MixRow>> byPerson(PrepSheetDay day) {
        Map<Optional<String>, List<MixRow>> rows = new LinkedHashMap<>();
        for (Person person : day.setup().salon().people())
            if (person.role() == Person.Role.ASSISTANT) rows.put(Optional.of(person.personId()), new ArrayList<>());
        for (MixRow row : of(day))
            if (row.personId().isPresent())
                rows.computeIfAbsent(row.personId(), first -> new ArrayList<>()).add(row);
        for (MixRow row : of(day))
            if (row.personId().isEmpty())
                rows.computeIfAbsent(Optional.empty(), first -> new ArrayList<>())
                        .add(row);
        Map<String, List<MixRow>> named = new LinkedHashMap<>();
        rows.forEach((person, own) -> named.put(name(day, person, named), own));
        return named;
    }

    /** Two people of one name are told apart by their ids. */
    private static String name(PrepSheetDay day, Optional<String> person, Map<String, List<MixRow>> taken) {
        String name = person.map(day::personName).orElse(STYLIST);
        return taken.containsKey(name) ? name + " (" + person.orElse("") + ")" : name;
    }

    /** All rows, by the start of the mix; the bowl a mix is made in stands before the other bowl of that mix. */
    static List<MixRow> of(PrepSheetDay day) {
        List<PlannedBowl> bowls = day.plan().bowls();
        List<String> ids = bowls.stream().map(PlannedBowl::bowl).toList();
        return bowls.stream()
                .sorted(Comparator.comparing((PlannedBowl bowl) -> day.plan().beginOf(bowl))
                        .thenComparing(bowl -> ids.indexOf(mixedIn(day, bowl)))
                        .thenComparing(bowl -> !bowl.bowl().equals(mixedIn(day, bowl))))
                .map(bowl -> row(day, bowl))
                .toList();
    }

    private static String mixedIn(PrepSheetDay day, PlannedBowl bowl) {
        return day.plan()
                .batchOf(bowl.bowl())
                .map(batch -> batch.bowlIds().get(0))
                .orElse(bowl.bowl());
    }

    private static MixRow row(PrepSheetDay day, PlannedBowl bowl) {
        Optional<PlannedBatch> batch = day.plan().batchOf(bowl.bowl());
        boolean mixed = mixedIn(day, bowl).equals(bowl.bowl());
        BowlFormula formula = batch.map(PlannedBatch::formula).orElse(bowl.formula());
        String size = batch.map(mix -> share(mix, bowl).bowlSizeId()).orElse(bowl.bowlSizeId());
        String scale = batch.map(PlannedBatch::scaleId).orElse(bowl.scaleId());
        var lifeEnds = batch.map(PlannedBatch::lifeEnds).orElse(bowl.lifeEnds());
        return new MixRow(
                bowl.bowl(),
                batch.map(PlannedBatch::personId).or(bowl::personId),
                day.plan().beginOf(bowl),
                batch.map(PlannedBatch::mixEnd).orElse(bowl.mixEnd()),
                lifeEnds,
                bowl.neededFrom(),
                bowl.neededTo(),
                day.clock(day.plan().beginOf(bowl)),
                Integer.toString(bowl.chair()),
                day.client(bowl.service()),
                day.clock(bowl.neededFrom()) + "-" + day.clock(bowl.neededTo()),
                size + ", " + scale,
                size,
                day.clock(lifeEnds),
                String.join(", ", bowl.zones()),
                batch.filter(mix -> mixed)
                        .map(mix ->
                                "ONE MIX, TWO BOWLS: " + String.join(" and ", mix.bowlIds()) + ", weighed together"),
                mixed ? weights(day, formula) : List.of(poured(day, batch.orElseThrow(), bowl)),
                mixed ? Optional.of(sum(day, formula, scale)) : Optional.empty(),
                mixed ? Optional.of(strength(formula)) : Optional.empty(),
                batch.filter(mix -> mixed).map(MixRows::divide),
                OpenTestsSection.open(day, bowl.service()),
                bowl.waitMinutes() == 0
                        ? Optional.empty()
                        : Optional.of("The client waits " + CountText.of(bowl.waitMinutes(), "minute") + " for it."));
    }

    private static PlannedBatch.Share share(PlannedBatch batch, PlannedBowl bowl) {
        return batch.shares().stream()
                .filter(share -> share.bowl().equals(bowl.bowl()))
                .findFirst()
                .orElseThrow();
    }

    private static Weight poured(PrepSheetDay day, PlannedBatch batch, PlannedBowl bowl) {
        return new Weight(
                AmountText.scaleGrams(share(batch, bowl).milligrams()), "from the mix of " + mixedIn(day, bowl));
    }

    private static String divide(PlannedBatch batch) {
        return "then divide by weight: "
                + AmountText.scaleGrams(batch.shares().get(0).milligrams()) + " stay, "
                + AmountText.scaleGrams(batch.shares().get(1).milligrams()) + " go into "
                + batch.bowlIds().get(1);
    }

    private static List<Weight> weights(PrepSheetDay day, BowlFormula formula) {
        List<Weight> weights = new ArrayList<>();
        weights.add(new Weight(
                AmountText.scaleGrams(formula.lightenerMilligrams()), day.lightenerName(formula.lightenerId())));
        for (DeveloperPart part : formula.developerParts())
            weights.add(new Weight(AmountText.scaleGrams(part.milligrams()), day.liquidName(part.developerId())));
        return weights;
    }

    /** The ratio is that of the weights above. */
    private static String sum(PrepSheetDay day, BowlFormula formula, String scaleId) {
        int ratio = Ratios.thousandths(Math.max(1, formula.lightenerMilligrams()), formula.developerMilligrams());
        return AmountText.scaleGrams(formula.totalMilligrams()) + " at " + AmountText.ratio(ratio) + ", directions "
                + AmountText.ratio(formula.lowestRatioThousandths()) + " to "
                + AmountText.ratio(formula.highestRatioThousandths())
                + day.setup()
                        .salon()
                        .scale(scaleId)
                        .map(scale -> "; weigh to " + AmountText.grams(step(scale, formula.totalMilligrams())))
                        .orElse("");
    }

    /** The last two ratios are those between which the true one lies, as far as the scale may err. */
    private static String strength(BowlFormula formula) {
        return (formula.developerParts().size() > 1 ? "blend " : "developer ")
                + AmountText.strength(formula.strengthHundredths()) + ", bowl "
                + AmountText.percent(BowlStrength.hundredths(formula)) + "; scale errs: "
                + AmountText.ratio(formula.worstLowRatioThousandths()) + " to "
                + AmountText.ratio(formula.worstHighRatioThousandths());
    }

    /** What the scale shows at that load. */
    private static int step(Scale scale, int milligrams) {
        return scale.ranges().stream()
                .filter(range -> range.maximumMilligrams() >= milligrams)
                .findFirst()
                .orElse(scale.ranges().get(scale.ranges().size() - 1))
                .divisionMilligrams();
    }
}
