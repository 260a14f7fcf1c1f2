package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.BinBowl;
import stirtide.events.command.DayCommand.FinishZone;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.command.DayCommand.RecordLevels;
import stirtide.events.command.DayCommand.RepeatFormula;
import stirtide.events.command.DayCommand.RinseSection;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.day.OverMixCause;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.setup.Salon;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.Scale;
import stirtide.events.setup.UseHistory;
import stirtide.planner.day.history.CarriedDay;
import stirtide.planner.day.history.CarriedHistory;
import stirtide.planner.day.history.PastVisits;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.views.VisitsViews;
import stirtide.planner.visits.LastVisit;
import stirtide.planner.visits.RepeatedFormula;
import stirtide.planner.visits.RepeatedZone.Answer;
import stirtide.planner.visits.VisitComparison;

/** What was mixed for a client is there at the next booking, and "as last time" plans it again or says what forbids it. */
class RememberedDayTest {
    private static final LocalDate LAST = Given.DATE.minusDays(60);

    private static PastZone crown(String lightener, int strength, int ratio) {
        return new PastZone(
                "crown",
                "foil",
                lightener,
                strength,
                ratio,
                66_000,
                61_000,
                22,
                20,
                Optional.empty(),
                Optional.of(60),
                Optional.of(85));
    }

    private static DaySetup remembering(DaySetup setup, PastZone... zones) {
        var visit = new PastVisit(LAST, "Q.Z.", "foils", List.of(zones));
        var memory = new SalonMemory(List.of(visit), List.of(), List.of(), Optional.empty());
        return setup.with(new UseHistory(List.of(), List.of(), Optional.of(memory)));
    }

    private static Scene opened(DaySetup setup) {
        return new Scene().does(new OpenDay(setup, List.of(Given.booking("one", "foils", 1, "10:00"))));
    }

    private static RepeatedFormula repeat(DaySetup setup) {
        return LastVisit.of(setup, Given.booking("one", "foils", 1, "10:00")).orElseThrow();
    }

    @Test
    void a_finished_day_is_remembered_zone_by_zone_as_it_was_weighed() {
        var scene = Scene.atChair()
                .at("10:05")
                .does(new RecordLevels(1, "crown", Optional.of(60), Optional.empty()))
                .at("10:20")
                .does(new FinishZone(1, "crown"))
                .at("10:30")
                .does(new FinishZone(1, "sides"))
                .does(new BinBowl("1a", 12_000, OverMixCause.LEFT_OVER))
                .at("11:12")
                .does(new RinseSection(1, 1))
                .does(new RecordLevels(1, "crown", Optional.empty(), Optional.of(90)));
        // 30 + 60 g mixed, 12 g left, 3 g residue: 75 g used, shared 40 to 20; service 2 has no zone done yet
        assertThat(PastVisits.of(scene.day))
                .containsExactly(new PastVisit(
                        Given.DATE,
                        "Q.Z.",
                        "full",
                        List.of(
                                new PastZone(
                                        "crown",
                                        "foil",
                                        "cloudlift",
                                        900,
                                        2000,
                                        60_000,
                                        50_000,
                                        20,
                                        20,
                                        Optional.of(52),
                                        Optional.of(60),
                                        Optional.of(90)),
                                new PastZone(
                                        "sides",
                                        "foil",
                                        "cloudlift",
                                        900,
                                        2000,
                                        30_000,
                                        25_000,
                                        10,
                                        20,
                                        Optional.of(42),
                                        Optional.empty(),
                                        Optional.empty()))));
        assertThat(Evolver.replay(scene.log)).isEqualTo(scene.day);
        var next = Given.setup();
        var later =
                new DaySetup(Given.DATE.plusDays(30), next.salon(), next.developers(), next.directions(), next.menu());
        var learned =
                CarriedHistory.learned(later, Optional.of(scene.day), List.of(CarriedDay.of(scene.day)), 10, List.of());
        assertThat(learned.learned().remembered().visits()).isEqualTo(PastVisits.of(scene.day));
    }

