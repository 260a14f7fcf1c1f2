package stirtide.bar.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.bar.RecordSamples;
import stirtide.bar.Samples;
import stirtide.bar.keys.Key;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.model.Inquiry;
import stirtide.events.command.DayCommand.RecordLevels;
import stirtide.events.command.DayCommand.RecordStrip;
import stirtide.events.command.DayCommand.RecordSwatch;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.SwatchTest;

/** Test mixes, grams and costs, and earlier visits: asked of the service, read, recorded. */
class RecordsTest {
    private static final LocalDate DAY = Samples.busy().date();

    private final ControllerFixture bench = ControllerFixture.with(Samples.busy());

    private void fill(String... fields) {
        for (String field : fields) bench.type(field).press(Key.Kind.ENTER);
    }

    @Test
    void a_swatch_is_recorded_and_the_log_is_asked_for_again() {
        bench.type("t");
        assertThat(bench.tried).containsExactly(new Inquiry.Ask.Tests());
        assertThat(bench.picture()).contains("the service works it out, 0 s so far");
        bench.type("n");
        assertThat(bench.title())
                .as("nothing is recorded before the lighteners are known")
                .isEqualTo("TEST MIXES");
        bench.hear(new LinkEvent.Tried(RecordSamples.tests()));
        assertThat(bench.picture())
                .containsPattern("1:1.5 +20 vol \\(6 %\\) +30 +2.8 +0.3 +4")
                .contains("pH 10 is about 3.2 times as alkaline as pH 9.5", "no swatch is recorded")
                .containsPattern("1:2 +20 vol \\(6 %\\) +30 +2.5 +- +1");
        bench.type("n");
        fill("", "1:2", "6", "30", "5", "7,5", "");
        var swatch = new RecordSwatch(new SwatchTest(DAY, "chalk", 2000, 600, 30, 50, 75));
        assertThat(bench.sent).containsExactly(swatch);
        bench.hear(new LinkEvent.Taken(swatch, "test swatch of Chalk Lift recorded", false));
        assertThat(bench.tried).hasSize(2);
        assertThat(bench.title()).isEqualTo("TEST MIXES");
    }

    @Test
    void a_strip_is_recorded_and_a_refusal_stays_in_its_form() {
        bench.type("t").hear(new LinkEvent.Tried(RecordSamples.tests()));
        bench.type("p");
        fill("", "1:2.5", "6", "15", "0.5", "");
        var strip = new RecordStrip(new MixStrip(DAY, "chalk", 2500, 600, 150, 5));
        assertThat(bench.sent).containsExactly(strip);
        bench.hear(new LinkEvent.Refused(strip, "ph strip", "Not accepted: pH must be 0 to 14: 15.0."));
        assertThat(bench.title()).isEqualTo("PH STRIP");
        assertThat(bench.picture()).contains("! not taken: Not accepted: pH must be 0 to 14: 15.0.");
    }

    @Test
    void what_cannot_be_a_test_never_leaves_its_field() {
        bench.type("t").hear(new LinkEvent.Tried(RecordSamples.tests())).type("n");
        fill("", "2:1");
        assertThat(bench.picture()).contains("a ratio by weight, lightener first");
        assertThat(bench.sent).isEmpty();
    }

    @Test
    void costs_tell_what_to_buy_and_what_runs_out_first() {
        bench.type("g");
        assertThat(bench.tried).containsExactly(new Inquiry.Ask.Grams());
        bench.hear(new LinkEvent.Tried(RecordSamples.grams()));
        assertThat(bench.picture())
                .contains("To buy for tomorrow:", "packs to buy for tomorrow:")
                .containsPattern("Cream 6 % +420.0 +300.0 +12:13 +1")
                .containsPattern("7a +to come +102.0 g +3.46 +a gram 0.0339");
    }

    @Test
    void the_next_part_of_the_costs_comes_to_the_top_and_the_first_after_the_last() {
        bench.type("g").hear(new LinkEvent.Tried(RecordSamples.grams()));
        assertThat(bench.picture()).contains("Tab next part").doesNotContain("Set by managers:");
        bench.press(Key.Kind.TAB);
        assertThat(bench.picture()).doesNotContain("To buy for tomorrow:").contains("packs to buy for tomorrow:");
        for (int part = 0; part < 6; part++) bench.press(Key.Kind.TAB);
        assertThat(bench.picture())
                .contains("Set by managers:", "half-foils back foils, pinned at 45.0 g")
                .doesNotContain("Where the grams come from:");
        bench.press(Key.Kind.TAB);
        assertThat(bench.picture()).contains("To buy for tomorrow:");
    }

    @Test
    void how_often_grams_are_enough_stands_once_and_not_behind_every_zone() {
        bench.type("g").hear(new LinkEvent.Tried(RecordSamples.grams()));
        assertThat(bench.picture()).doesNotContain("How often they are to be enough:");
        for (int part = 0; part < 6; part++) bench.press(Key.Kind.TAB);
        assertThat(bench.picture())
                .contains("How often they are to be enough:", "80 times in 100: enough 4 times in 5 by the costs");
    }

    @Test
    void a_service_that_does_not_tell_is_quoted() {
        bench.type("g");
        bench.hear(new LinkEvent.Tried(new Inquiry(
                new Inquiry.Ask.Grams(), 0, Optional.of(new Inquiry.Answer.Failed("For colorists and managers.")))));
        assertThat(bench.picture()).contains("no answer: For colorists and managers.");
    }

    @Test
    void levels_of_a_zone_are_recorded_before_after_or_both() {
        bench.type("sl");
        fill("", "6", "");
        assertThat(bench.sent).containsExactly(new RecordLevels(4, "back foils", Optional.of(60), Optional.empty()));
    }

    @Test
    void no_level_at_all_is_not_sent() {
        bench.type("sl");
        fill("", "", "");
        assertThat(bench.sent).isEmpty();
        assertThat(bench.picture()).contains("name the level before, the level after, or both");
    }

    @Test
    void two_visits_lie_side_by_side_and_others_can_be_laid_there() {
        bench.type("sv");
        assertThat(bench.tried).containsExactly(new Inquiry.Ask.Visits(4, Optional.empty(), Optional.empty()));
        bench.hear(new LinkEvent.Tried(RecordSamples.visits()));
        assertThat(bench.picture())
                .contains("NOT AS IT WAS", "[2027-02-05]", "the directions now permit up to 20 vol")
                .containsPattern("processed +34 min +30 min planned +\\*");
        bench.press(Key.Kind.LEFT);
        assertThat(bench.tried.get(1))
                .isEqualTo(new Inquiry.Ask.Visits(4, Optional.of("2026-12-04"), Optional.of("2027-04-02")));
        bench.hear(new LinkEvent.Tried(RecordSamples.visits())).press(Key.Kind.TAB);
        bench.press(Key.Kind.RIGHT);
        assertThat(bench.tried).as("there is no later one").hasSize(2);
        bench.press(Key.Kind.LEFT);
        assertThat(bench.tried.get(2))
                .isEqualTo(new Inquiry.Ask.Visits(4, Optional.of("2027-02-05"), Optional.of("2027-02-05")));
    }
}
