package stirtide.planner.planning.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.day.Booking;
import stirtide.events.plan.AssistantAdvice;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.MoveAdvice.ServiceMove;
import stirtide.events.plan.WalkInAdvice;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;
import stirtide.planner.day.state.Day;

class WhatIfTest {
    private static final Instant EIGHT = Given.at("08:00");

    private static Booking booking(int chair, String start, int earlier, int later) {
        return new Booking(
                "b" + chair + start,
                "foils",
                chair,
                Given.at(start),
                "Q.Z.",
                "medium",
                "medium",
                Optional.empty(),
                earlier,
                later,
                Optional.empty(),
                Optional.empty());
    }

    private static Day day(int scales, Booking... bookings) {
        return new Scene().does(new OpenDay(Given.setup(scales, 8), List.of(bookings))).day;
    }

    /**
     * Three clients at ten, one scale, and it is 9:52: mixes of 4 minutes and a way of 2 bring the bowls at 9:58, 10:02 and
     * 10:06 at the earliest.
     */
    private static Day crowdedTen(int earlier, int later) {
        return day(
                1, booking(1, "10:00", 0, 0), booking(2, "10:00", earlier, later), booking(3, "10:00", earlier, later));
    }

    private static MoveAdvice moves(Day day) {
        return ((WhatIfAnswer.Moves) WhatIf.answer(day, new WhatIfQuestion.Moves(), Given.at("09:52"))).advice();
    }

    @Test
    void the_move_that_lets_clients_wait_least_comes_first() {
        MoveAdvice advice = moves(crowdedTen(10, 10));
        assertThat(advice.present().waitMinutes()).isEqualTo(8);
        assertThat(advice.untried()).isZero();
        var best = advice.singles().get(0);
        assertThat(best.then().waitMinutes()).isEqualTo(2);
        assertThat(best.moves()).singleElement().satisfies(move -> {
            assertThat(move.service()).isIn(2, 3);
            assertThat(move.from()).isEqualTo(Given.at("10:00"));
        });
        assertThat(best.sentence()).startsWith("Move service ").contains(" to 10:10: 6 minutes less waiting");
        assertThat(advice.singles())
                .flatExtracting(effect ->
                        effect.moves().stream().map(ServiceMove::service).toList())
                .containsExactlyInAnyOrder(2, 3);
    }

    @Test
    void on_a_large_day_those_nearest_to_who_waits_are_tried_and_the_others_counted() {
        Booking[] bookings = new Booking[200];
        for (int place = 0; place < bookings.length; place++) {
            String start = place < 3 ? "10:00" : "%02d:%02d".formatted(11 + place / 60, place % 60);
            bookings[place] = booking(1 + place % 3, start, 60, 60);
        }
        Day day = day(1, bookings);
        MoveAdvice advice = moves(day);
        assertThat(advice.untried()).isEqualTo(200 - 100 / 24);
        assertThat(advice.singles()).isNotEmpty().hasSizeLessThanOrEqualTo(6);
    }

    @Test
    void an_answer_nobody_wants_any_more_is_broken_off_between_two_plans() {
        Day day = crowdedTen(10, 10);
        AtomicInteger plans = new AtomicInteger();
        WhatIfAnswer answer =
                WhatIf.answer(day, new WhatIfQuestion.Moves(), Given.at("09:52"), () -> plans.incrementAndGet() == 4);
        assertThat(answer).isEqualTo(new WhatIfAnswer.BrokenOff());
        assertThat(plans).hasValue(4);
        assertThat(WhatIf.answer(day, new WhatIfQuestion.Moves(), Given.at("09:52"), () -> false))
                .isEqualTo(new WhatIfAnswer.Moves(moves(day)));
    }

    @Test
    void whoever_may_move_at_any_time_is_moved_within_the_day() {
        MoveAdvice advice = moves(day(
                1,
                booking(1, "10:00", 0, 0),
                booking(2, "10:00", 0, 0),
                booking(3, "10:00", Integer.MAX_VALUE, Integer.MAX_VALUE)));
        assertThat(advice.singles()).singleElement().satisfies(best -> {
            assertThat(best.moves().get(0).to()).isAfter(Given.at("09:51")).isBefore(Given.at("23:59"));
            assertThat(best.then().waitMinutes()).isLessThan(8);
        });
    }

    @Test
    void help_beyond_the_day_is_refused() {
        Instant never = Instant.parse("9999-12-31T23:59:59Z");
        for (var help : List.of(
                new WhatIfQuestion.ExtraAssistant(Given.at("10:00"), never),
                new WhatIfQuestion.ExtraAssistant(never, never),
                new WhatIfQuestion.ExtraAssistant(Given.at("10:00"), Instant.parse("-12027-05-06T11:00:00Z"))))
            assertThat(WhatIf.answer(crowdedTen(0, 0), help, EIGHT)).isInstanceOf(WhatIfAnswer.Refused.class);
    }

    @Test
    void a_service_without_tolerance_is_not_moved() {
        MoveAdvice advice = moves(crowdedTen(0, 0));
        assertThat(advice.singles()).isEmpty();
        assertThat(advice.pairs()).isEmpty();
    }

