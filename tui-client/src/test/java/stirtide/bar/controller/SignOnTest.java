package stirtide.bar.controller;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.bar.Samples;
import stirtide.bar.keys.Key;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.model.Operator;
import stirtide.events.command.DayCommand;

/** Signing on and off at a terminal whose service asks who works there. */
class SignOnTest {
    private final ControllerFixture bench = new ControllerFixture(new Operator("", false));

    @BeforeEach
    void nobody_is_signed_on() {
        bench.controller.people(true, 5);
        bench.hear(new LinkEvent.SignOn.Needed()).hear(new LinkEvent.Seen(Samples.busy()));
    }

    private void tamsinSignsOn() {
        bench.hear(new LinkEvent.SignOn.Begun("tamsin", "assistant", 0));
        bench.pass(0);
    }

    private String header() {
        return bench.picture().lines().findFirst().orElseThrow();
    }

    @Test
    void the_header_says_that_somebody_must_sign_on_and_then_who_has() {
        assertThat(header()).endsWith("0 sign on");
        tamsinSignsOn();
        assertThat(header()).endsWith("Tamsin");
        assertThat(bench.notice()).isEqualTo("Tamsin is signed on as assistant");
    }

    @Test
    void a_key_that_changes_the_day_asks_for_a_sign_on_and_sends_nothing() {
        bench.type("m");
        assertThat(bench.title()).isEqualTo("SIGN ON");
        assertThat(bench.picture()).contains("mix: sign on first, then press the key again");
        assertThat(bench.sent).isEmpty();
    }

    @Test
    void a_name_and_six_digits_are_sent_and_the_panel_closes_when_the_person_is_in() {
        bench.type("0").type("b").press(Key.Kind.ENTER).type("123456");
        assertThat(bench.picture()).contains("Bohdan", "[******").doesNotContain("123456");
        bench.press(Key.Kind.ENTER);
        assertThat(bench.signOns).containsExactly("bohdan 123456");
        assertThat(bench.picture()).contains("asking the service, 0 s");
        bench.pass(4);
        assertThat(bench.picture()).contains("asking the service, 4 s");
        bench.press(Key.Kind.ENTER);
        assertThat(bench.signOns).hasSize(1);
        bench.hear(new LinkEvent.SignOn.Begun("bohdan", "colorist", 0));
        bench.pass(0);
        assertThat(bench.panel()).isEmpty();
        bench.type("m");
        assertThat(bench.sent)
                .singleElement()
                .isInstanceOfSatisfying(
                        DayCommand.BeginBowl.class,
                        begin -> assertThat(begin.personId()).isEqualTo("bohdan"));
    }

    @Test
    void six_digits_that_come_all_at_once_are_all_taken() {
        bench.type("0").type("b").press(Key.Kind.ENTER).burst("123456");
        assertThat(bench.picture()).contains("[****** ");
        bench.press(Key.Kind.ENTER);
        assertThat(bench.signOns).containsExactly("bohdan 123456");
    }

    @Test
    void six_digits_and_enter_in_one_burst_are_a_sign_on() {
        bench.type("0").type("b").press(Key.Kind.ENTER).burst("654321\r\n");
        assertThat(bench.signOns).containsExactly("bohdan 654321");
    }

    @ParameterizedTest
    @ValueSource(strings = {"40.2 g\r\n", "40.25\r", "400600812345\r", "1234567\r", "123456 \r"})
    void a_burst_that_is_no_code_leaves_nothing_behind(String burst) {
        bench.type("0").type("b").press(Key.Kind.ENTER).burst(burst);
        assertThat(bench.picture()).contains("code takes six digits").doesNotContain("[*");
        assertThat(bench.signOns).isEmpty();
        bench.type("123456").press(Key.Kind.ENTER);
        assertThat(bench.signOns).containsExactly("bohdan 123456");
    }

    @Test
    void who_leaves_before_the_service_has_answered_is_signed_off_again() {
        bench.type("0").type("b").press(Key.Kind.ENTER).type("123456").press(Key.Kind.ENTER);
        bench.press(Key.Kind.ESCAPE).pass(0);
        assertThat(bench.panel()).isEmpty();
        assertThat(bench.signOffs).hasSize(1);
        bench.hear(new LinkEvent.SignOn.Begun("bohdan", "colorist", 0));
        bench.hear(new LinkEvent.SignOn.Ended("by key", 0));
        assertThat(header()).endsWith("0 sign on");
        bench.type("0").type("b").press(Key.Kind.ENTER).type("123456").press(Key.Kind.ENTER);
        assertThat(bench.signOns).hasSize(2);
    }

