package stirtide.demo.print;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.bar.text.CountText;
import stirtide.events.formula.BowlFormula;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBowl;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.Ratios;

/** The bowls of the day in the order of mixing. */
final class MixingSection {
    private static final int[] WIDTHS = {7, 6, 7, 9, 12, 13, 16, -10};

    private MixingSection() {}

    static void write(TextPage page, PrepSheetDay day) {
        page.heading("MIX, IN THIS ORDER");
        if (day.plan().bowls().isEmpty()) {
            page.line("Nothing to mix.");
            return;
        }
        page.row(WIDTHS, "start", "bowl", "chair", "client", "who", "use", "bowl, scale", "life ends");
        for (PlannedBowl bowl : inOrder(day)) {
            page.gap();
            bowl(page, day, bowl);
        }
    }

    /** Sorted by the start of the mix; the bowl a mix is made in stands before the other bowl of that mix. */
    private static List<PlannedBowl> inOrder(PrepSheetDay day) {
        List<PlannedBowl> bowls = day.plan().bowls();
        List<String> ids = bowls.stream().map(PlannedBowl::bowl).toList();
        return bowls.stream()
                .sorted(Comparator.comparing((PlannedBowl bowl) -> day.plan().beginOf(bowl))
                        .thenComparing(bowl -> ids.indexOf(mixedIn(day, bowl)))
                        .thenComparing(bowl -> !bowl.bowl().equals(mixedIn(day, bowl))))
                .toList();
    }

    private static String mixedIn(PrepSheetDay day, PlannedBowl bowl) {
        return day.plan()
                .batchOf(bowl.bowl())
                .map(batch -> batch.bowlIds().get(0))
                .orElse(bowl.bowl());
    }

    private static void bowl(TextPage page, PrepSheetDay day, PlannedBowl bowl) {
        Optional<PlannedBatch> batch = day.plan().batchOf(bowl.bowl());
        String size = batch.map(mix -> share(mix, bowl).bowlSizeId()).orElse(bowl.bowlSizeId());
        page.row(
                WIDTHS,
                day.clock(day.plan().beginOf(bowl)),
                bowl.bowl(),
                Integer.toString(bowl.chair()),
                day.client(bowl.service()),
                batch.map(PlannedBatch::personId)
                        .or(bowl::personId)
                        .map(day::personName)
                        .orElse("the stylist"),
                day.clock(bowl.neededFrom()) + "-" + day.clock(bowl.neededTo()),
                size + ", " + batch.map(PlannedBatch::scaleId).orElse(bowl.scaleId()),
                day.clock(batch.map(PlannedBatch::lifeEnds).orElse(bowl.lifeEnds())));
        page.text("       ", String.join(", ", bowl.zones()));
        if (batch.isEmpty()) weights(page, day, bowl.formula());
        else if (mixedIn(day, bowl).equals(bowl.bowl())) together(page, day, batch.get());
        else
            page.text(
                    "       ",
                    "from the mix of " + mixedIn(day, bowl) + ": "
                            + AmountText.scaleGrams(share(batch.get(), bowl).milligrams()));
        for (String test : OpenTestsSection.open(day, bowl.service())) page.text("     ! ", test);
        if (bowl.waitMinutes() > 0)
            page.text("       ", "The client waits " + CountText.of(bowl.waitMinutes(), "minute") + " for it.");
    }

    private static PlannedBatch.Share share(PlannedBatch batch, PlannedBowl bowl) {
        return batch.shares().stream()
                .filter(share -> share.bowl().equals(bowl.bowl()))
                .findFirst()
                .orElseThrow();
    }

    private static void together(TextPage page, PrepSheetDay day, PlannedBatch batch) {
        page.text("       ", "ONE MIX, TWO BOWLS: " + String.join(" and ", batch.bowlIds()) + ", weighed together");
        weights(page, day, batch.formula());
        page.text(
                "       ",
                "then divide by weight: "
                        + AmountText.scaleGrams(batch.shares().get(0).milligrams()) + " stay, "
                        + AmountText.scaleGrams(batch.shares().get(1).milligrams()) + " go into "
                        + batch.bowlIds().get(1));
    }

    private static void weights(TextPage page, PrepSheetDay day, BowlFormula formula) {
        page.text(
                "       ",
                AmountText.scaleGrams(formula.lightenerMilligrams()) + " " + day.lightenerName(formula.lightenerId()));
        formula.developerParts().forEach(part -> page.text("     + ", day.part(part)));
        page.text("     = ", mix(formula));
    }

    private static String mix(BowlFormula formula) {
        int developer = formula.developerMilligrams();
        int lightener = Math.max(1, formula.lightenerMilligrams());
        int ratio = Ratios.thousandths(lightener, developer);
        boolean blend = formula.developerParts().size() > 1;
        return AmountText.scaleGrams(formula.totalMilligrams()) + " at " + AmountText.roundedRatio(ratio)
                + ", directions "
                + AmountText.ratio(formula.lowestRatioThousandths()) + " to "
                + AmountText.ratio(formula.highestRatioThousandths())
                + (blend ? ", blend " + AmountText.strength(formula.strengthHundredths()) : "");
    }
}
