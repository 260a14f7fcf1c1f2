package stirtide.bar.controller;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stirtide.bar.Samples;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyBinding;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.model.LinkStatus;
import stirtide.bar.model.Operator;
import stirtide.bar.model.UiState;
import stirtide.bar.scale.ScaleReading;
import stirtide.events.command.DayCommand;
import stirtide.events.command.DayCommand.AcknowledgeAlarm;
import stirtide.events.command.DayCommand.BeginBowl;
import stirtide.events.command.DayCommand.BinBowl;
import stirtide.events.command.DayCommand.BookService;
import stirtide.events.command.DayCommand.CancelService;
import stirtide.events.command.DayCommand.FinishBowl;
import stirtide.events.command.DayCommand.FinishZone;
import stirtide.events.command.DayCommand.HandOverBowl;
import stirtide.events.command.DayCommand.MoveService;
import stirtide.events.command.DayCommand.RinseSection;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.command.DayCommand.TakeBack;
import stirtide.events.command.DayCommand.WeighBowl;
import stirtide.events.day.OverMixCause;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;
import stirtide.events.view.PourAdvice;

class BarControllerTest {
    private final ControllerFixture bench = ControllerFixture.with(Samples.busy());

    private ControllerFixture picking(String bowl) {
        bench.type("/").type(bowl).press(Key.Kind.ENTER);
        return bench;
    }

    @Test
    void mixing_begins_at_once_and_opens_the_weigh_in() {
        bench.type("m");
        assertThat(bench.sent).containsExactly(new BeginBowl("7a", "tamsin"));
        assertThat(bench.title()).startsWith("WEIGH-IN  bowl 7a");
    }

    @Test
    void the_start_key_pressed_again_mixes_nothing_more() {
        bench.type("mmm");
        assertThat(bench.sent).hasSize(1);
    }

    @Test
    void a_weigh_in_sends_what_was_typed() {
        bench.type("m34.0")
                .press(Key.Kind.ENTER)
                .type("48")
                .press(Key.Kind.ENTER)
                .type("20,1")
                .press(Key.Kind.ENTER);
        var parts = List.of(new DeveloperPart("cream-6", 48_000), new DeveloperPart("cream-12", 20_100));
        assertThat(bench.sent).last().isEqualTo(new WeighBowl("7a", 34_000, parts));
        assertThat(bench.panel()).isEmpty();
    }

    @Test
    void a_weight_far_from_the_plan_needs_a_second_enter() {
        bench.type("w40").press(Key.Kind.ENTER).type("104").press(Key.Kind.ENTER);
        assertThat(bench.sent).isEmpty();
        bench.press(Key.Kind.ENTER);
        assertThat(bench.sent)
                .containsExactly(new WeighBowl("6a", 40_000, List.of(new DeveloperPart("cream-6", 104_000))));
    }

    @Test
    void weights_that_leave_the_plan_are_asked_about_once_and_the_answer_stands_below_them() {
        bench.type("w41").pass(1).pass(1).pass(1);
        assertThat(bench.asked).containsExactly("6a lightener:41000");
        var advice = new PourAdvice(
                "6a", PourAdvice.Kind.ADD, "Weigh 82 g Cream 6 %.", Optional.of("cream-6"), 82_000, 82_000);
        bench.hear(new LinkEvent.Advised(advice, "lightener:41000"));
        assertThat(bench.picture()).contains("Weigh 82 g Cream 6 %.");
        bench.press(Key.Kind.ERASE);
        assertThat(bench.picture()).doesNotContain("Weigh 82 g");
    }

    @Test
    void weights_as_planned_ask_nothing() {
        bench.type("w40").pass(1).pass(1);
        assertThat(bench.asked).isEmpty();
    }

    @Test
    void a_second_enter_too_soon_keeps_nothing() {
        bench.type("w40").press(Key.Kind.ENTER).type("104").press(Key.Kind.ENTER);
        bench.press(Key.of(Key.Kind.ENTER, bench.nanos + 200_000_000L));
        assertThat(bench.sent).isEmpty();
    }

    @Test
    void a_scale_that_types_makes_one_entry_a_line() {
        bench.type("w").burst("40.2 g\r\n");
        bench.burst("80.1 g\r\n");
        assertThat(bench.sent)
                .containsExactly(new WeighBowl("6a", 40_200, List.of(new DeveloperPart("cream-6", 80_100))));
    }