    @Test
    void five_digits_are_not_sent() {
        bench.type("0").press(Key.Kind.ENTER).type("12345").press(Key.Kind.ENTER);
        assertThat(bench.signOns).isEmpty();
        assertThat(bench.picture()).contains("code takes six digits");
    }

    @Test
    void a_wrong_code_is_told_in_the_services_words_and_typed_anew() {
        bench.type("0").press(Key.Kind.ENTER).type("111111").press(Key.Kind.ENTER);
        bench.type("5");
        bench.hear(new LinkEvent.SignOn.Refused("person or code is wrong", 0));
        assertThat(bench.picture()).contains("! person or code is wrong").doesNotContain("[*");
        bench.type("222222").press(Key.Kind.ENTER);
        assertThat(bench.signOns).hasSize(2);
    }

    @Test
    void while_the_service_looks_at_no_code_the_seconds_are_counted_and_nothing_is_sent() {
        bench.type("0").press(Key.Kind.ENTER).type("111111").press(Key.Kind.ENTER);
        bench.hear(new LinkEvent.SignOn.Refused("too many wrong codes; no code is looked at for 60 seconds", 60));
        assertThat(bench.picture()).contains("too many wrong codes: no code is looked at for 60 s");
        bench.type("222222").press(Key.Kind.ENTER);
        assertThat(bench.signOns).hasSize(1);
        bench.pass(60);
        assertThat(bench.picture()).doesNotContain("too many wrong codes");
        bench.press(Key.Kind.ENTER);
        assertThat(bench.signOns).hasSize(2);
    }

    @Test
    void signing_off_asks_first() {
        tamsinSignsOn();
        bench.type("0");
        assertThat(bench.title()).isEqualTo("SIGN OFF?");
        bench.press(Key.Kind.ENTER);
        assertThat(bench.signOffs).isEmpty();
        bench.type("0y");
        assertThat(bench.signOffs).containsExactly("by key");
        bench.hear(new LinkEvent.SignOn.Ended("by key", 0));
        assertThat(bench.panel()).isEmpty();
        assertThat(bench.notice()).isEqualTo("Tamsin is signed off: by key");
        assertThat(header()).endsWith("0 sign on");
    }

    @Test
    void without_a_key_for_the_minutes_set_the_person_is_warned_and_then_signed_off_once() {
        tamsinSignsOn();
        bench.pass(269);
        assertThat(bench.notice()).isEqualTo("Tamsin is signed on as assistant");
        bench.pass(2);
        assertThat(bench.notice()).isEqualTo("Tamsin is signed off in 30 s: Esc keeps the sign-on");
        assertThat(bench.signOffs).isEmpty();
        bench.pass(30).pass(1).pass(1);
        assertThat(bench.signOffs).containsExactly("no key for 5 min");
    }

    @Test
    void a_key_keeps_the_sign_on() {
        tamsinSignsOn();
        bench.pass(290).press(Key.Kind.ESCAPE).pass(290);
        assertThat(bench.signOffs).isEmpty();
    }

    @Test
    void what_was_half_typed_goes_with_the_person_and_entries_that_wait_are_told() {
        tamsinSignsOn();
        bench.type("w");
        assertThat(bench.panel()).isPresent();
        bench.hear(new LinkEvent.SignOn.Ended("this sign-on has ended; sign on again", 2));
        assertThat(bench.panel()).isEmpty();
        assertThat(bench.notice()).contains("2 entries of Tamsin wait for the next sign-on");
    }

    @Test
    void an_open_service_asks_nobody() {
        var open = ControllerFixture.with(Samples.busy());
        open.type("0");
        assertThat(open.panel()).isEmpty();
        assertThat(open.notice()).isEqualTo("this service needs no sign-on");
    }

    @Test
    void a_terminal_that_only_reads_is_no_place_to_sign_on() {
        var reader = new ControllerFixture(new Operator("", false));
        reader.controller.people(false, 5);
        reader.hear(new LinkEvent.SignOn.Needed()).hear(new LinkEvent.Seen(Samples.busy()));
        reader.type("m");
        assertThat(reader.panel()).isEmpty();
        assertThat(reader.picture().lines().findFirst().orElseThrow()).endsWith("read only");
    }
}
