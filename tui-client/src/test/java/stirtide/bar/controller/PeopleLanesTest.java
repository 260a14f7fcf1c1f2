package stirtide.bar.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.bar.Samples;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.keys.Key;
import stirtide.bar.model.PersonDay;
import stirtide.bar.views.ScreenView;
import stirtide.events.view.DayView;
import stirtide.events.view.PersonWork.Kind;

class PeopleLanesTest {
    private static ControllerFixture people(DayView view) {
        return ControllerFixture.with(view).type("2").press(Key.Kind.TAB);
    }

    private static String screen(ControllerFixture bench, int columns, int rows, Glyphs glyphs) {
        return ScreenView.text(ScreenView.draw(bench.scene(), columns, rows, glyphs));
    }

    /** The row below the one that names a person. */
    private static String lane(String screen, String name) {
        List<String> rows = Arrays.asList(screen.split("\n"));
        int at = rows.indexOf(rows.stream()
                .filter(row -> row.contains(" " + name + "  "))
                .findFirst()
                .orElseThrow());
        return rows.get(at + 1);
    }

    @Test
    void tab_goes_to_the_people_and_back_and_puts_a_lifted_service_back() {
        var bench = ControllerFixture.with(Samples.calm()).type("2").press(Key.Kind.ENTER);
        bench.press(Key.Kind.TAB);
        assertThat(bench.picture())
                .contains("Tamsin  assistant  mixes 9 min, carries 6 min")
                .doesNotContain("chair 1 ");
        assertThat(bench.scene().pages().floor().lifted()).isFalse();
        bench.press(Key.Kind.TAB);
        assertThat(bench.picture()).contains("chair 1 ").doesNotContain("carries");
    }

    @ParameterizedTest
    @CsvSource({"80,24,FULL", "120,36,FULL", "200,50,FULL", "80,24,ASCII"})
    void a_lane_shows_work_and_hours_by_signs_that_the_legend_explains(int columns, int rows, Glyphs glyphs) {
        String screen = screen(people(Samples.calm()), columns, rows, glyphs);
        char apply = glyphs.map('█');
        char free = glyphs.map('·');
        assertThat(lane(screen, "Tamsin")).containsAnyOf("m", "&").contains("x").contains("" + free);
        assertThat(lane(screen, "Bohdan"))
                .containsAnyOf("m", "&")
                .containsAnyOf("c", "&")
                .contains("xx");
        assertThat(lane(screen, "Oriel"))
                .contains("7" + apply, apply + "-" + apply)
                .doesNotContain("m");
        assertThat(screen)
                .contains("m mix  c carry  & both  7" + apply + " applies, service 7  - gap  " + free + " free  x off");
    }

    @Test
    void the_axis_is_the_one_of_the_chairs() {
        var bench = ControllerFixture.with(Samples.calm()).type("2tl");
        String times = screen(bench, 80, 24, Glyphs.FULL).split("\n")[3];
        assertThat(times).contains(":00");
        assertThat(screen(bench.press(Key.Kind.TAB), 80, 24, Glyphs.FULL).split("\n")[3])
                .isEqualTo(times);
    }

    @Test
    void who_is_off_and_who_has_no_work_is_told() {
        String screen = screen(people(Samples.staffed(0)), 80, 24, Glyphs.FULL);
        assertThat(screen)
                .contains("Wanda-Philippa of the Upper Larch  stylist  off today")
                .contains("Ines  assistant  no work today, free 300 of 300 min");
        assertThat(lane(screen, "Wanda-Philippa of the Upper Larch").substring(9))
                .containsPattern("^x+│?x+$");
    }

    @Test
    void more_people_than_rows_are_scrolled_and_a_resize_keeps_the_picked_one_in_sight() {
        var bench = people(Samples.staffed(30));
        assertThat(screen(bench, 80, 24, Glyphs.FULL))
                .contains("people not shown: 0 above", "> Tamsin")
                .doesNotContain("Extra 30");
        for (int i = 0; i < 40; i++) bench.press(Key.Kind.DOWN);
        assertThat(screen(bench, 80, 24, Glyphs.FULL))
                .contains("> Extra 30", ", 0 below")
                .doesNotContain("Tamsin  as");
        assertThat(screen(bench, 200, 50, Glyphs.FULL)).contains("> Extra 30");
        bench.press(Key.Kind.UP);
        assertThat(screen(bench, 80, 24, Glyphs.FULL)).contains("> Extra 29");
        bench.hear(new stirtide.bar.link.LinkEvent.Seen(Samples.calm()));
        assertThat(screen(bench, 80, 24, Glyphs.FULL)).contains("> Oriel");
    }

    @Test
    void a_day_without_people_says_so_and_no_key_fails() {
        var bench = people(Samples.withPeople(Samples.quiet(), List.of()));
        assertThat(bench.press(Key.Kind.DOWN).type("c").picture()).contains("nobody is at work on this day");
        assertThat(bench.notice()).isEqualTo("no row here to copy");
    }

    @Test
    void nothing_is_lifted_among_the_people_and_the_picked_person_is_copied() {
        var bench = people(Samples.calm()).press(Key.Kind.ENTER);
        assertThat(bench.notice()).isEqualTo("services are lifted on the chairs: Tab");
        assertThat(bench.scene().pages().floor().lifted()).isFalse();
        bench.type("c");
        assertThat(bench.copied).containsExactly("Tamsin, assistant, mixes 9 min, carries 6 min, free 435 of 450 min");
    }

    @Test
    void free_minutes_leave_out_gaps_of_a_service_and_count_minutes_worked_twice_once() {
        var stylist = Samples.person(
                "s",
                "S",
                "STYLIST",
                List.of(Samples.hours(0, 60), Samples.hours(90, 120)),
                List.of(
                        Samples.work(Kind.APPLYING, 1, 0, 10, false),
                        Samples.work(Kind.APPLYING, 1, 20, 30, false),
                        Samples.work(Kind.APPLYING, 2, 25, 40, false),
                        Samples.work(Kind.MIXING, 2, 55, 95, false)));
        var day = new PersonDay(stylist);
        assertThat(day.heads()).extracting(PersonDay.Head::service).containsExactly(1, 2);
        assertThat(day.hoursMinutes()).isEqualTo(90);
        assertThat(day.freeMinutes()).isEqualTo(15 + 25);
    }
}
