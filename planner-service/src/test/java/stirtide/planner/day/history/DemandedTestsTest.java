package stirtide.planner.day.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.AcknowledgeAlarm;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.command.DayCommand.RecordTest;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.day.ClientTests;
import stirtide.events.day.ClientTests.Kind;
import stirtide.events.plan.Plan.PlanNote;
import stirtide.events.view.AlarmCard;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.TestCard;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;
import stirtide.planner.views.DayViews;

/** The directions of the tests ask for a strand test 48 hours before. */
class DemandedTestsTest {
    private static Scene opened() {
        return new Scene()
                .does(new OpenDay(
                        Given.setup(),
                        List.of(Given.booking("one", "foils", 1, "10:00").withTests(Optional.of(ClientTests.NONE)))));
    }

    private static DayView view(Scene scene) {
        return DayViews.of(scene.day, scene.now, 1000);
    }

    private static TestCard card(Scene scene) {
        return view(scene).services().get(0).tests().get(0);
    }

    private static List<AlarmCard> alarms(Scene scene) {
        return view(scene).alarms().stream()
                .filter(alarm -> alarm.kind().startsWith("TEST_"))
                .toList();
    }

    @Test
    void a_missing_test_is_shown_until_it_is_recorded() {
        var scene = opened();
        assertThat(card(scene).state()).isEqualTo("MISSING");
        assertThat(card(scene).sentence())
                .isEqualTo("No strand test is recorded: the directions of Cloudlift ask for a strand test at least 48"
                        + " hours before, by Wed 12 May 10:00. Record when it was done, or move the service.");
        assertThat(view(scene).notes()).extracting(PlanNote::kind).containsExactly("TEST_MISSING");
        assertThat(alarms(scene)).extracting(AlarmCard::priority).containsExactly("LOW");
        scene.does(new RecordTest(1, Kind.STRAND, Given.at("09:00").minus(Duration.ofDays(2))));
        assertThat(card(scene).state()).isEqualTo("RECORDED");
        assertThat(alarms(scene)).isEmpty();
        assertThat(view(scene).notes()).isEmpty();
        assertThat(Evolver.replay(scene.log)).isEqualTo(scene.day);
    }

    @Test
    void a_test_on_the_day_before_is_too_late_for_this_start_and_early_enough_for_a_later_one() {
        var scene =
                opened().does(new RecordTest(1, Kind.STRAND, Given.at("07:00").minus(Duration.ofDays(1))));
        assertThat(card(scene).state()).isEqualTo("TOO_LATE");
        assertThat(card(scene).sentence()).contains("Thu 13 May 07:00 is too late", "Move the service");
        assertThat(alarms(scene)).extracting(AlarmCard::kind).containsExactly("TEST_TOO_LATE");
    }

    @Test
    void nothing_ever_says_that_a_client_is_safe() {
        var scene =
                opened().does(new RecordTest(1, Kind.STRAND, Given.at("09:00").minus(Duration.ofDays(3))));
        assertThat(card(scene).sentence()).contains("for a licensed professional to judge");
        for (var state : List.of(opened(), scene))
            assertThat(view(state).toString().toLowerCase(java.util.Locale.ROOT))
                    .doesNotContain("client is safe", "is safe to", "safe for");
    }

    @Test
    void seeing_the_alarm_does_not_switch_it_off_and_a_client_in_the_chair_raises_it() {
        var scene = opened();
        scene.does(new AcknowledgeAlarm(alarms(scene).get(0).id()));
        assertThat(alarms(scene)).hasSize(1);
        scene.at("10:00").does(new StartService(1));
        assertThat(alarms(scene)).singleElement().satisfies(alarm -> {
            assertThat(alarm.priority()).isEqualTo("MEDIUM");
            assertThat(alarm.acknowledgedBy()).isEmpty();
        });
    }

    @Test
    void a_test_that_is_not_done_yet_or_of_nobody_is_refused() {
        var scene = opened();
        scene.refused(new RecordTest(1, Kind.PATCH, Given.at("09:00")), "TEST_NOT_DONE");
        scene.refused(new RecordTest(4, Kind.PATCH, Given.at("07:00")), "SERVICE_UNKNOWN");
    }
}
