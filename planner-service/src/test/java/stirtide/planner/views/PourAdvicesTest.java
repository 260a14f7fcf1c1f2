package stirtide.planner.views;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.view.PourAdvice;
import stirtide.events.view.PourAdvice.Kind;
import stirtide.planner.day.Scene;

class PourAdvicesTest {
    private final Scene scene = Scene.begun();

    private PourAdvice after(String poured) {
        return PourAdvices.of(scene.day, scene.day.bowl("1a").orElseThrow(), poured);
    }

    @Test
    void an_empty_bowl_begins_with_the_lightener_of_the_plan() {
        PourAdvice advice = after("");
        assertThat(advice.kind()).isEqualTo(Kind.ADD);
        assertThat(advice.partId()).contains(PourAdvice.LIGHTENER);
        assertThat(advice.milligrams()).isEqualTo(30_000);
    }

    @Test
    void too_much_lightener_asks_for_the_developer_that_fits_it() {
        PourAdvice advice = after("lightener:33000");
        assertThat(advice.kind()).isEqualTo(Kind.ADD);
        assertThat(advice.partId()).contains("dev-9");
        assertThat(advice.milligrams()).isBetween(57_000, 66_000);
        assertThat(after("lightener:33000,dev-9:" + advice.milligrams()).kind()).isEqualTo(Kind.READY);
    }

    @Test
    void too_little_developer_is_topped_up_to_what_was_planned() {
        PourAdvice advice = after("lightener:30000,dev-9:59000");
        assertThat(advice.kind()).isEqualTo(Kind.CORRECT);
        assertThat(advice.partId()).contains("dev-9");
        assertThat(advice.milligrams()).isEqualTo(1000);
        assertThat(advice.displayMilligrams()).isEqualTo(60_000);
    }

    @Test
    void a_bowl_that_nothing_helps_is_binned_and_says_what_is_lost() {
        PourAdvice advice = after("lightener:60000,dev-9:10000");
        assertThat(advice.kind()).isEqualTo(Kind.BIN_AND_RESTART);
        assertThat(advice.milligrams()).isEqualTo(70_000);
        assertThat(advice.partId()).isEqualTo(Optional.empty());
    }

    @Test
    void what_the_scale_cannot_show_is_not_believed() {
        assertThat(after("lightener:30050").kind()).isEqualTo(Kind.UNREADABLE);
        assertThat(after("dev-7:100").sentence()).contains("not part of this bowl", "Accepted: ");
    }
}
