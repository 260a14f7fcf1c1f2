package stirtide.bar.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;
import stirtide.bar.SetupSamples;
import stirtide.bar.keys.Key;
import stirtide.bar.link.LinkEvent;
import stirtide.events.command.DayCommand;
import stirtide.events.command.DayCommand.ChangeSetup;
import stirtide.events.day.ClientTests;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.SetupPiece;

/** Looking at what is in force, and changing it piece by piece. */
class SetupTest {
    private static ControllerFixture bench() {
        var bench = ControllerFixture.with(Samples.busy()).type("4");
        assertThat(bench.setupAsked).isEqualTo(1);
        return bench.hear(new LinkEvent.InForce(SetupSamples.complete()));
    }

    private static ControllerFixture erase(ControllerFixture bench, int characters) {
        for (int i = 0; i < characters; i++) bench.press(Key.Kind.ERASE);
        return bench;
    }

    private static ControllerFixture pick(ControllerFixture bench, String word) {
        for (int i = 0;
                i < 40 && bench.picture().lines().noneMatch(line -> line.startsWith(">") && line.contains(word));
                i++) bench.press(Key.Kind.DOWN);
        return bench;
    }

    @Test
    void a_price_is_changed_where_it_stands_and_the_form_closes_when_it_is_taken() {
        var bench = pick(bench(), "Foam 20").press(Key.Kind.ENTER);
        assertThat(bench.title()).isEqualTo("DEVELOPER");
        bench.press(Key.Kind.UP);
        erase(bench, 4).type("9.10").press(Key.Kind.ENTER);
        var sent = (SetupPiece.OneDeveloper) ((ChangeSetup) bench.sent.get(0)).piece();
        assertThat(sent.developer().packPrice()).isEqualByComparingTo("9.10");
        assertThat(sent.developer().countedMilligrams()).contains(2_750_000);
        assertThat(bench.picture()).contains("sent; waiting for the service");
        bench.hear(new LinkEvent.Taken(bench.sent.get(0), "developer", false));
        assertThat(bench.panel()).isEmpty();
    }

    @Test
    void a_refusal_is_shown_in_the_form_and_the_form_stays() {
        var bench = pick(bench(), "Foam 20")
                .press(Key.Kind.ENTER)
                .press(Key.Kind.UP)
                .press(Key.Kind.ENTER);
        bench.hear(new LinkEvent.Refused(bench.sent.get(0), "developer", "Accepted: something else."));
        assertThat(bench.title()).isEqualTo("DEVELOPER");
        assertThat(bench.picture()).contains("! not taken: Accepted: something else.");
        bench.press(Key.Kind.ENTER);
        assertThat(bench.sent).hasSize(2);
    }

    @Test
    void a_field_says_what_it_accepts() {
        var bench = pick(bench(), "Foam 20").press(Key.Kind.ENTER).press(Key.Kind.DOWN);
        erase(bench, 3).type("20 vol").press(Key.Kind.ENTER);
        assertThat(bench.picture()).contains("per cent by weight, such as 6 (20 vol) or 4.5");
        assertThat(bench.sent).isEmpty();
    }

    @Test
    void hours_are_typed_as_they_are_read() {
        var bench = pick(bench(), "Edda").press(Key.Kind.ENTER).press(Key.Kind.UP);
        bench.type("09:00-08:00").press(Key.Kind.ENTER);
        assertThat(bench.picture()).contains("hours that end after they begin");
        erase(bench, 11).type("08:30-12:30 13:00-24:00").press(Key.Kind.ENTER);
        var sent = (SetupPiece.OnePerson) ((ChangeSetup) bench.sent.get(0)).piece();
        assertThat(sent.person().personId()).isEqualTo("edda");
        assertThat(sent.person().onDuty()).hasSize(2);
        assertThat(sent.person().onDuty().get(1).to()).hasToString("2027-05-14T23:00:00Z");
    }

    @Test
    void somebody_without_hours_is_off_today() {
        var bench = pick(bench(), "Edda").press(Key.Kind.ENTER).press(Key.Kind.UP);
        erase(bench, 40).hear(new LinkEvent.Seen(Samples.busy())).press(Key.Kind.ENTER);
        var sent = (SetupPiece.OnePerson) ((ChangeSetup) bench.sent.get(0)).piece();
        assertThat(sent.person().onDuty()).isEmpty();
        assertThat(bench.notice()).isEqualTo("sent: Edda is off today");
    }