    @Test
    void enter_takes_what_lies_still_on_the_scale_once_and_only_into_an_empty_weight() {
        bench.type("w");
        for (int i = 0; i < 2; i++) bench.controller.hear(new ScaleReading.Weight(0, true), bench.nanos);
        assertThat(bench.picture()).as("an empty scale").contains("Enter next");
        bench.press(Key.Kind.ENTER);
        assertThat(bench.picture()).contains("is empty");
        for (int i = 0; i < 3; i++) bench.controller.hear(new ScaleReading.Weight(40_200, true), bench.nanos);
        assertThat(bench.picture()).contains("Enter takes 40.2 g ");
        bench.press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        assertThat(bench.sent).isEmpty();
        bench.controller.hear(new ScaleReading.Weight(60_000, false), bench.nanos);
        bench.press(Key.Kind.ENTER);
        assertThat(bench.sent).isEmpty();
        for (int i = 0; i < 2; i++) bench.controller.hear(new ScaleReading.Weight(80_100, true), bench.nanos);
        assertThat(bench.picture()).contains("Enter takes 80.1 g, records");
        bench.press(Key.Kind.ENTER);
        assertThat(bench.sent)
                .containsExactly(new WeighBowl("6a", 40_200, List.of(new DeveloperPart("cream-6", 80_100))));
    }

    @Test
    void a_scale_that_types_at_the_bar_does_nothing() {
        bench.burst("40.2 bfomu\r\n");
        assertThat(bench.sent).isEmpty();
        assertThat(bench.panel()).isEmpty();
        assertThat(bench.notice()).contains("faster than fingers");
    }

    @Test
    void a_paste_changes_no_field() {
        bench.type("w4").press(Key.Kind.PASTE_BEGINS);
        for (int i = 0; i < 10_000; i++) bench.press(Key.of("12.5\n".charAt(i % 5), bench.nanos));
        bench.press(Key.Kind.ENTER)
                .press(Key.Kind.PASTE_ENDS)
                .press(Key.Kind.REPORT)
                .type("0")
                .press(Key.Kind.ENTER);
        bench.type("80").press(Key.Kind.ENTER);
        assertThat(bench.sent)
                .containsExactly(new WeighBowl("6a", 40_000, List.of(new DeveloperPart("cream-6", 80_000))));
    }

    @Test
    void hand_over_means_the_only_weighed_bowl() {
        bench.type("o");
        assertThat(bench.sent).containsExactly(new HandOverBowl("5a"));
    }

    @Test
    void finishing_needs_a_pick_when_several_bowls_are_live() {
        bench.type("f");
        assertThat(bench.sent).isEmpty();
        assertThat(bench.notice()).contains("pick the live bowl to finish first");
        picking("bowl 4a").type("f");
        assertThat(bench.sent).containsExactly(new FinishBowl("4a"));
    }

    @Test
    void finishing_with_much_life_left_asks() {
        picking("bowl 6a").type("f");
        assertThat(bench.sent).isEmpty();
        bench.type("y");
        assertThat(bench.sent).containsExactly(new FinishBowl("6a"));
    }

    @Test
    void binning_takes_grams_and_cause_and_asks() {
        picking("bowl 3b").type("b12.5").press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        assertThat(bench.sent).isEmpty();
        bench.type("y");
        assertThat(bench.sent).containsExactly(new BinBowl("3b", 12_500, OverMixCause.PAST_LIFE));
    }

    @Test
    void more_than_was_mixed_cannot_be_left() {
        picking("bowl 3b").type("b130").press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        assertThat(bench.title()).startsWith("BIN  bowl 3b");
        assertThat(bench.sent).isEmpty();
    }

    @Test
    void a_question_is_answered_no_by_everything_but_y() {
        for (Key.Kind no : List.of(Key.Kind.ENTER, Key.Kind.ESCAPE)) {
            bench.type("u").press(no);
            assertThat(bench.panel()).isEmpty();
        }
        bench.type("uuqmb ");
        assertThat(bench.title()).isEqualTo("TAKE BACK?");
        bench.pass(20);
        assertThat(bench.panel()).isEmpty();
        assertThat(bench.sent).isEmpty();
    }

    @Test
    void taking_back_means_my_own_last_action() {
        bench.type("uy");
        assertThat(bench.sent).containsExactly(new TakeBack(40));
    }

    @Test
    void the_top_alarm_not_yet_seen_is_acknowledged() {
        bench.type("a");
        assertThat(bench.sent).containsExactly(new AcknowledgeAlarm("PAST_LIFE:3b"));
    }

    @Test
    void a_client_is_seated_a_zone_is_done_a_start_is_moved_and_a_service_is_cancelled() {
        bench.type("szw").press(Key.Kind.DOWN).type("s").type("t15").press(Key.Kind.ENTER);
        bench.press(Key.Kind.DOWN).type("xy");
        assertThat(bench.sent)
                .containsExactly(
                        new FinishZone(4, "crown foils"),
                        new RinseSection(4, 1),
                        new StartService(7),
                        new MoveService(7, Samples.at(24), Optional.empty(), "client late"),
                        new CancelService(8, "client did not come"));
    }