    @Test
    void as_last_time_plans_the_real_formula_and_grams_again() {
        var scene = opened(remembering(Given.setup(), crown("cloudlift", 600, 2_020)));
        var menu = PlanQuestions.of(scene.day).orElseThrow().services().get(0).runs();
        assertThat(menu)
                .singleElement()
                .satisfies(run -> assertThat(run.strengthHundredths()).isEqualTo(900));
        scene.does(new RepeatFormula(1, true));
        var runs = PlanQuestions.of(scene.day).orElseThrow().services().get(0).runs();
        assertThat(runs).hasSize(2);
        assertThat(runs.get(0).strengthHundredths()).isEqualTo(600);
        assertThat(runs.get(0).ratioThousandths()).isEqualTo(2_020);
        assertThat(runs.get(0).zones().get(0).needMilligrams()).isEqualTo(61_000);
        assertThat(scene.day.ledger().allowance(1, "crown").orElseThrow().sentence())
                .isEqualTo("61 g: as on " + LAST);
        assertThat(scene.day.ledger().repeat(1).orElseThrow().departures()).isEmpty();
        assertThat(Evolver.replay(scene.log)).isEqualTo(scene.day);
        scene.does(new RepeatFormula(1, false));
        assertThat(PlanQuestions.of(scene.day).orElseThrow().services().get(0).runs())
                .hasSize(1);
    }

    @Test
    void what_no_longer_allows_the_last_formula_is_said_with_the_nearest_that_is_allowed() {
        var exact = repeat(remembering(Given.setup(), crown("cloudlift", 600, 2_020)));
        assertThat(exact.zones()).extracting("answer").containsExactly(Answer.EXACT, Answer.NEW);

        var ratio = repeat(remembering(Given.setup(), crown("cloudlift", 600, 2_800)))
                .zones()
                .get(0);
        assertThat(ratio.answer()).isEqualTo(Answer.NEAREST);
        // the scale of the tests errs by half a gram: what it can weigh inside the window stays clear of the edge
        assertThat(ratio.ratioThousandths()).isBetween(2_250, 2_500);
        assertThat(ratio.sentence()).contains("1:1.5 to 1:2.5", "not 1:2.8");

        var strong = repeat(remembering(Given.setup(), crown("cloudlift", 1200, 2_000)))
                .zones()
                .get(0);
        assertThat(strong.strengthHundredths()).isEqualTo(900);
        assertThat(strong.sentence()).contains("up to 30 vol (9 %)", "not 40 vol (12 %)");

        var gone = repeat(remembering(Given.setup(), crown("old-powder", 600, 2_000)))
                .zones()
                .get(0);
        assertThat(gone.lightenerId()).isEqualTo("cloudlift");
        assertThat(gone.answer()).isEqualTo(Answer.NEAREST);
        assertThat(gone.strengthHundredths()).isEqualTo(600);
        assertThat(gone.ratioThousandths()).isEqualTo(2_000);
        assertThat(gone.sentence())
                .contains("old-powder is not on the shelf any more", "test a swatch first", "1:2 with 20 vol (6 %)");
        var goneAndStrong = repeat(remembering(Given.setup(), crown("old-powder", 1200, 4_000)))
                .zones()
                .get(0);
        // never stronger than the menu has it, and inside the window of the lightener that stands in
        assertThat(goneAndStrong.strengthHundredths()).isEqualTo(900);
        assertThat(goneAndStrong.ratioThousandths()).isBetween(2_250, 2_500);

        var dry = repeat(remembering(withoutDeveloper(Given.setup()), crown("cloudlift", 450, 2_000)))
                .zones()
                .get(0);
        assertThat(dry.answer()).isEqualTo(Answer.NEAREST);
        assertThat(dry.strengthHundredths()).isEqualTo(900);
        assertThat(dry.sentence()).contains("15 vol (4.5 %)", "neither taken nor blended");
    }

    private static DaySetup withoutDeveloper(DaySetup setup) {
        return new DaySetup(
                setup.date(),
                setup.salon(),
                setup.developers().stream()
                        .filter(one -> one.strengthHundredths() == 900)
                        .toList(),
                setup.directions(),
                setup.menu());
    }