    @Test
    void a_new_zone_comes_after_the_picked_one() {
        var bench = pick(bench(), "back: 32.5 g").type("n");
        assertThat(bench.title()).isEqualTo("ZONE of Half head of foils");
        assertThat(bench.picture()).contains("Dune Powder").doesNotContain("dune-powder");
        bench.type("nape").press(Key.Kind.ENTER).press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        bench.type("6")
                .press(Key.Kind.ENTER)
                .type("2.5")
                .press(Key.Kind.ENTER)
                .type("12,5")
                .press(Key.Kind.ENTER);
        bench.type("10")
                .press(Key.Kind.ENTER)
                .press(Key.Kind.ENTER)
                .type("25")
                .press(Key.Kind.ENTER)
                .press(Key.Kind.ENTER);
        var sent = (SetupPiece.OneMenuEntry) ((ChangeSetup) bench.sent.get(0)).piece();
        assertThat(sent.entry().zones()).extracting(MenuZone::zone).containsExactly("back", "nape", "sides");
        assertThat(sent.entry().zones().get(1))
                .isEqualTo(new MenuZone("nape", "foil", "dune-powder", 600, 2500, 12_500, 10, 0, 25, 1));
    }

    @Test
    void a_new_lightener_goes_on_to_its_first_technique() {
        var bench = pick(bench(), "LIGHTENERS").type("n");
        bench.type("Reef Clay").press(Key.Kind.ENTER).press(Key.Kind.RIGHT).press(Key.Kind.ENTER);
        for (String text : List.of("50", "4")) bench.type(text).press(Key.Kind.ENTER);
        bench.press(Key.Kind.ENTER);
        for (String text : List.of("400", "19.90", "", "48", "Wear gloves."))
            bench.type(text).press(Key.Kind.ENTER);
        assertThat(bench.title()).isEqualTo("TECHNIQUE of Reef Clay");
        assertThat(bench.sent).isEmpty();
        bench.type("freehand").press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        for (String text : List.of("1.5", "2.5", "9", "50")) bench.type(text).press(Key.Kind.ENTER);
        var sent = (SetupPiece.OneLightener) ((ChangeSetup) bench.sent.get(0)).piece();
        assertThat(sent.directions().lightenerId()).isEqualTo("reef-clay");
        assertThat(sent.directions().form()).isEqualTo("clay");
        assertThat(sent.directions().strandTestHours()).isEmpty();
        assertThat(sent.directions().patchTestHours()).contains(48);
        assertThat(sent.directions().techniques()).hasSize(1);
    }

    @Test
    void from_the_technique_esc_leads_back_to_the_lightener_as_it_was_typed() {
        var bench = pick(bench(), "LIGHTENERS").type("n");
        bench.type("Reef Clay").press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        for (String text : List.of("50", "4")) bench.type(text).press(Key.Kind.ENTER);
        bench.press(Key.Kind.ENTER);
        for (String text : List.of("400", "19.90")) bench.type(text).press(Key.Kind.ENTER);
        bench.type("0").press(Key.Kind.ENTER);
        assertThat(bench.picture()).contains("strand test, hours before takes whole hours from 1 to 336");
        bench.press(Key.Kind.ERASE).press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        bench.type("Wear gloves.").press(Key.Kind.ENTER);
        assertThat(bench.title()).isEqualTo("TECHNIQUE of Reef Clay");
        assertThat(bench.picture()).contains("Esc: the form before");
        bench.press(Key.Kind.ESCAPE);
        assertThat(bench.title()).isEqualTo("LIGHTENER");
        assertThat(bench.picture()).contains("[Reef Clay", "[19.90", "[Wear gloves.");
    }

    @Test
    void taking_out_is_asked_first_and_the_last_technique_stays() {
        var bench = pick(bench(), "Edda").type("x").press(Key.Kind.ENTER);
        assertThat(bench.sent).isEmpty();
        bench.type("xy");
        assertThat(bench.sent)
                .containsExactly(new ChangeSetup(new SetupPiece.TakenOut(SetupPiece.Kind.PERSON, "edda")));
        pick(bench, "scalp on scalp").type("xy");
        var less = (SetupPiece.OneLightener) ((ChangeSetup) bench.sent.get(1)).piece();
        assertThat(less.directions().techniques()).hasSize(1);
    }