    @Test
    void a_late_client_is_late_after_the_later_of_booked_and_planned_start() {
        bench.type("s").press(Key.Kind.DOWN).press(Key.Kind.DOWN).press(Key.Kind.DOWN);
        bench.type("t15").press(Key.Kind.ENTER);
        assertThat(bench.sent)
                .containsExactly(new MoveService(9, Samples.at(35 + 6 + 15), Optional.empty(), "client late"));
    }

    @Test
    void nobody_is_booked_from_an_empty_menu_and_the_bar_says_where_to_go() {
        var day = ContractJson.read(ContractJson.write(Samples.quiet()), ObjectNode.class);
        day.withArray("/choices/menu").removeAll();
        day.withArray("/services").removeAll();
        var open = ControllerFixture.with(ContractJson.read(ContractJson.write(day), DayView.class));
        assertThat(open.picture()).contains("nothing to mix: the menu is empty, 4 sets it up");
        open.type("n");
        assertThat(open.panel()).isEmpty();
        assertThat(open.notice()).isEqualTo("the menu is empty, 4 sets it up");
        open.type("2e");
        assertThat(open.panel()).isEmpty();
    }

    @Test
    void a_walk_in_is_booked_with_the_arrows_and_a_start() {
        bench.type("n")
                .press(Key.Kind.RIGHT)
                .press(Key.Kind.ENTER)
                .press(Key.Kind.RIGHT)
                .press(Key.Kind.ENTER);
        for (int i = 0; i < 5; i++) bench.press(Key.Kind.ERASE);
        bench.type("13:05").press(Key.Kind.ENTER).type("Q.").press(Key.Kind.ENTER);
        bench.press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        assertThat(bench.sent).hasSize(1);
        var booking = ((BookService) bench.sent.get(0)).booking();
        assertThat(booking.menuId()).isEqualTo("roots");
        assertThat(booking.chair()).isEqualTo(2);
        assertThat(booking.start()).isEqualTo(Samples.at(85));
        assertThat(booking.length()).isEqualTo("medium");
    }

    @Test
    void a_refusal_is_shown_in_the_services_words_until_escape() {
        bench.type("m");
        bench.hear(new LinkEvent.Refused(bench.sent.get(0), "bowl 7a begun", "Bowl 7a was begun by Bohdan."));
        assertThat(bench.panel()).isEmpty();
        bench.type("j");
        assertThat(bench.notice()).isEqualTo("NOT TAKEN  bowl 7a begun: Bowl 7a was begun by Bohdan.");
        bench.press(Key.Kind.ESCAPE);
        assertThat(bench.notice()).isEmpty();
    }

    @Test
    void a_pick_follows_its_bowl() {
        bench.press(Key.Kind.TAB).press(Key.Kind.DOWN).press(Key.Kind.DOWN);
        bench.hear(
                new LinkEvent.Seen(Samples.view(List.of(), Samples.busy().live().subList(2, 4), 3)));
        UiState scene = bench.scene();
        assertThat(scene.picks()
                        .liveIn(scene.view().orElseThrow())
                        .orElseThrow()
                        .bowl())
                .isEqualTo("5a");
    }

    @Test
    void who_may_only_read_sends_nothing_whatever_is_pressed() {
        var reader = new ControllerFixture(new Operator("", false)).hear(new LinkEvent.Seen(Samples.busy()));
        for (char key = ' '; key < 127; key++) reader.type("" + key).press(Key.Kind.ESCAPE);
        assertThat(reader.sent).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            value = KeyContext.class,
            names = {"BAR", "FLOOR", "DAY"})
    void every_key_of_a_view_does_something(KeyContext place) {
        for (KeyBinding binding : KeyTable.of(place, true, true)) {
            var fresh = ControllerFixture.with(Samples.busy());
            fresh.controller.open(place, false);
            fresh.hear(new LinkEvent.Clock(Samples.NOW, 1000, true));
            fresh.hear(new LinkEvent.Trouble("a lasting line"));
            fresh.press(Key.Kind.TAB).press(Key.Kind.RIGHT).press(Key.Kind.DOWN);
            if (place == KeyContext.BAR) fresh.press(Key.Kind.RIGHT).press(Key.Kind.RIGHT);
            var before = fresh.scene();
            fresh.press(binding.press(fresh.nanos));
            boolean changed = !fresh.scene().equals(before)
                    || !fresh.sent.isEmpty()
                    || fresh.pastAsked > 0
                    || fresh.controller.isLeaving()
                    || fresh.controller.takeRedraw();
            assertThat(changed).as(binding.shown() + " " + binding.sentence()).isTrue();
        }
    }

