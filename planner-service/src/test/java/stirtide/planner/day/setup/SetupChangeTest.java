package stirtide.planner.day.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.day.Given.booking;
import static stirtide.planner.day.Given.span;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.BookService;
import stirtide.events.command.DayCommand.ChangeSetup;
import stirtide.events.command.DayCommand.ChangeShift;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.command.DayCommand.TakeBack;
import stirtide.events.day.DayEvent.SetupChanged;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.SetupPiece;
import stirtide.events.setup.SetupPiece.Kind;
import stirtide.events.setup.SetupPiece.TakenOut;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;
import stirtide.planner.day.question.PlanQuestions;

/** What is in force is changed piece by piece; what is in use stays; an empty salon is set up from nothing. */
class SetupChangeTest {
    private static ChangeSetup change(SetupPiece piece) {
        return new ChangeSetup(piece);
    }

    private static Developer developer(String id, int strength) {
        return new Developer(id, "Foam " + id, strength, 900_000, new BigDecimal("7.50"), Optional.empty());
    }

    @Test
    void a_known_piece_is_replaced_in_its_place_and_a_new_one_added_at_the_end() {
        var scene = Scene.planned().does(change(new SetupPiece.OneDeveloper(developer("dev-9", 900))));
        assertThat(scene.newest()).isEqualTo(new SetupChanged(new SetupPiece.OneDeveloper(developer("dev-9", 900))));
        scene.does(change(new SetupPiece.OneDeveloper(developer("dev-3", 300))));
        assertThat(scene.day.opened().developers())
                .extracting(Developer::developerId)
                .containsExactly("dev-6", "dev-9", "dev-12", "dev-3");
        assertThat(scene.day.opened().developers().get(1).name()).isEqualTo("Foam dev-9");
        assertThat(scene.day.planSettled()).isFalse();
    }

    @Test
    void a_change_is_taken_back_like_any_other_action() {
        var scene = Scene.planned();
        var before = scene.day.opened();
        scene.does(change(new SetupPiece.Basics("Other name", 5, 3, 6, Optional.empty(), Optional.empty())));
        assertThat(scene.day.opened().salon().chairs()).isEqualTo(5);
        scene.does(new TakeBack(scene.day.revision()));
        assertThat(scene.day.opened()).isEqualTo(before);
    }

    @Test
    void whether_two_bowls_may_be_one_mix_is_changed_and_left_alone() {
        var scene = Scene.planned();
        assertThat(PlanQuestions.standing(scene.day, scene.now).orElseThrow().oneMixTwoBowls())
                .isFalse();
        scene.does(change(new SetupPiece.Basics("Tidehouse", 4, 2, 5, Optional.of(true), Optional.empty())));
        scene.does(change(new SetupPiece.Basics("Other name", 4, 2, 5, Optional.empty(), Optional.empty())));
        assertThat(scene.day.opened().salon().oneMixTwoBowls()).contains(true);
        assertThat(PlanQuestions.of(scene.day).orElseThrow().oneMixTwoBowls()).isTrue();
        scene.does(change(new SetupPiece.OneBowlSize(new stirtide.events.setup.BowlSize("L", 200_000, 4_000, 2))));
        assertThat(scene.day.opened().salon().oneMixTwoBowls()).contains(true);
        scene.does(change(new SetupPiece.Basics("Tidehouse", 4, 2, 5, Optional.of(false), Optional.empty())));
        assertThat(PlanQuestions.of(scene.day).orElseThrow().oneMixTwoBowls()).isFalse();
    }

    @Test
    void a_person_comes_with_the_hours_of_the_day() {
        var scene = Scene.planned().does(new ChangeShift("bo", List.of()));
        var bo = new Person("bo", "Bo", Person.Role.ASSISTANT, List.of(span("09:00", "10:00")));
        scene.does(change(new SetupPiece.OnePerson(bo)));
        assertThat(SetupChangeRules.inForce(scene.day).salon().people()).contains(bo);
        var overlapping = List.of(span("09:00", "10:00"), span("09:30", "11:00"));
        scene.refused(
                change(new SetupPiece.OnePerson(new Person("bo", "Bo", Person.Role.ASSISTANT, overlapping))),
                "SHIFT_OVERLAPS");
    }

