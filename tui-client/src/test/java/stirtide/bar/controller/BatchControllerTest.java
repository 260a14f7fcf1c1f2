package stirtide.bar.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;
import stirtide.bar.keys.Key;
import stirtide.bar.link.LinkEvent;
import stirtide.events.command.DayCommand.BeginBatch;
import stirtide.events.command.DayCommand.BeginBowl;
import stirtide.events.command.DayCommand.BinBatch;
import stirtide.events.command.DayCommand.DivideBatch;
import stirtide.events.command.DayCommand.WeighBatch;
import stirtide.events.day.OverMixCause;
import stirtide.events.formula.DeveloperPart;

/** One mix for two bowls from the key to the command. */
class BatchControllerTest {
    private static final BeginBatch BEGIN = new BeginBatch(List.of("7a", "8a"), "tamsin");
    private static final WeighBatch WEIGH = new WeighBatch("7a", 34_000, List.of(new DeveloperPart("cream-6", 68_000)));

    private final ControllerFixture bench = ControllerFixture.with(Samples.paired());

    @Test
    void the_next_mix_and_the_queue_say_one_mix_two_bowls_with_grams_and_chairs() {
        assertThat(bench.picture())
                .contains("one mix, two bowls  7a + 8a  chairs 5 + 1")
                .contains("62.0 g stay in 7a, 40.0 g go into 8a")
                .contains("from 7a", "poured 40.0 g");
    }

    @Test
    void both_are_begun_weighed_and_divided_one_after_the_other() {
        bench.type("m").press(Key.Kind.ENTER);
        assertThat(bench.sent).containsExactly(BEGIN);
        assertThat(bench.title()).isEqualTo("WEIGH-IN  one mix, two bowls: 7a and 8a");
        bench.type("34").press(Key.Kind.ENTER).type("68").press(Key.Kind.ENTER);
        assertThat(bench.sent).last().isEqualTo(WEIGH);
        assertThat(bench.title()).startsWith("DIVIDE");
        bench.type("40.1");
        assertThat(bench.picture()).contains("leaves 61.9 g in 7a");
        bench.press(Key.Kind.ENTER);
        assertThat(bench.sent).last().isEqualTo(new DivideBatch("7a", 40_100));
        assertThat(bench.panel()).isEmpty();
    }

    @Test
    void either_bowl_may_be_mixed_alone() {
        bench.type("m").press(Key.Kind.RIGHT).press(Key.Kind.ENTER);
        assertThat(bench.sent).containsExactly(new BeginBowl("7a", "tamsin"));
        assertThat(bench.title()).startsWith("WEIGH-IN  bowl 7a");
    }

    @Test
    void a_mix_outside_the_directions_is_not_divided() {
        bench.type("m").press(Key.Kind.ENTER);
        bench.type("34").press(Key.Kind.ENTER).type("30").press(Key.Kind.ENTER);
        assertThat(bench.picture()).contains("too little developer");
        bench.press(Key.Kind.ENTER);
        assertThat(bench.sent).hasSize(2);
        assertThat(bench.title()).doesNotStartWith("DIVIDE");
    }

    @Test
    void a_share_far_from_the_plan_needs_a_second_enter_and_all_of_it_is_refused() {
        var open = ControllerFixture.with(Samples.mixed("weighed"));
        open.type("w102").press(Key.Kind.ENTER);
        assertThat(open.picture()).contains("takes less than that");
        open.press(Key.Kind.ERASE).press(Key.Kind.ERASE).press(Key.Kind.ERASE);
        open.type("50").press(Key.Kind.ENTER);
        assertThat(open.sent).isEmpty();
        assertThat(open.picture()).contains("planned 40.0 g, usual limit 2.0 g");
        open.press(Key.Kind.ENTER);
        assertThat(open.sent).containsExactly(new DivideBatch("7a", 50_000));
    }

    @Test
    void weighing_a_live_pair_opens_the_step_it_is_at() {
        assertThat(ControllerFixture.with(Samples.mixed("begun")).type("w").title())
                .startsWith("WEIGH-IN  one mix, two bowls");
        assertThat(ControllerFixture.with(Samples.mixed("weighed")).type("w").title())
                .startsWith("DIVIDE");
        assertThat(ControllerFixture.with(Samples.mixed("begun")).picture()).contains("weigh it", "in 7a");
        assertThat(ControllerFixture.with(Samples.mixed("weighed")).picture()).contains("divide it");
    }

    @Test
    void a_pair_that_is_not_divided_is_binned_whole_after_a_question() {
        var open = ControllerFixture.with(Samples.mixed("weighed"));
        open.type("b").press(Key.Kind.ENTER);
        assertThat(open.sent).isEmpty();
        open.type("y");
        assertThat(open.sent).containsExactly(new BinBatch("7a", OverMixCause.WRONG_RATIO));
    }

    @Test
    void weighing_closes_when_the_beginning_is_refused() {
        bench.type("m").press(Key.Kind.ENTER);
        bench.hear(new LinkEvent.Refused(BEGIN, "begun", "Scale bench is taken."));
        assertThat(bench.panel()).isEmpty();
    }
}
