package stirtide.planner.stock;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.DaySetup;
import stirtide.events.view.StockCard;
import stirtide.mixing.text.AmountText;

/** What the bowls of a plan need against what is on the shelf. */
public final class StockReport {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private final List<PlannedBowl> bowls;
    private final ZoneId zone;

    private StockReport(List<PlannedBowl> bowls, ZoneId zone) {
        this.bowls = bowls;
        this.zone = zone;
    }

    /**
     * One line a product, lighteners first, in the order of the day's setup.
     *
     * @param bowls bowls still to be weighed
     * @param events what happened to the shelf since its count; without any, the counts of the setup hold
     */
    public static List<StockCard> of(DaySetup setup, List<PlannedBowl> bowls, List<ShelfEvent> events) {
        List<PlannedBowl> ordered = bowls.stream()
                .sorted(Comparator.comparing(PlannedBowl::mixStart).thenComparing(PlannedBowl::bowl))
                .toList();
        StockReport report = new StockReport(ordered, ZoneId.of(setup.salon().zone()));
        List<StockCard> lines = new ArrayList<>();
        setup.directions()
                .forEach(product -> lines.add(report.line(
                        product.lightenerId(),
                        product.name(),
                        product.packMilligrams(),
                        onShelf(product.lightenerId(), product.countedMilligrams(), setup, events),
                        weighed(product.lightenerId(), events))));
        setup.developers()
                .forEach(product -> lines.add(report.line(
                        product.developerId(),
                        product.name() + ", " + AmountText.strength(product.strengthHundredths()),
                        product.packMilligrams(),
                        onShelf(product.developerId(), product.countedMilligrams(), setup, events),
                        weighed(product.developerId(), events))));
        return lines;
    }

    private static Optional<Long> onShelf(
            String productId, Optional<Integer> counted, DaySetup setup, List<ShelfEvent> events) {
        List<ShelfEvent> all = new ArrayList<>();
        Instant opening =
                setup.date().atStartOfDay(ZoneId.of(setup.salon().zone())).toInstant();
        counted.ifPresent(milligrams -> all.add(new ShelfEvent.Counted(productId, opening, milligrams)));
        all.addAll(events);
        return ShelfCount.of(productId, all);
    }

    private static long weighed(String productId, List<ShelfEvent> events) {
        long sum = 0;
        for (ShelfEvent event : events)
            if (event instanceof ShelfEvent.Weighed weighed
                    && weighed.productId().equals(productId)) sum += weighed.milligrams();
        return sum;
    }

    private StockCard line(String productId, String name, int pack, Optional<Long> onShelf, long weighed) {
        long needed = 0;
        Optional<Instant> runsOut = Optional.empty();
        for (PlannedBowl bowl : bowls) {
            long part = of(bowl.formula(), productId);
            needed += part;
            if (part > 0 && runsOut.isEmpty() && onShelf.isPresent() && needed > onShelf.get())
                runsOut = Optional.of(bowl.mixStart());
        }
        // tomorrow is taken to need what today needs from morning to evening: nothing else is known of it here
        long missing = onShelf.isPresent() ? needed + (weighed + needed) - onShelf.get() : 0;
        int buy = packs(Math.max(0, missing), pack);
        return new StockCard(
                productId,
                name,
                needed,
                onShelf,
                packs(needed, pack),
                runsOut,
                buy,
                words(name, needed, weighed, onShelf, runsOut, buy));
    }

    private static long of(BowlFormula formula, String productId) {
        long sum = formula.lightenerId().equals(productId) ? formula.lightenerMilligrams() : 0;
        for (DeveloperPart part : formula.developerParts())
            if (part.developerId().equals(productId)) sum += part.milligrams();
        return sum;
    }

    private String words(
            String name, long needed, long weighed, Optional<Long> onShelf, Optional<Instant> runsOut, int packsToBuy) {
        String packs = packsToBuy + (packsToBuy == 1 ? " pack" : " packs") + " for tomorrow";
        if (needed == 0 && onShelf.isPresent() && packsToBuy > 0)
            return name + ": " + AmountText.grams(onShelf.get()) + " left; today took " + AmountText.grams(weighed)
                    + ": buy " + packs;
        String start = name + ": the plan needs " + AmountText.grams(needed);
        if (onShelf.isEmpty()) return start + ", nobody has counted it";
        String shelf = start + ", " + AmountText.grams(onShelf.get()) + " on the shelf";
        String out = runsOut.map(at -> ", not enough from the bowl of " + CLOCK.format(at.atZone(zone)) + " on")
                .orElse("");
        String buy = packsToBuy == 0 ? "" : ", buy " + packs;
        return shelf + out + buy;
    }

    private static int packs(long milligrams, int pack) {
        return (int) -Math.floorDiv(-milligrams, (long) pack);
    }
}
