package stirtide.demo.print;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.view.StockCard;
import stirtide.mixing.text.AmountText;
import stirtide.planner.stock.StockReport;

/** Products the day needs, beside the counted stock. */
final class ShelfSection {
    private static final int[] WIDTHS = {40, -12, -10, -14};

    private ShelfSection() {}

    static void write(SheetWriter page, PrepSheetDay day) {
        Map<String, Long> lighteners = new TreeMap<>();
        Map<String, Long> developers = new TreeMap<>();
        for (PlannedBowl bowl : day.plan().bowls()) {
            lighteners.merge(bowl.formula().lightenerId(), (long) bowl.formula().lightenerMilligrams(), Long::sum);
            for (DeveloperPart part : bowl.formula().developerParts())
                developers.merge(part.developerId(), (long) part.milligrams(), Long::sum);
        }
        page.heading("HAVE READY");
        page.row(WIDTHS, "product", "needed", "packs", "counted");
        for (Directions directions : day.setup().directions())
            row(
                    page,
                    directions.name(),
                    lighteners.getOrDefault(directions.lightenerId(), 0L),
                    directions.packMilligrams(),
                    directions.countedMilligrams());
        for (Developer developer : day.setup().developers())
            row(
                    page,
                    PrepSheetDay.liquid(developer),
                    developers.getOrDefault(developer.developerId(), 0L),
                    developer.packMilligrams(),
                    developer.countedMilligrams());
        long water = developers.getOrDefault(DeveloperPart.WATER, 0L);
        for (StockCard line : StockReport.of(day.setup(), day.plan().bowls(), List.of()))
            if (line.packsToBuy() > 0 || line.runsOutAt().isPresent()) page.text("  > ", line.sentence() + ".");
        if (water > 0) page.row(WIDTHS, "water", AmountText.roundedGrams(water), "", "");
    }

    private static void row(SheetWriter page, String name, long needed, int pack, Optional<Integer> counted) {
        if (needed == 0) return;
        long packs = (needed + pack - 1) / pack;
        page.row(
                WIDTHS,
                name,
                AmountText.roundedGrams(needed),
                Long.toString(packs),
                counted.map(milligrams -> AmountText.roundedGrams(milligrams)).orElse("not counted"));
        if (counted.isPresent() && counted.get() < needed)
            page.text("  ! ", AmountText.roundedGrams(needed - counted.get()) + " of it are missing on the shelf.");
    }
}