    @Test
    void what_is_in_use_is_not_taken_out() {
        var scene = Scene.begun();
        scene.refused(change(new TakenOut(Kind.MENU_ENTRY, "foils")), "SETUP_IN_USE");
        scene.refused(change(new TakenOut(Kind.PERSON, "bo")), "SETUP_IN_USE");
        scene.refused(change(new TakenOut(Kind.SCALE, "bar-1")), "SETUP_IN_USE");
        scene.refused(change(new TakenOut(Kind.BOWL_SIZE, "M")), "SETUP_IN_USE");
        scene.refused(change(new TakenOut(Kind.LIGHTENER, "cloudlift")), "SETUP_IN_USE");
        scene.refused(change(new TakenOut(Kind.DEVELOPER, "dev-9")), "SETUP_IN_USE");
        var unknown = scene.refused(change(new TakenOut(Kind.SCALE, "attic")), "SETUP_UNKNOWN");
        assertThat(unknown.sentence()).contains("bar-1, bar-2");
        scene.does(change(new TakenOut(Kind.DEVELOPER, "dev-12")));
        scene.does(change(new TakenOut(Kind.SCALE, "bar-2")));
    }

    @Test
    void a_started_service_keeps_its_zones_chair_and_words_of_hair() {
        var scene = Scene.atChair();
        var full = scene.day.opened().menu().entries().get(1);
        var shorter = new Menu.MenuEntry("full", "Full", full.zones().subList(0, 1));
        scene.refused(change(new SetupPiece.OneMenuEntry(shorter)), "SETUP_IN_USE");
        scene.does(change(new SetupPiece.OneMenuEntry(new Menu.MenuEntry("full", "Whole head", full.zones()))));
        scene.refused(
                change(new SetupPiece.Basics("Tidehouse", 1, 2, 5, Optional.empty(), Optional.empty())),
                "SETUP_IN_USE");
        var one = new TreeMap<>(Map.of("long", 1300));
        scene.refused(change(new SetupPiece.HairFactors(one, one)), "SETUP_IN_USE");
    }

    @Test
    void a_menu_entry_outside_the_directions_is_refused_as_at_opening() {
        var zone = new Menu.MenuZone("crown", "foil", "cloudlift", 900, 2600, 40_000, 20, 0, 20, 1);
        var refusal = Scene.planned()
                .refused(
                        change(new SetupPiece.OneMenuEntry(new Menu.MenuEntry("sweep", "Sweep", List.of(zone)))),
                        "SETUP_INVALID");
        assertThat(refusal.sentence()).contains("1:1.5 to 1:2.5");
    }

    @Test
    void only_a_manager_or_colorist_changes_a_salon_that_has_one() {
        var scene = Scene.planned()
                .does(change(new SetupPiece.OnePerson(
                        new Person("ada", "Ada", Person.Role.MANAGER, List.of(span("08:00", "18:00"))))));
        var basics = change(new SetupPiece.Basics("Tidehouse", 4, 2, 5, Optional.empty(), Optional.empty()));
        assertThat(scene.refused(basics, "MANAGER_OR_COLORIST_ONLY").sentence()).contains("ada");
        scene.as("ada").does(basics);
    }

    @Test
    void an_empty_salon_is_set_up_from_nothing_until_a_service_can_be_booked() {
        var given = Given.setup();
        var scene = new Scene().does(new OpenDay(empty(given), List.of()));
        assertThat(SetupGaps.of(scene.day.opened())).hasSize(6);
        scene.refused(new BookService(booking("a", "foils", 1, "09:00")), "MENU_ENTRY_UNKNOWN");
        var first = given.menu().entries().get(0);
        scene.refused(change(new SetupPiece.OneMenuEntry(first)), "SETUP_INVALID");
        given.salon().people().forEach(one -> scene.does(change(new SetupPiece.OnePerson(one))));
        given.salon().scales().forEach(one -> scene.does(change(new SetupPiece.OneScale(one))));
        scene.does(change(new SetupPiece.OneBowlSize(new BowlSize("m", 120_000, 3_000, 4))));
        scene.does(change(new SetupPiece.OneLightener(given.directions().get(0))));
        assertThat(scene.refused(change(new SetupPiece.OneMenuEntry(first)), "SETUP_INVALID")
                        .sentence())
                .contains("developer");
        given.developers().forEach(one -> scene.does(change(new SetupPiece.OneDeveloper(one))));
        scene.does(change(new SetupPiece.OneMenuEntry(first)));
        assertThat(SetupGaps.of(scene.day.opened())).isEmpty();
        scene.does(new BookService(booking("a", "foils", 1, "09:00")));
        assertThat(PlanQuestions.of(scene.day)).isPresent();
    }

    private static DaySetup empty(DaySetup given) {
        Salon s = given.salon();
        var salon = new Salon(
                s.salonId(),
                s.name(),
                s.zone(),
                s.currency(),
                3,
                2,
                5,
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        return new DaySetup(
                given.date(),
                salon,
                List.of(),
                List.of(),
                new Menu(List.of(), given.menu().lengthPermille(), given.menu().densityPermille()));
    }
}
