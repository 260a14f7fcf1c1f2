package stirtide.planner.day.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.CountStock;
import stirtide.events.command.DayCommand.ReceiveGoods;
import stirtide.events.setup.Developer;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;
import stirtide.planner.day.state.Day;
import stirtide.planner.views.DayViews;

class ShelfRulesTest {
    private static Optional<Integer> developer(Day day, String id) {
        return new ShelfStock(day)
                .developers().stream()
                        .filter(one -> one.developerId().equals(id))
                        .findFirst()
                        .flatMap(Developer::countedMilligrams);
    }

    @Test
    void what_was_counted_and_came_in_less_what_was_weighed_is_on_the_shelf() {
        var scene = Scene.planned().does(new CountStock("dev-9", 150_000)).at("09:54");
        scene.does(new stirtide.events.command.DayCommand.BeginBowl("1a", "bo"));
        assertThat(developer(scene.day, "dev-9")).contains(90_000);
        scene.at("09:58").does(Scene.weigh("1a", 30_000, 61_000));
        assertThat(developer(scene.day, "dev-9")).contains(89_000);
        scene.does(new ReceiveGoods("dev-9", 2));
        assertThat(developer(scene.day, "dev-9")).contains(2_089_000);
        assertThat(developer(scene.day, "dev-6")).isEmpty();
    }

    @Test
    void the_view_says_when_a_product_runs_out() {
        var scene = Scene.planned().does(new CountStock("dev-9", 100_000));
        var card = DayViews.of(scene.day, scene.now, 1000).stock().stream()
                .filter(one -> one.productId().equals("dev-9"))
                .findFirst()
                .orElseThrow();
        assertThat(card.neededMilligrams()).isEqualTo(120_000);
        assertThat(card.onShelfMilligrams()).contains(100_000L);
        assertThat(card.runsOutAt()).contains(Given.at("10:24"));
        assertThat(card.packsToBuy()).isEqualTo(1);
    }

    @Test
    void only_products_of_the_day_are_counted_or_received() {
        var scene = Scene.planned();
        assertThat(scene.refused(new CountStock("dev-7", 1), "PRODUCT_UNKNOWN").sentence())
                .contains("cloudlift", "dev-9");
        scene.refused(new CountStock("dev-9", -1), "WEIGHT_NEGATIVE");
        scene.refused(new ReceiveGoods("dev-9", 0), "PACKS_OUT_OF_RANGE");
    }
}
