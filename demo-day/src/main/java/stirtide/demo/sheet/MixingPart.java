package stirtide.demo.sheet;

import stirtide.events.plan.PlannedBowl;

/** The bowls of the day in the order of mixing. */
final class MixingPart {
    private static final int[] WIDTHS = {7, 6, 7, 9, 12, 13, 16, -10};

    private MixingPart() {}

    static void write(Page page, SheetDay day) {
        page.heading("MIX, IN THIS ORDER");
        if (day.plan().bowls().isEmpty()) {
            page.line("Nothing to mix.");
            return;
        }
        page.row(WIDTHS, "start", "bowl", "chair", "client", "who", "use", "bowl, scale", "life ends");
        for (PlannedBowl bowl : day.plan().bowls()) {
            page.gap();
            bowl(page, day, bowl);
        }
    }

    private static void bowl(Page page, SheetDay day, PlannedBowl bowl) {
        page.row(
                WIDTHS,
                day.clock(bowl.mixStart()),
                bowl.bowl(),
                Integer.toString(bowl.chair()),
                day.client(bowl.service()),
                bowl.personId().map(day::personName).orElse("the stylist"),
                day.clock(bowl.neededFrom()) + "-" + day.clock(bowl.neededTo()),
                bowl.bowlSizeId() + ", " + bowl.scaleId(),
                day.clock(bowl.lifeEnds()));
        page.text("       ", String.join(", ", bowl.zones()));
        page.text(
                "       ",
                Wording.grams(bowl.formula().lightenerMilligrams()) + " "
                        + day.lightenerName(bowl.formula().lightenerId()));
        bowl.formula().developerParts().forEach(part -> page.text("     + ", day.part(part)));
        page.text("     = ", mix(bowl));
        for (String test : TestPart.open(day, bowl.service())) page.text("     ! ", test);
        if (bowl.waitMinutes() > 0)
            page.text("       ", "The client waits " + Wording.count(bowl.waitMinutes(), "minute") + " for it.");
    }

    private static String mix(PlannedBowl bowl) {
        int developer = bowl.formula().developerMilligrams();
        int lightener = Math.max(1, bowl.formula().lightenerMilligrams());
        int ratio = (int) ((developer * 1000L + lightener / 2) / lightener);
        boolean blend = bowl.formula().developerParts().size() > 1;
        return Wording.grams(bowl.formula().totalMilligrams()) + " at " + Wording.roundRatio(ratio) + ", directions "
                + Wording.ratio(bowl.formula().lowestRatioThousandths()) + " to "
                + Wording.ratio(bowl.formula().highestRatioThousandths())
                + (blend ? ", blend " + Wording.strength(bowl.formula().strengthHundredths()) : "");
    }
}
