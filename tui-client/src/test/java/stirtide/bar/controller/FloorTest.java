package stirtide.bar.controller;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Operator;
import stirtide.bar.views.ScreenView;
import stirtide.events.command.DayCommand.BookService;
import stirtide.events.command.DayCommand.MoveService;
import stirtide.events.json.ContractJson;
import stirtide.events.plan.PlanFigures;
import stirtide.events.plan.WalkInAdvice;
import stirtide.events.view.DayView;

class FloorTest {
    private final ControllerFixture bench = ControllerFixture.with(Samples.calm());

    private ControllerFixture floor() {
        return bench.type("2");
    }

    @Test
    void a_lifted_service_moves_by_five_minutes_and_one_and_is_sent_after_yes() {
        floor().press(Key.Kind.ENTER);
        assertThat(bench.scene().pages().floor().lifted()).isTrue();
        bench.press(Key.Kind.RIGHT).press(Key.Kind.RIGHT).type(",").press(Key.Kind.ENTER);
        assertThat(bench.title()).isEqualTo("MOVE?");
        assertThat(bench.sent).isEmpty();
        int service = bench.scene().pages().floor().service();
        bench.type("y");
        assertThat(bench.sent).as("before the effect is told").isEmpty();
        assertThat(bench.picture()).contains("the planner tries it");
        bench.hear(new LinkEvent.Tried(answered()));
        assertThat(bench.picture()).contains("now    clients wait", "then   clients wait");
        bench.type("y");
        var card = Samples.calm().services().stream()
                .filter(each -> each.service() == service)
                .findFirst()
                .orElseThrow();
        assertThat(bench.sent)
                .containsExactly(new MoveService(
                        service, card.plannedStart().plusSeconds(9 * 60), Optional.empty(), "moved on the floor"));
        assertThat(bench.scene().pages().floor().lifted()).isFalse();
    }

    @Test
    void what_a_move_did_is_told_once_when_no_better_plan_is_looked_for_any_more() {
        floor().press(Key.Kind.ENTER).press(Key.Kind.RIGHT).press(Key.Kind.ENTER);
        bench.hear(new LinkEvent.Tried(answered())).type("y");
        var move = (MoveService) bench.sent.get(0);
        var moved = Samples.moved(Samples.calm(), move.service(), move.start());
        String told = "service " + move.service() + " moved: ";
        bench.hear(new LinkEvent.Seen(Samples.improving(moved)));
        assertThat(bench.picture()).doesNotContain(told);
        bench.hear(new LinkEvent.Seen(moved));
        assertThat(bench.picture()).contains(told);
    }

    private Inquiry answered() {
        return new Inquiry(bench.tried.get(0), bench.nanos, Samples.moves().answer());
    }

    @Test
    void no_comes_by_itself_twenty_seconds_after_the_effect_was_told() {
        floor().press(Key.Kind.ENTER)
                .press(Key.Kind.RIGHT)
                .press(Key.Kind.ENTER)
                .pass(25);
        assertThat(bench.title()).isEqualTo("MOVE?");
        bench.hear(new LinkEvent.Tried(answered())).pass(1).pass(19);
        assertThat(bench.title()).isEqualTo("MOVE?");
        bench.pass(2).type("y");
        assertThat(bench.panel()).isEmpty();
        assertThat(bench.sent).isEmpty();
    }

    @Test
    void escape_puts_a_lifted_service_back_and_nothing_is_sent() {
        floor().press(Key.Kind.ENTER).press(Key.Kind.RIGHT).press(Key.Kind.ESCAPE);
        assertThat(bench.scene().pages().floor().lifted()).isFalse();
        assertThat(bench.scene().pages().floor().shiftMinutes()).isZero();
        assertThat(bench.sent).isEmpty();
    }

    @Test
    void no_is_the_answer_of_enter_and_the_service_stays_lifted() {
        floor().press(Key.Kind.ENTER)
                .press(Key.Kind.RIGHT)
                .press(Key.Kind.ENTER)
                .press(Key.Kind.ENTER);
        assertThat(bench.sent).isEmpty();
        assertThat(bench.scene().pages().floor().lifted()).isTrue();
    }

