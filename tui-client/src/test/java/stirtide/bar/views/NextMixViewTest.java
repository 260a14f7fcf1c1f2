package stirtide.bar.views;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;
import stirtide.bar.canvas.Glyphs;
import stirtide.events.view.DayView.QueuedBowl;

class NextMixViewTest {
    /** 68.0 g of liquids on 34.2 g: 68.0 / 34.2 = 1.988, where 1:2 is wanted. */
    @Test
    void the_ratio_shown_is_that_of_the_weights_to_pour() {
        var queue = new ArrayList<>(Samples.busy().queue());
        QueuedBowl first = queue.get(0);
        var formula = first.bowl().formula().withLightenerMilligrams(34_200);
        queue.set(
                0,
                new QueuedBowl(
                        first.bowl().withFormula(formula),
                        first.clientRef(),
                        first.lightenerName(),
                        first.partNames(),
                        first.partStrengthsHundredths(),
                        first.cautions(),
                        first.allowances(),
                        first.batch()));
        var view = Samples.withQueue(Samples.busy(), queue, Samples.busy().live());
        var shown = ScreenView.draw(Samples.scene(view), 80, 24, Glyphs.FULL).rows();
        assertThat(shown).anySatisfy(row -> assertThat(row).contains("ratio 1:1.988 "));
        assertThat(shown).noneSatisfy(row -> assertThat(row).contains("ratio 1:2 "));
    }
}