    @Test
    void nothing_is_moved_to_before_now() {
        Day day = crowdedTen(60, 0);
        var late = ((WhatIfAnswer.Moves) WhatIf.answer(day, new WhatIfQuestion.Moves(), Given.at("09:50"))).advice();
        assertThat(late.singles())
                .flatExtracting(effect -> effect.moves())
                .allSatisfy(move -> assertThat(move.to()).isAfterOrEqualTo(Given.at("09:50")));
    }

    @Test
    void a_pair_is_told_only_where_it_is_better_than_either_alone() {
        MoveAdvice advice = moves(crowdedTen(10, 10));
        assertThat(advice.singles()).isNotEmpty();
        assertThat(advice.pairs()).isNotEmpty();
        assertThat(advice.singles().get(0).then().waitMinutes()).isPositive();
        assertThat(advice.pairs().get(0).then().waitMinutes()).isZero();
        assertThat(advice.pairs().get(0).moves()).hasSize(2);
    }

    @Test
    void the_same_question_gets_the_same_answer() {
        assertThat(moves(crowdedTen(15, 15))).isEqualTo(moves(crowdedTen(15, 15)));
    }

    private static WhatIfAnswer walkIn(Day day, String menuId, int chair, String now) {
        return WhatIf.answer(day, new WhatIfQuestion.WalkIn(menuId, "medium", "medium", chair), Given.at(now));
    }

    @Test
    void a_client_without_a_booking_starts_as_soon_as_nobody_waits_and_the_chair_is_free() {
        WalkInAdvice free = ((WhatIfAnswer.WalkIn) walkIn(day(2), "foils", 1, "09:00")).advice();
        // Mixing takes 4 minutes and the way 2, so the first start in steps of five is 9:10.
        assertThat(free.start()).contains(Given.at("09:10"));
        Day taken = day(2, booking(1, "09:00", 0, 0));
        WalkInAdvice after = ((WhatIfAnswer.WalkIn) walkIn(taken, "foils", 1, "09:00")).advice();
        assertThat(after.start()).hasValueSatisfying(start -> assertThat(start).isAfter(Given.at("09:45")));
        WalkInAdvice beside = ((WhatIfAnswer.WalkIn) walkIn(taken, "foils", 2, "09:00")).advice();
        assertThat(beside.start()).contains(Given.at("09:10"));
        assertThat(beside.then())
                .hasValueSatisfying(then -> assertThat(then.waitMinutes())
                        .isEqualTo(beside.present().waitMinutes()));
    }

    @Test
    void late_in_the_day_there_is_no_start_and_the_answer_says_so() {
        WalkInAdvice advice = ((WhatIfAnswer.WalkIn) walkIn(day(2), "foils", 1, "17:59")).advice();
        assertThat(advice.start()).isEmpty();
        assertThat(advice.sentence()).contains("No start found today");
    }

    @ParameterizedTest
    @CsvSource({"nothing, 1", "foils, 9"})
    void an_unknown_menu_entry_or_chair_is_refused(String menuId, int chair) {
        assertThat(walkIn(day(2), menuId, chair, "09:00"))
                .isInstanceOfSatisfying(
                        WhatIfAnswer.Refused.class,
                        refused -> assertThat(refused.refusal().sentence()).isNotBlank());
    }

    private static AssistantAdvice extra(Day day, String now, String from, String to) {
        return ((WhatIfAnswer.ExtraAssistant) WhatIf.answer(
                        day, new WhatIfQuestion.ExtraAssistant(Given.at(from), Given.at(to)), Given.at(now)))
                .advice();
    }

    /** Bo has a break from 12 to 13, so Mika alone mixes for three clients at 12:30 from 12:22 on, six minutes each with the way to the chair. */
    @Test
    void one_more_assistant_in_the_break_of_another_takes_the_wait_away() {
        Day day = day(2, booking(1, "12:30", 0, 0), booking(2, "12:30", 0, 0), booking(3, "12:30", 0, 0));
        AssistantAdvice advice = extra(day, "12:22", "12:00", "13:00");
        assertThat(advice.present().waitMinutes()).isEqualTo(14);
        assertThat(advice.then().waitMinutes()).isEqualTo(4);
        assertThat(advice.sentence()).startsWith("One more assistant from 12:22 to 13:00: 10 minutes less waiting");
    }

    @Test
    void where_a_scale_is_lacking_one_more_assistant_is_no_help_and_the_answer_says_why() {
        AssistantAdvice advice = extra(crowdedTen(0, 0), "09:52", "09:00", "11:00");
        assertThat(advice.then()).isEqualTo(advice.present());
        assertThat(advice.sentence()).contains("no difference", "fewer scales than assistants");
    }

    @Test
    void help_that_ends_before_it_starts_or_a_day_that_is_not_open_is_refused() {
        var backwards = new WhatIfQuestion.ExtraAssistant(Given.at("11:00"), Given.at("10:00"));
        assertThat(WhatIf.answer(day(2), backwards, EIGHT)).isInstanceOf(WhatIfAnswer.Refused.class);
        assertThat(WhatIf.answer(Day.UNOPENED, new WhatIfQuestion.Moves(), EIGHT))
                .isInstanceOf(WhatIfAnswer.Refused.class);
    }
}
