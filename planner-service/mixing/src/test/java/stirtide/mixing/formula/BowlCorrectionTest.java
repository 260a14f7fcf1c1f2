package stirtide.mixing.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.formula.BowlFormula;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.Weighing;

/** Weighing goes wrong and is put right, or the bowl is lost; never outside the directions. */
class BowlCorrectionTest {
    private static final int STEP = 100;

    private static FormulaQuestion question(int need, int usable, Weighing weighing) {
        return FormulaSamples.question(
                FormulaSamples.directions(1500, 2500, 900, false),
                600,
                2000,
                need,
                usable,
                FormulaSamples.scale(STEP, false, weighing));
    }

    private static BowlFormula planned(FormulaQuestion question) {
        return ((FormulaAnswer.Weigh) FormulaSearch.find(question)).formula();
    }

    private static NextPour next(FormulaQuestion question, Pour... poured) {
        return BowlCorrection.next(question, planned(question), List.of(poured));
    }

    @Test
    void an_exact_lightener_is_followed_by_the_planned_developer() {
        FormulaQuestion question = question(60_000, 150_000, Weighing.TARE_BETWEEN);
        assertThat(next(question)).isInstanceOf(NextPour.Add.class);
        NextPour.Add add = (NextPour.Add) next(question, new Pour("pale-clay", 20_000));
        assertThat(add.partId()).isEqualTo("dev-600");
        assertThat(add.milligrams()).isEqualTo(40_000);
        assertThat(add.correction()).isFalse();
    }

    @Test
    void too_much_lightener_changes_the_developer_and_not_the_size_while_the_window_allows() {
        NextPour.Add add =
                (NextPour.Add) next(question(60_000, 150_000, Weighing.TARE_BETWEEN), new Pour("pale-clay", 21_500));
        assertThat(add.milligrams()).isEqualTo(38_500);
        assertThat(add.surplusMilligrams()).isZero();
        NextPour.Add more =
                (NextPour.Add) next(question(60_000, 150_000, Weighing.TARE_BETWEEN), new Pour("pale-clay", 26_000));
        assertThat(more.expected().worstLowRatioThousandths()).isGreaterThanOrEqualTo(1500);
        assertThat(more.surplusMilligrams()).isPositive();
    }

    @Test
    void the_running_display_counts_what_is_there_already() {
        NextPour.Add add =
                (NextPour.Add) next(question(60_000, 150_000, Weighing.RUNNING_TOTAL), new Pour("pale-clay", 21_500));
        assertThat(add.displayMilligrams()).isEqualTo(60_000);
    }

    @Test
    void too_much_developer_is_put_right_with_the_least_lightener() {
        FormulaQuestion question = question(60_000, 150_000, Weighing.TARE_BETWEEN);
        Pour lightener = new Pour("pale-clay", 20_000);
        Pour developer = new Pour("dev-600", 52_000);
        NextPour.Add add = (NextPour.Add) next(question, lightener, developer);
        assertThat(add.partId()).isEqualTo("pale-clay");
        assertThat(add.correction()).isTrue();
        assertThat(next(question, lightener, developer, new Pour("pale-clay", add.milligrams())))
                .isInstanceOf(NextPour.Ready.class);
        assertThat(next(question, lightener, developer, new Pour("pale-clay", add.milligrams() - STEP)))
                .isInstanceOf(NextPour.Add.class);
    }

    @Test
    void too_little_developer_is_poured_on_without_a_tare() {
        NextPour.Add add = (NextPour.Add) next(
                question(60_000, 150_000, Weighing.TARE_BETWEEN),
                new Pour("pale-clay", 20_000),
                new Pour("dev-600", 37_000));
        assertThat(add.partId()).isEqualTo("dev-600");
        assertThat(add.continues()).isTrue();
        assertThat(add.milligrams()).isEqualTo(3_000);
        assertThat(add.displayMilligrams()).isEqualTo(40_000);
    }

    @Test
    void a_full_bowl_that_cannot_be_put_right_is_lost_with_its_grams() {
        NextPour lost = next(
                question(60_000, 61_000, Weighing.TARE_BETWEEN),
                new Pour("pale-clay", 17_000),
                new Pour("dev-600", 44_000));
        assertThat(lost).isInstanceOfSatisfying(NextPour.BinAndRestart.class, bin -> {
            assertThat(bin.lostMilligrams()).isEqualTo(61_000);
            assertThat(bin.reason()).contains("bin it and start again").contains("61 g lost");
        });
    }

    /** What is in the bowl already fits it: nothing good is thrown away because it is more than was meant. */
    @Test
    void a_bowl_that_is_inside_is_ready_even_if_it_is_fuller_than_meant() {
        NextPour full = next(
                question(60_000, 61_000, Weighing.TARE_BETWEEN),
                new Pour("pale-clay", 22_000),
                new Pour("dev-600", 44_000));
        assertThat(full)
                .isInstanceOfSatisfying(
                        NextPour.Ready.class,
                        ready -> assertThat(ready.overfullMilligrams()).isEqualTo(5_000));
        assertThat(PourText.sentence(full, Map.of()))
                .endsWith("6 g more than needed and 5 g more than the bowl is meant to hold: stir with care.");
    }

    @ParameterizedTest
    @CsvSource({"dev-900,40000,not part", "dev-600,40050,cannot show", "dev-600,0,cannot show"})
    void a_weight_the_scale_cannot_have_shown_is_refused(String part, int milligrams, String reason) {
        NextPour answer = next(
                question(60_000, 150_000, Weighing.TARE_BETWEEN),
                new Pour("pale-clay", 20_000),
                new Pour(part, milligrams));
        assertThat(answer)
                .isInstanceOfSatisfying(
                        NextPour.Unreadable.class, no -> assertThat(no.reason()).contains(reason));
    }