    @Test
    void a_start_that_is_over_is_refused_with_what_would_be_accepted() {
        floor().press(Key.Kind.ENTER);
        for (int i = 0; i < 10; i++) bench.press(Key.Kind.LEFT);
        bench.press(Key.Kind.ENTER);
        assertThat(bench.notice()).contains("or later");
        assertThat(bench.sent).isEmpty();
    }

    @Test
    void a_service_that_has_started_is_not_lifted() {
        floor();
        bench.controller.hear(new LinkEvent.Heard(), bench.nanos);
        bench.press(Key.Kind.UP).press(Key.Kind.UP).press(Key.Kind.DOWN);
        while (bench.scene().pages().floor().service() != 4) bench.press(Key.Kind.DOWN);
        bench.press(Key.Kind.ENTER);
        assertThat(bench.notice()).contains("has not started");
    }

    @Test
    void a_terminal_that_only_reads_lifts_nothing() {
        var reader = new ControllerFixture(new Operator("", false)).hear(new LinkEvent.Seen(Samples.calm()));
        reader.type("2").press(Key.Kind.ENTER);
        assertThat(reader.scene().pages().floor().lifted()).isFalse();
        assertThat(reader.notice()).contains("only reads");
    }

    @Test
    void the_day_asks_for_earlier_days_when_it_is_opened_and_on_demand() {
        bench.type("3");
        assertThat(bench.pastAsked).isEqualTo(1);
        bench.hear(new LinkEvent.Past(Samples.past())).type("1").type("3");
        assertThat(bench.pastAsked).isEqualTo(1);
        bench.type("d");
        assertThat(bench.pastAsked).isEqualTo(2);
        assertThat(bench.scene().pages().past()).hasSize(20);
    }

    @Test
    void a_row_is_copied_as_one_line_of_text() {
        bench.type("c");
        assertThat(bench.copied)
                .containsExactly("bowl 7a, chair 5, 214, 34.0 g Chalk Lift, makes 102.0 g, start 11:44");
        bench.type("3c");
        assertThat(bench.copied).last().isEqualTo("2027-05-14, over-mixed, left over, 10.5 g");
    }

    @Test
    void a_kiosk_is_left_by_no_key() {
        bench.controller.open(KeyContext.BAR, true);
        bench.type("q").press(Key.control('c', bench.nanos + 400_000_000L));
        assertThat(bench.panel()).isEmpty();
        assertThat(bench.controller.isLeaving()).isFalse();
        assertThat(bench.picture()).doesNotContain("q leave");
        assertThat(bench.type("?leave").picture())
                .contains("leave without an entry")
                .doesNotContain("asks first");
    }

    @Test
    void an_alarm_is_shelved_from_any_view_and_the_footer_counts_it() {
        var busy = ControllerFixture.with(Samples.busy()).type("3z");
        assertThat(busy.title()).isEqualTo("SHELVE");
        busy.press(Key.Kind.RIGHT).press(Key.Kind.ENTER);
        assertThat(busy.scene().alarms().shelved()).isEqualTo(1);
        assertThat(busy.notice()).contains("for 10 min");
        assertThat(busy.sent).isEmpty();
    }

    @Test
    void advice_is_asked_for_shown_best_first_and_a_pair_is_moved_after_yes() {
        floor().type("r");
        assertThat(bench.tried).containsExactly(new Inquiry.Ask.Moves());
        bench.hear(new LinkEvent.Tried(Samples.moves()));
        bench.press(Key.Kind.DOWN).press(Key.Kind.DOWN).press(Key.Kind.ENTER);
        assertThat(bench.sent).isEmpty();
        bench.type("y");
        assertThat(bench.sent)
                .containsExactly(
                        new MoveService(7, Samples.at(19), Optional.empty(), "advice of the planner"),
                        new MoveService(9, Samples.at(50), Optional.empty(), "advice of the planner"));
    }

