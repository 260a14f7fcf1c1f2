package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.command.DayCommand.PinAllowance;
import stirtide.events.command.DayCommand.ResetAllowance;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.allowance.Allowance;
import stirtide.planner.day.allowance.ZoneGrams;
import stirtide.planner.day.history.CarriedDay;
import stirtide.planner.day.history.CarriedHistory;
import stirtide.planner.day.history.PastUses;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.Day;

public class LearnedDayTest {
    private static final int BASE = 40_000;

    public static DaySetup withManager() {
        var plain = Given.setup();
        var salon = plain.salon();
        var people = new ArrayList<>(salon.people());
        people.add(new Person("ruta", "Ruta", Person.Role.MANAGER, List.of()));
        return new DaySetup(
                plain.date(),
                new Salon(
                        salon.salonId(),
                        salon.name(),
                        salon.zone(),
                        salon.currency(),
                        salon.chairs(),
                        salon.handOverMinutes(),
                        salon.washMinutes(),
                        people,
                        salon.scales(),
                        salon.bowls(),
                        Optional.empty(),
                        Optional.empty()),
                plain.developers(),
                plain.directions(),
                plain.menu());
    }

    private static PastUse crown(int daysBefore, int used) {
        LocalDate on = Given.DATE.minusDays(daysBefore);
        return new PastUse(on, "foils", "crown", "K.T.", BASE, 1000, 1000, used, false);
    }

    private static Scene opened(PastUse... uses) {
        var scene = new Scene();
        scene.actor = "ruta";
        return scene.does(new OpenDay(
                withManager().with(new UseHistory(List.of(uses), List.of())),
                List.of(Given.booking("one", "foils", 1, "10:00"))));
    }

    private static int plannedCrown(Day day) {
        var service = day.service(1).orElseThrow();
        return ZoneGrams.milligrams(day, service, day.menuEntry(service).zones().get(0));
    }

    @Test
    void a_day_without_history_is_planned_with_the_grams_of_the_menu() {
        assertThat(plannedCrown(opened().day)).isEqualTo(BASE);
        assertThat(opened().day.ledger().allowances()).isEmpty();
    }

    @Test
    void zones_that_used_less_before_are_planned_with_less_and_say_why() {
        var day = opened(crown(3, 30_000), crown(10, 31_000), crown(17, 29_000), crown(24, 30_500)).day;
        assertThat(plannedCrown(day)).isBetween(29_000, 38_000);
        assertThat(day.ledger().allowance(1, "crown").map(Allowance::sentence).orElse(""))
                .contains("4 earlier crown used 29 to 31 g", "enough 4 times in 5");
        assertThat(day.ledger().allowance(1, "sides")).isEmpty();
    }

    @Test
    void the_question_to_the_planner_asks_for_the_learned_grams() {
        var day = opened(crown(3, 30_000), crown(10, 31_000)).day;
        var zones = PlanQuestions.of(day)
                .orElseThrow()
                .services()
                .get(0)
                .runs()
                .get(0)
                .zones();
        assertThat(zones.get(0).needMilligrams())
                .isBetween(30_000, plannedCrown(day))
                .isNotEqualTo(BASE);
    }

    @Test
    void a_pin_holds_whatever_was_learned_and_a_reset_forgets_it_all() {
        var scene = opened(crown(3, 30_000), crown(10, 31_000));
        scene.does(new PinAllowance("foils", "crown", 55_000));
        assertThat(plannedCrown(scene.day)).isEqualTo(55_000);
        scene.does(new ResetAllowance("foils", "crown"));
        assertThat(plannedCrown(scene.day)).isEqualTo(BASE);
        assertThat(Evolver.replay(scene.log)).isEqualTo(scene.day);
    }

    @Test
    void only_a_manager_sets_allowances_and_only_of_zones_on_the_menu() {
        var scene = opened();
        scene.refused(new PinAllowance("foils", "nape", 1000), "ZONE_UNKNOWN");
        scene.refused(new PinAllowance("perm", "crown", 1000), "MENU_UNKNOWN");
        scene.refused(new PinAllowance("foils", "crown", 0), "ALLOWANCE_OUT_OF_RANGE");
        assertThat(scene.as("ilka")
                        .refused(new ResetAllowance("foils", "crown"), "MANAGER_ONLY")
                        .sentence())
                .contains("Accepted: ruta");
    }

    @Test
    void a_later_day_learns_what_closed_bowls_of_an_earlier_day_gave() {
        var earlier = Scene.atChair()
                .at("10:20")
                .does(new stirtide.events.command.DayCommand.FinishZone(1, "crown"))
                .at("10:30")
                .does(new stirtide.events.command.DayCommand.FinishZone(1, "sides"))
                .does(new stirtide.events.command.DayCommand.BinBowl(
                        "1a", 12_000, stirtide.events.day.OverMixCause.LEFT_OVER))
                .day;
        // 90 g mixed, 12 g left, 3 g residue: 75 g on hair, shared 40 to 20 as planned
        assertThat(PastUses.of(earlier)).extracting(PastUse::usedMilligrams).containsExactly(50_000, 25_000);
        var later = Given.setup();
        var next = new DaySetup(
                Given.DATE.plusDays(7), later.salon(), later.developers(), later.directions(), later.menu());
        assertThat(CarriedHistory.learned(next, Optional.of(earlier), List.of(CarriedDay.of(earlier)), 1, List.of())
                        .history()
                        .orElseThrow()
                        .uses())
                .hasSize(1);
        assertThat(CarriedHistory.learned(later, Optional.of(earlier), List.of(CarriedDay.of(earlier)), 10, List.of())
                        .history())
                .isEmpty();
    }
}