    @Test
    void the_shelf_is_counted_and_the_grams_of_a_zone_are_pinned() {
        var bench = pick(bench(), "Foam 20")
                .type("w")
                .press(Key.Kind.ENTER)
                .type("1200")
                .press(Key.Kind.ENTER);
        bench.hear(new LinkEvent.Taken(bench.sent.get(0), "", false)).type("w");
        bench.press(Key.Kind.RIGHT).press(Key.Kind.ENTER).type("2").press(Key.Kind.ENTER);
        bench.hear(new LinkEvent.Taken(bench.sent.get(1), "", false));
        pick(bench, "sides: 28 g").type("g").press(Key.Kind.ENTER).type("31").press(Key.Kind.ENTER);
        bench.hear(new LinkEvent.Taken(bench.sent.get(2), "", false)).type("g");
        bench.press(Key.Kind.RIGHT).press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        assertThat(bench.sent)
                .containsExactly(
                        new DayCommand.CountStock("foam-20", 1_200_000),
                        new DayCommand.ReceiveGoods("foam-20", 2),
                        new DayCommand.PinAllowance("half-foils", "sides", 31_000),
                        new DayCommand.ResetAllowance("half-foils", "sides"));
    }

    @Test
    void a_weight_that_a_scale_types_into_a_field_for_fingers_leaves_nothing_behind() {
        var bench = pick(bench(), "Foam 20").type("w").press(Key.Kind.ENTER).burst("812.5");
        assertThat(bench.picture()).contains("takes fingers only").doesNotContain("[81");
        bench.press(Key.Kind.ENTER);
        assertThat(bench.sent).isEmpty();
        bench.type("812.5").press(Key.Kind.ENTER);
        assertThat(bench.sent).containsExactly(new DayCommand.CountStock("foam-20", 812_500));
    }

    @Test
    void how_often_grams_are_enough_is_set_and_left_to_the_costs_again() {
        var bench = bench().type("f").press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        assertThat(bench.picture()).contains("times in 100 takes 50 to 99.5, such as 80");
        bench.type("8x");
        assertThat(bench.sent).isEmpty();
        erase(bench, 2).type("40").press(Key.Kind.ENTER);
        var refusal = "Allowances are enough 500 to 995 times in a thousand.";
        bench.hear(new LinkEvent.Refused(bench.sent.get(0), "", refusal));
        assertThat(bench.picture()).contains("not taken: " + refusal);
        erase(bench, 2).type("92,5").press(Key.Kind.ENTER);
        bench.hear(new LinkEvent.Taken(bench.sent.get(1), "", false)).type("f");
        bench.press(Key.Kind.RIGHT).press(Key.Kind.ENTER).press(Key.Kind.ENTER);
        assertThat(bench.sent)
                .containsExactly(
                        new DayCommand.SetAllowanceFraction(Optional.of(400)),
                        new DayCommand.SetAllowanceFraction(Optional.of(925)),
                        new DayCommand.SetAllowanceFraction(Optional.empty()));
    }

    @Test
    void a_test_is_recorded_and_the_last_formula_asked_for_at_the_service() {
        var bench = ControllerFixture.with(Samples.busy())
                .type("sp")
                .press(Key.Kind.RIGHT)
                .press(Key.Kind.ENTER);
        erase(bench, 16).type("2027-02-30 10:00").press(Key.Kind.ENTER);
        assertThat(bench.picture()).contains("done at takes a day of the calendar");
        erase(bench, 16).type("2027-05-12 10:00").press(Key.Kind.ENTER);
        var test = (DayCommand.RecordTest) bench.sent.get(0);
        assertThat(test.kind()).isEqualTo(ClientTests.Kind.PATCH);
        assertThat(test.doneAt()).hasToString("2027-05-12T09:00:00Z");
        bench.hear(new LinkEvent.Taken(test, "", false)).type("sr").press(Key.Kind.ENTER);
        assertThat(bench.sent.get(1)).isEqualTo(new DayCommand.RepeatFormula(test.service(), true));
    }

    @Test
    void what_is_missing_is_told_until_the_setup_is_complete() {
        var bench = ControllerFixture.with(Samples.calm()).type("4").hear(new LinkEvent.InForce(SetupSamples.begun()));
        assertThat(bench.picture()).contains("2 still missing before a client can be booked. Next: A scale at the bar");
        bench.hear(new LinkEvent.InForce(SetupSamples.complete()));
        assertThat(bench.picture()).doesNotContain("still missing");
        assertThat(bench.type("e").notice()).isEqualTo("written: 1 files");
    }
}
