package stirtide.planner.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.DaySetup;
import stirtide.events.view.StockCard;

/** What a day needs against the shelf. Invented products. */
class StockReportTest {
    private static final Instant TEN = Instant.parse("2027-05-14T09:00:00Z");

    private static DaySetup setup(Optional<Integer> counted) {
        return SmallShelf.with(100_000, counted);
    }

    private static PlannedBowl bowl(String id, int hoursLater) {
        Instant start = TEN.plusSeconds(3600L * hoursLater);
        BowlFormula formula = new BowlFormula(
                "pale-clay", 20_000, List.of(new DeveloperPart("dev-600", 40_000)), 600, 2000, 1500, 2500, 1900, 2100);
        return new PlannedBowl(
                id,
                1,
                1,
                1,
                List.of("foils"),
                start,
                start,
                start,
                start,
                start,
                Optional.empty(),
                "bar-1",
                "small",
                57_000,
                3_000,
                formula,
                0);
    }

    private static StockCard developer(Optional<Integer> counted, List<ShelfEvent> events) {
        return StockReport.of(setup(counted), List.of(bowl("1b", 2), bowl("1a", 0), bowl("1c", 3)), events)
                .get(1);
    }

    @Test
    void a_product_that_runs_out_says_when_and_what_to_buy() {
        StockCard line = developer(Optional.of(90_000), List.of());
        assertThat(line.neededMilligrams()).isEqualTo(120_000);
        assertThat(line.packsToOpen()).isEqualTo(2);
        assertThat(line.runsOutAt()).contains(TEN.plusSeconds(3 * 3600));
        assertThat(line.packsToBuy()).isEqualTo(2);
        assertThat(line.sentence())
                .isEqualTo(
                        "Six, 20 vol (6 %): the plan needs 120 g, 90 g on the shelf, not enough from the bowl of 13:00 on,"
                                + " buy 2 packs for tomorrow");
    }

    @Test
    void tomorrow_is_taken_to_need_what_the_whole_of_today_needs() {
        List<ShelfEvent> weighed =
                List.of(new ShelfEvent.Weighed("dev-600", TEN, 40_000), new ShelfEvent.Weighed("dev-600", TEN, 80_000));
        StockCard evening =
                StockReport.of(setup(Optional.of(190_000)), List.of(), weighed).get(1);
        assertThat(evening.onShelfMilligrams()).contains(70_000L);
        // 120 g went today, 70 g are left, packs hold 100 g
        assertThat(evening.packsToBuy()).isEqualTo(1);
        assertThat(evening.sentence())
                .isEqualTo("Six, 20 vol (6 %): 70 g left; today took 120 g: buy 1 pack for tomorrow");
        assertThat(developer(Optional.of(400_000), weighed).packsToBuy()).isEqualTo(1);
    }

    @Test
    void enough_is_enough() {
        StockCard line = developer(Optional.of(240_000), List.of());
        assertThat(line.runsOutAt()).isEmpty();
        assertThat(line.packsToBuy()).isZero();
    }

    @Test
    void an_uncounted_product_promises_nothing() {
        StockCard line = developer(Optional.empty(), List.of());
        assertThat(line.onShelfMilligrams()).isEmpty();
        assertThat(line.sentence()).endsWith("nobody has counted it");
    }

    @Test
    void receipts_counts_and_bowls_move_the_shelf() {
        List<ShelfEvent> events = List.of(
                new ShelfEvent.Weighed("dev-600", TEN.plusSeconds(60), 40_000),
                new ShelfEvent.Received("dev-600", TEN, 1, 100_000),
                new ShelfEvent.Received("pale-clay", TEN, 1, 100_000));
        assertThat(developer(Optional.of(90_000), events).onShelfMilligrams()).contains(150_000L);
        List<ShelfEvent> recounted =
                List.of(events.get(0), events.get(1), new ShelfEvent.Counted("dev-600", TEN.plusSeconds(90), 130_000));
        assertThat(developer(Optional.of(90_000), recounted).onShelfMilligrams())
                .contains(130_000L);
    }

    @Test
    void a_receipt_without_a_count_leaves_the_shelf_unknown() {
        List<ShelfEvent> events = List.of(new ShelfEvent.Received("dev-600", TEN, 1, 100_000));
        assertThat(developer(Optional.empty(), events).onShelfMilligrams()).isEmpty();
    }
}