    @Test
    void leaving_asks_but_control_c_ends_a_demonstration_at_once() {
        bench.type("q").press(Key.Kind.ENTER);
        assertThat(bench.controller.isLeaving()).isFalse();
        bench.press(Key.control('c', bench.nanos + 400_000_000L));
        assertThat(bench.title()).isEqualTo("LEAVE?");
        bench.hear(new LinkEvent.Clock(Samples.NOW, 1000, true));
        bench.press(Key.control('c', bench.nanos + 400_000_000L));
        assertThat(bench.controller.isLeaving()).isTrue();
    }

    @Test
    void the_clock_is_paused_and_quickened_only_where_it_can_be_driven() {
        bench.type("p+");
        assertThat(bench.rates).isEmpty();
        bench.hear(new LinkEvent.Clock(Samples.NOW, 1000, true)).type("++pp-");
        assertThat(bench.rates).containsExactly(2000, 5000, 0, 5000, 2000);
    }

    @Test
    void the_link_turns_stale_then_lost_and_recovers_with_one_beat() {
        assertThat(bench.scene().link().state()).isEqualTo(LinkStatus.State.LIVE);
        bench.pass(9);
        assertThat(bench.scene().link().state()).isEqualTo(LinkStatus.State.LIVE);
        bench.pass(1);
        assertThat(bench.scene().link().state()).isEqualTo(LinkStatus.State.STALE);
        bench.pass(19);
        assertThat(bench.scene().link().state()).isEqualTo(LinkStatus.State.STALE);
        bench.pass(1);
        assertThat(bench.scene().link().state()).isEqualTo(LinkStatus.State.LOST);
        assertThat(bench.scene().now()).isEqualTo(Samples.NOW.plusSeconds(30));
        bench.hear(new LinkEvent.Heard());
        assertThat(bench.scene().link().state()).isEqualTo(LinkStatus.State.LIVE);
    }

    @Test
    void what_is_entered_while_the_link_is_down_waits_to_be_sent() {
        bench.hear(new LinkEvent.Cut("refused")).type("m").hear(new LinkEvent.Waiting(1));
        assertThat(bench.notice()).startsWith("waits to be sent: ");
        assertThat(bench.picture()).contains("1 waits to be sent");
    }

    @Test
    void a_refusal_goes_when_the_entry_is_accepted_and_can_be_read_again() {
        bench.type("m").press(Key.Kind.ESCAPE);
        DayCommand begun = bench.sent.get(0);
        var refused = new LinkEvent.Refused(begun, "bowl 7a begun", "Tamsin mixes bowl 6a. Weigh that one first.");
        bench.hear(refused).hear(refused);
        assertThat(bench.scene().notices()).hasSize(1);
        assertThat(bench.picture()).contains("NOT TAKEN  bowl 7a begun: Tamsin mixes bowl 6a. Weigh that one first.");
        bench.hear(new LinkEvent.Taken(begun, "bowl 7a begun", false)).press(Key.Kind.DOWN);
        assertThat(bench.scene().notices()).isEmpty();
        assertThat(bench.type("i").picture()).contains("Said of late:", "NOT TAKEN bowl 7a begun: Tamsin mixes");
    }

    @Test
    void nothing_is_taken_back_while_the_link_is_down() {
        bench.hear(new LinkEvent.Cut("refused")).type("u");
        assertThat(bench.panel()).isEmpty();
        assertThat(bench.notice()).contains("needs the service");
    }

    @Test
    void commands_know_who_asks() {
        bench.type("m");
        DayCommand begun = bench.sent.get(0);
        assertThat(((BeginBowl) begun).personId()).isEqualTo("tamsin");
    }

    @Test
    void why_the_way_is_cut_is_told_until_the_service_is_heard_again() {
        var bench = new ControllerFixture(Samples.TAMSIN);
        bench.hear(new LinkEvent.Cut("the service does not know this day"));
        assertThat(bench.picture()).contains("waiting for the service   the service does not know this day");
        bench.hear(new LinkEvent.Seen(Samples.calm())).hear(new LinkEvent.Cut("the connection broke"));
        bench.pass(31);
        assertThat(bench.picture()).contains("NO LINK for 31 s: clocks run on   the connection broke");
        bench.hear(new LinkEvent.Heard());
        assertThat(bench.picture()).doesNotContain("the connection broke");
    }
}