    @Test
    void the_earliest_start_of_a_walk_in_goes_on_to_the_booking() {
        floor().type("e").press(Key.Kind.RIGHT).press(Key.Kind.ENTER).press(Key.Kind.RIGHT);
        bench.press(Key.Kind.ENTER).press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        var ask = new Inquiry.Ask.WalkIn("roots", "medium", "medium", 2);
        assertThat(bench.tried).containsExactly(ask);
        var figures = new PlanFigures(0, 6, 38_000, 24, 6);
        var answer = new WalkInAdvice(
                41, Optional.of(Samples.at(85)), figures, Optional.of(figures), "From 13:05 on nobody waits longer.");
        bench.hear(new LinkEvent.Tried(new Inquiry(ask, 0, Optional.of(new Inquiry.Answer.WalkIn(answer)))));
        bench.press(Key.Kind.ENTER);
        assertThat(bench.title()).isEqualTo("WALK-IN");
        for (int i = 0; i < 6; i++) bench.press(Key.Kind.ENTER);
        var booking = ((BookService) bench.sent.get(0)).booking();
        assertThat(booking.start()).isEqualTo(Samples.at(85));
        assertThat(booking.chair()).isEqualTo(2);
        assertThat(booking.menuId()).isEqualTo("roots");
    }

    @Test
    void one_more_assistant_is_asked_for_from_now_for_two_hours() {
        floor().type("x").press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        assertThat(bench.tried).containsExactly(new Inquiry.Ask.Help(Samples.at(0), Samples.at(120)));
        assertThat(bench.title()).isEqualTo("ONE MORE ASSISTANT");
    }

    @Test
    void the_help_begins_with_the_keys_of_the_view_on_show() {
        bench.type("2?");
        String help = ScreenView.text(ScreenView.draw(bench.scene(), 80, 24, Glyphs.FULL));
        assertThat(help).contains("In the floor:").doesNotContain("In the bar:");
    }

    @Test
    void the_floor_tells_how_much_waiting_is_proven_and_which_minutes_force_it() {
        floor().hear(new LinkEvent.Seen(proven(12, 12)));
        assertThat(bench.picture().replaceAll("\\s+", " "))
                .contains(
                        "As booked, clients cannot wait less than 12 min in all, because 12:00 to 12:35 needs 45 min");
        bench.hear(new LinkEvent.Seen(proven(12, 5)));
        assertThat(bench.picture().replaceAll("\\s+", " "))
                .contains("As booked, 5 of 12 min of waiting cannot be avoided, because 12:00 to 12:35 needs 45 min");
        bench.hear(new LinkEvent.Seen(proven(12, 0)));
        assertThat(bench.picture())
                .doesNotContain("As booked")
                .contains(
                        "▲ 12:00 to 12:35 needs 45 min", "Service 8, back foils, takes 2 bowls: a bowl lives 45 min.");
    }

    private static DayView proven(int waitMinutes, int leastMinutes) {
        ObjectNode day = ContractJson.mapper().valueToTree(Samples.calm());
        ObjectNode reason = day.putObject("planTotals")
                .put("waitMinutes", waitMinutes)
                .put("bowlCount", 9)
                .put("mixedMilligrams", 700_000)
                .put("overMixMilligrams", 20_000)
                .put("ageMinutes", 30)
                .put("waitBound", leastMinutes)
                .putArray("bowlReasons")
                .addObject()
                .put("cause", "WORKING_LIFE")
                .put("from", Samples.NOW.toString())
                .put("to", Samples.NOW.plusSeconds(3600).toString())
                .put("leastBowls", 2)
                .put("neededMinutes", 0)
                .put("availableMinutes", 0)
                .put("sentence", "Service 8, back foils, takes 2 bowls: a bowl lives 45 min.");
        reason.putArray("services").add(8);
        reason.putArray("zones").add("back foils");
        return ContractJson.read(day.toString(), DayView.class);
    }
}