    @Test
    void a_coarser_scale_says_what_it_can_weigh_instead() {
        var salon = Given.setup().salon();
        var coarse = new Scale(
                "coarse",
                Scale.AccuracyClass.III,
                false,
                Scale.Weighing.TARE_BETWEEN,
                0,
                List.of(new Scale.Range(3_000_000, 5_000, 5_000)));
        var other = new Salon(
                salon.salonId(),
                salon.name(),
                salon.zone(),
                salon.currency(),
                salon.chairs(),
                salon.handOverMinutes(),
                salon.washMinutes(),
                salon.people(),
                List.of(coarse),
                salon.bowls(),
                Optional.empty(),
                Optional.empty());
        var setup = Given.setup();
        var day = new DaySetup(setup.date(), other, setup.developers(), setup.directions(), setup.menu());
        var crown =
                repeat(remembering(day, crown("cloudlift", 900, 2_120))).zones().get(0);
        assertThat(crown.answer()).isEqualTo(Answer.NEAREST);
        assertThat(crown.sentence()).contains("the scales here weigh 61 g at 1:", "not at 1:2.12");
    }

    @Test
    void the_last_formula_needs_an_earlier_visit_and_a_service_that_has_not_begun() {
        var strange = opened(Given.setup());
        assertThat(strange.refused(new RepeatFormula(1, true), "NO_EARLIER_VISIT")
                        .sentence())
                .contains("client reference and menu entry");
        strange.refused(new RepeatFormula(1, false), "FORMULA_AS_IT_IS");
        strange.refused(new RepeatFormula(9, true), "SERVICE_UNKNOWN");
        var known = opened(remembering(Given.setup(), crown("cloudlift", 900, 2_000)));
        known.at("10:00").does(new StartService(1));
        known.refused(new RepeatFormula(1, true), "SERVICE_STARTED");
    }

    @Test
    void minutes_nobody_recorded_are_called_planned() {
        var planned = crown("cloudlift", 900, 2_000);
        assertThat(VisitComparison.processed(planned)).isEqualTo("20 min planned");
        var scene = Scene.atChair()
                .at("10:20")
                .does(new FinishZone(1, "crown"))
                .does(new FinishZone(1, "sides"))
                .does(new BinBowl("1a", 12_000, OverMixCause.LEFT_OVER));
        assertThat(PastVisits.of(scene.day).get(0).zones())
                .extracting(VisitComparison::processed)
                .containsExactly("20 min planned", "20 min planned");
        scene.at("10:47").does(new RinseSection(1, 1));
        assertThat(PastVisits.of(scene.day).get(0).zones())
                .extracting(VisitComparison::processed)
                .containsExactly("27 min", "27 min");
    }

    @Test
    void two_visits_lie_side_by_side() {
        var first = new PastVisit(LAST.minusDays(50), "Q.Z.", "foils", List.of(crown("cloudlift", 900, 2_000)));
        var second = new PastVisit(LAST, "Q.Z.", "foils", List.of(crown("cloudlift", 600, 2_020)));
        var sheet = VisitsViews.sideBySide(List.of(second, first), Optional.empty(), Optional.empty())
                .orElseThrow();
        assertThat(sheet.first()).isEqualTo(first.on().toString());
        assertThat(sheet.rows().stream().filter(row -> row.differs()).toList())
                .extracting("figure", "first", "second")
                .containsExactly(tuple("developer", "30 vol (9 %)", "20 vol (6 %)"), tuple("ratio", "1:2", "1:2.02"));
        assertThat(VisitsViews.sideBySide(List.of(first), Optional.empty(), Optional.empty()))
                .isEmpty();
    }

    @Test
    void memory_is_bounded_and_keeps_booked_clients() {
        var visits = new ArrayList<PastVisit>();
        for (int i = 1; i <= 600; i++)
            visits.add(new PastVisit(
                    Given.DATE.minusDays(i),
                    i > 590 ? "Q.Z." : "C" + i,
                    "foils",
                    List.of(crown("cloudlift", 900, 2000))));
        var brought = new SalonMemory(visits, List.of(), List.of(), Optional.empty());
        var earlier = Scene.planned().day;
        var booked = List.of(Given.booking("one", "foils", 1, "10:00"));
        var kept = CarriedHistory.memory(brought, earlier, List.of(CarriedDay.of(earlier)), booked);
        assertThat(kept.visits()).hasSize(400).isSortedAccordingTo(java.util.Comparator.comparing(PastVisit::on));
        assertThat(kept.visits().stream().filter(visit -> visit.clientRef().equals("Q.Z.")))
                .hasSize(10);
    }
}
