package stirtide.mixing.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import stirtide.events.setup.Scale.Weighing;

/** Whatever is asked, an answer without weights says why and what would help, and asking again changes nothing. */
class EveryRefusalHelpsTest {
    @Test
    void thousands_of_random_questions_get_weights_or_help() {
        Random random = new Random(11);
        TreeSet<String> reasons = new TreeSet<>();
        for (int i = 0; i < 3000; i++) {
            FormulaQuestion question = question(random);
            FormulaAnswer answer = FormulaSearch.find(question);
            if (answer instanceof FormulaAnswer.Weigh) continue;
            FormulaAnswer.Impossible no = (FormulaAnswer.Impossible) answer;
            assertThat(no.reason()).endsWith(".").contains(" ");
            assertThat(no.whatHelps()).endsWith(".").contains(" ");
            assertThat(FormulaSearch.find(question)).isEqualTo(answer);
            reasons.add(no.reason().replaceAll("[0-9.:]+", ""));
        }
        assertThat(String.join(" ", reasons))
                .contains(
                        "outside the directions",
                        "is stronger than",
                        "neither taken nor blended",
                        "The bowl holds",
                        "No weights");
    }

    private static FormulaQuestion question(Random random) {
        int low = 1000 + 250 * random.nextInt(6);
        return new FormulaQuestion(
                FormulaSamples.directions(
                        low, low + 100 * random.nextInt(12), 300 * (1 + random.nextInt(4)), random.nextBoolean()),
                "foil",
                100 + 100 * random.nextInt(13),
                900 + 100 * random.nextInt(30),
                FormulaSamples.shelf(random.nextBoolean() ? new int[] {600} : new int[] {300, 900}),
                1000 + random.nextInt(90_000),
                random.nextInt(5000),
                30_000 + random.nextInt(90_000),
                FormulaSamples.scale(
                        List.of(100, 500, 1000, 5000).get(random.nextInt(4)),
                        random.nextBoolean(),
                        random.nextBoolean() ? Weighing.TARE_BETWEEN : Weighing.RUNNING_TOTAL));
    }
}