    @Test
    void every_answer_has_a_sentence_for_the_bar() {
        FormulaQuestion question = question(60_000, 61_000, Weighing.TARE_BETWEEN);
        Map<String, String> names = Map.of("pale-clay", "Pale Clay");
        Pour lightener = new Pour("pale-clay", 20_000);
        assertThat(PourText.sentence(next(question), names))
                .startsWith("Weigh 20 g Pale Clay, until the scale shows 20 g. The bowl is then 1:2, between 1:1.98");
        assertThat(PourText.sentence(next(question, lightener, new Pour("dev-600", 37_000)), names))
                .startsWith("Correct: add 3 g dev-600, no tare in between, until the scale shows 40 g.");
        assertThat(PourText.sentence(next(question, lightener, new Pour("dev-600", 40_000)), names))
                .startsWith("Ready: 1:2, between")
                .endsWith("0 g more than needed.");
        assertThat(PourText.sentence(next(question, lightener, new Pour("dev-600", 55_000)), names))
                .contains("75 g lost");
        assertThat(PourText.sentence(next(question, lightener, new Pour("dev-600", 50)), names))
                .contains("Accepted: A weight above 0 in steps of 0.1 g");
    }

    /** Every pour is missed by up to 15 %: each step is corrected, twice in a row and more, until ready or lost. */
    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34, 35, 36})
    void a_shaky_hand_ends_with_a_bowl_inside_the_directions_or_none(long seed) {
        Random random = new Random(seed);
        int ready = 0;
        int correctedTwice = 0;
        for (int round = 0; round < 40; round++) {
            Weighing weighing = random.nextBoolean() ? Weighing.TARE_BETWEEN : Weighing.RUNNING_TOTAL;
            int need = 30_000 + STEP * random.nextInt(500);
            boolean blend = random.nextBoolean();
            FormulaQuestion question = new FormulaQuestion(
                    FormulaSamples.directions(1500, 2500, 900, false),
                    "foil",
                    600,
                    2000,
                    blend ? FormulaSamples.shelf(300, 900) : FormulaSamples.shelf(600),
                    need,
                    0,
                    need + need / 3 / STEP * STEP,
                    FormulaSamples.scale(STEP, random.nextBoolean(), weighing));
            if (!(FormulaSearch.find(question) instanceof FormulaAnswer.Weigh weigh)) continue;
            int corrections = weighWithShakyHand(question, weigh.formula(), random);
            if (corrections >= 0) ready++;
            if (corrections >= 2) correctedTwice++;
        }
        assertThat(ready).isGreaterThan(10);
        assertThat(correctedTwice).isPositive();
    }

    /** Corrections until ready, or -1 when the bowl was lost. */
    private static int weighWithShakyHand(FormulaQuestion question, BowlFormula planned, Random random) {
        List<Pour> poured = new ArrayList<>();
        int corrections = 0;
        for (int step = 0; step < 30; step++) {
            NextPour next = BowlCorrection.next(question, planned, poured);
            if (next instanceof NextPour.Ready ready) {
                assertInside(question, planned, poured, ready);
                return corrections;
            }
            if (next instanceof NextPour.BinAndRestart bin) {
                assertThat(bin.lostMilligrams())
                        .isEqualTo(poured.stream().mapToInt(Pour::milligrams).sum());
                return -1;
            }
            NextPour.Add add = (NextPour.Add) next;
            assertThat(add.expected().totalMilligrams()).isLessThanOrEqualTo(question.usableMilligrams());
            if (add.correction()) corrections++;
            int missed = step < 6 ? (int) (add.milligrams() * (random.nextDouble() - 0.5) * 0.3) / STEP * STEP : 0;
            pour(poured, add, Math.max(STEP, add.milligrams() + missed));
        }
        throw new AssertionError("never ready: " + poured);
    }

    private static void pour(List<Pour> poured, NextPour.Add add, int milligrams) {
        if (add.continues()) {
            Pour last = poured.remove(poured.size() - 1);
            poured.add(new Pour(last.partId(), last.milligrams() + milligrams));
        } else poured.add(new Pour(add.partId(), milligrams));
    }

    /** Checked with random true weights, not with the code under test. */
    private static void assertInside(
            FormulaQuestion question, BowlFormula planned, List<Pour> poured, NextPour.Ready ready) {
        Scale scale = question.scale();
        EveryWeighing limits = new EveryWeighing(scale, 1500, 2500);
        boolean running = scale.weighing() == Weighing.RUNNING_TOTAL;
        for (int corner = 0; corner < 1 << poured.size(); corner++) {
            double lightener = 0;
            double developer = 0;
            double before = 0;
            int total = 0;
            for (int i = 0; i < poured.size(); i++) {
                Pour pour = poured.get(i);
                total += pour.milligrams();
                int reading = running ? total : pour.milligrams();
                double sign = (corner >> i & 1) == 0 ? -0.5 : 0.5;
                double seen = reading + sign * limits.error(reading);
                double part = running ? seen - before : seen;
                before = seen;
                if (pour.partId().equals(planned.lightenerId())) lightener += part;
                else developer += part;
            }
            assertThat(1000 * developer / lightener).isBetween(1500 - 1e-6, 2500 + 1e-6);
        }
        assertThat(total(poured)).isGreaterThanOrEqualTo(question.neededMilligrams());
        assertThat(ready.overfullMilligrams()).isEqualTo(Math.max(0, total(poured) - question.usableMilligrams()));
        assertThat(ready.real().totalMilligrams()).isEqualTo(total(poured));
    }

    private static int total(List<Pour> poured) {
        return poured.stream().mapToInt(Pour::milligrams).sum();
    }
}
