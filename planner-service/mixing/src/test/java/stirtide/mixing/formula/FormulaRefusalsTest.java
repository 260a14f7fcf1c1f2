package stirtide.mixing.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.Weighing;
import stirtide.mixing.text.AmountText;

/** What the shelf and the directions allow, and what a refusal says. */
class FormulaRefusalsTest {
    private static final Scale SCALE = FormulaSamples.scale(100, false, Weighing.TARE_BETWEEN);

    private static FormulaAnswer ask(
            Directions directions, String technique, int strength, int ratio, List<Developer> shelf) {
        return FormulaSearch.find(
                new FormulaQuestion(directions, technique, strength, ratio, shelf, 60_000, 3_000, 150_000, SCALE));
    }

    private static Directions directions(int ceiling, boolean water) {
        return FormulaSamples.directions(1500, 2500, ceiling, water);
    }

    private static List<DeveloperPart> parts(FormulaAnswer answer) {
        return ((FormulaAnswer.Weigh) answer).formula().developerParts();
    }

    private static void refused(FormulaAnswer answer, String reason, String help) {
        assertThat(answer).isInstanceOfSatisfying(FormulaAnswer.Impossible.class, no -> {
            assertThat(no.reason()).contains(reason);
            assertThat(no.whatHelps()).contains(help);
        });
    }

    @Test
    void an_unknown_technique_names_the_known_ones() {
        refused(ask(directions(900, false), "balayage", 600, 2000, FormulaSamples.shelf(600)), "balayage", "foil");
    }

    @Test
    void a_ratio_outside_the_window_is_refused_with_the_window() {
        refused(
                ask(directions(900, false), "foil", 600, 3000, FormulaSamples.shelf(600)),
                "1:3 is outside",
                "from 1:1.5 to 1:2.5");
    }

    @Test
    void a_strength_above_the_directions_is_refused_with_the_ceiling() {
        refused(
                ask(directions(600, false), "foil", 900, 2000, FormulaSamples.shelf(900)),
                "30 vol (9 %) is stronger than the directions",
                "20 vol (6 %) or less");
    }

    /** Regulation (EC) 1223/2009, Annex III, entry 12 (a): 12 % on hair, whatever a directions file says. */
    @Test
    void a_strength_above_the_legal_ceiling_is_refused_even_if_the_directions_name_it() {
        refused(
                ask(directions(1800, false), "foil", 1300, 2000, FormulaSamples.shelf(1300)),
                "stronger than the law permits on hair",
                "40 vol (12 %) or less");
    }

    @Test
    void a_developer_above_the_legal_ceiling_is_never_thinned_down() {
        refused(
                ask(directions(1200, true), "foil", 1200, 2000, FormulaSamples.shelf(1800)),
                "can be neither taken nor blended",
                "none above 40 vol (12 %)");
    }

    @Test
    void a_need_beyond_the_bowl_asks_for_another_bowl() {
        refused(
                FormulaSearch.find(new FormulaQuestion(
                        directions(900, false),
                        "foil",
                        600,
                        2000,
                        FormulaSamples.shelf(600),
                        149_000,
                        3_000,
                        150_000,
                        SCALE)),
                "152 g are needed",
                "larger bowl");
    }

    @Test
    void water_is_used_only_where_the_directions_permit() {
        refused(
                ask(directions(900, false), "foil", 450, 2000, FormulaSamples.shelf(900)),
                "do not permit thinning",
                "weaker");
        assertThat(parts(ask(directions(900, true), "foil", 450, 2000, FormulaSamples.shelf(900))))
                .extracting(DeveloperPart::developerId)
                .containsExactly("dev-900", "water");
    }

    @Test
    void developers_are_blended_before_water_is_taken() {
        assertThat(parts(ask(directions(900, true), "foil", 600, 2000, FormulaSamples.shelf(300, 900))))
                .extracting(DeveloperPart::developerId)
                .containsExactly("dev-900", "dev-300");
    }

    @Test
    void an_exact_strength_is_taken_alone() {
        assertThat(parts(ask(directions(900, true), "foil", 600, 2000, FormulaSamples.shelf(300, 600, 900))))
                .containsExactly(new DeveloperPart("dev-600", 42_000));
    }

    @Test
    void a_blend_at_the_ceiling_stays_below_it_in_the_worst_case() {
        FormulaAnswer.Weigh weigh =
                (FormulaAnswer.Weigh) ask(directions(600, false), "foil", 600, 2000, FormulaSamples.shelf(300, 900));
        assertThat(weigh.formula().strengthHundredths()).isBetween(570, 599);
    }

    @Test
    void three_are_blended_where_the_count_of_two_is_short() {
        List<Developer> shelf = List.of(
                FormulaSamples.developer(300),
                FormulaSamples.counted(700, Optional.of(25_000)),
                FormulaSamples.counted(1200, Optional.of(10_000)));
        FormulaAnswer answer = ask(directions(900, false), "foil", 600, 2000, shelf);
        assertThat(parts(answer)).hasSize(3);
        assertThat(((FormulaAnswer.Weigh) answer).formula().strengthHundredths())
                .isBetween(570, 630);
        assertThat(parts(answer))
                .allSatisfy(part -> assertThat(part.milligrams())
                        .isLessThanOrEqualTo(part.developerId().equals("dev-300") ? 100_000 : 25_000));
    }

    @Test
    void a_scale_too_coarse_for_the_window_says_what_would_help() {
        FormulaQuestion question = new FormulaQuestion(
                FormulaSamples.directions(1950, 2050, 900, false),
                "foil",
                600,
                2000,
                FormulaSamples.shelf(600),
                60_000,
                0,
                100_000,
                FormulaSamples.scale(1000, true, Weighing.TARE_BETWEEN));
        refused(
                FormulaSearch.find(question),
                "division 1 g",
                "in a bowl that holds it, a scale with a smaller division");
    }

    @Test
    void no_part_is_smaller_than_the_minimum_load_of_the_scale() {
        Scale scale = new Scale("bar-1", SCALE.accuracyClass(), false, SCALE.weighing(), 2_000, SCALE.ranges());
        FormulaAnswer answer = FormulaSearch.find(new FormulaQuestion(
                directions(900, false), "foil", 600, 2000, FormulaSamples.shelf(600), 3_000, 0, 150_000, scale));
        assertThat(((FormulaAnswer.Weigh) answer).formula().lightenerMilligrams())
                .isEqualTo(2_000);
    }

    @Test
    void the_answer_names_the_true_range_of_its_ratio() {
        FormulaAnswer.Weigh weigh =
                (FormulaAnswer.Weigh) ask(directions(900, false), "foil", 600, 2000, FormulaSamples.shelf(600));
        assertThat(weigh.formula().worstLowRatioThousandths()).isEqualTo(1985);
        assertThat(weigh.formula().worstHighRatioThousandths()).isEqualTo(2015);
        assertThat(PourText.onThisScale(weigh.formula())).isEqualTo("1:2, between 1:1.98 and 1:2.02 on this scale");
        assertThat(AmountText.strength(470)).isEqualTo("15.7 vol (4.7 %)");
        assertThat(AmountText.grams(52_300)).isEqualTo("52.3 g");
    }
}
