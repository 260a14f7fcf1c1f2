package stirtide.planner.views;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static stirtide.planner.day.Given.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.AcknowledgeAlarm;
import stirtide.events.command.DayCommand.BinBowl;
import stirtide.events.command.DayCommand.CancelService;
import stirtide.events.command.DayCommand.FinishBowl;
import stirtide.events.command.DayCommand.FinishZone;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.day.DayEvent;
import stirtide.events.day.OverMixCause;
import stirtide.events.json.ContractJson;
import stirtide.events.plan.PlannedService;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.view.AlarmCard;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.LiveBowl;
import stirtide.events.view.DayView.PersonCard;
import stirtide.events.view.DayView.QueuedBowl;
import stirtide.events.view.DayView.ServiceCard;
import stirtide.events.view.DoneBowl;
import stirtide.events.view.ScaleCard.ScaleBand;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;

class DayViewsTest {
    private static DayView view(Scene scene) {
        return DayViews.of(scene.day, scene.now, 1000);
    }

    @Test
    void the_queue_shows_what_is_still_to_be_mixed() {
        assertThat(view(Scene.planned()).queue())
                .extracting(card -> card.bowl().bowl())
                .containsExactly("1a", "2a");
        assertThat(view(Scene.begun()).queue())
                .extracting(card -> card.bowl().bowl())
                .containsExactly("2a");
        assertThat(view(Scene.planned().does(new CancelService(2, ""))).queue())
                .extracting(card -> card.bowl().bowl())
                .containsExactly("1a");
    }

    @Test
    void cautions_stand_on_the_first_bowl_of_a_product_only() {
        var queue = view(Scene.planned()).queue();
        assertThat(queue.get(0).cautions())
                .contains("Rinse with lukewarm water.")
                .anyMatch(caution -> caution.contains("gloves"))
                .anyMatch(caution -> caution.contains("strand test at least 48 hours"));
        assertThat(queue.get(1).cautions()).isEmpty();
        assertThat(view(Scene.begun()).queue())
                .flatExtracting(QueuedBowl::cautions)
                .isEmpty();
    }

    @Test
    void names_come_from_the_shelf() {
        var card = view(Scene.planned()).queue().get(0);
        assertThat(card.lightenerName()).isEqualTo("Cloudlift");
        assertThat(card.partNames()).containsExactly("Developer 9");
        assertThat(card.partStrengthsHundredths()).containsExactly(900);
    }

    @Test
    void a_live_bowl_goes_from_mixing_to_its_chair() {
        assertThat(view(Scene.begun()).live()).extracting(LiveBowl::stage).containsExactly("MIXING");
        assertThat(view(Scene.begun().does(Scene.weigh("1a", 30_000, 60_000))).live())
                .extracting(LiveBowl::stage)
                .containsExactly("WEIGHED");
        var live = view(Scene.atChair()).live().get(0);
        assertThat(live.stage()).isEqualTo("AT_CHAIR");
        assertThat(live.lifeMinutes()).isEqualTo(40);
        assertThat(live.planned().scaleId()).isEqualTo("bar-1");
        // OIML R 76-1:2006, table 6: class II, e = 1 g, twice 0.5 e in service up to 5,000 e, and half a division of
        // 0.1 g
        var scale = view(Scene.atChair()).scales().get(0);
        assertThat(scale.bands().get(0)).isEqualTo(new ScaleBand(0, 100, 2_100));
        assertThat(scale.bands().get(1)).isEqualTo(new ScaleBand(5_000_000, 100, 4_100));
        assertThat(live.planned().usableMilligrams()).isEqualTo(120_000);
        assertThat(live.zones()).containsExactly("crown", "sides");
    }

    @Test
    void people_are_on_duty_or_mixing() {
        assertThat(view(Scene.begun()).people())
                .extracting(PersonCard::personId, PersonCard::role, PersonCard::onDutyNow, PersonCard::mixing)
                .containsExactly(
                        tuple("bo", "ASSISTANT", true, true),
                        tuple("mika", "ASSISTANT", true, false),
                        tuple("ilka", "STYLIST", true, false));
        assertThat(view(Scene.planned().at("12:30")).people())
                .extracting(PersonCard::onDutyNow)
                .containsExactly(false, true, true);
    }

    @Test
    void a_service_goes_from_booked_to_rinsed() {
        var scene = Scene.planned();
        assertThat(states(scene)).containsExactly("BOOKED", "BOOKED");
        scene.does(new StartService(2)).does(new CancelService(1, ""));
        assertThat(states(scene)).containsExactly("CANCELLED", "STARTED");
        scene.at("08:20").does(new FinishZone(2, "crown")).does(new FinishZone(2, "sides"));
        assertThat(states(scene)).containsExactly("CANCELLED", "APPLIED");
        assertThat(states(scene.at("08:40"))).containsExactly("CANCELLED", "RINSED");
    }

    private static List<String> states(Scene scene) {
        return view(scene).services().stream().map(ServiceCard::state).toList();
    }

    @Test
    void an_alarm_says_what_is_the_matter_and_what_to_do() {
        assertThat(alarms(Scene.atChair().at("10:04"))).isEmpty();
        assertThat(alarms(Scene.atChair().at("10:29"))).contains("MEDIUM LOW_LIFE 1a");
        var dead = Scene.atChair().at("10:34");
        assertThat(alarms(dead)).contains("HIGH PAST_LIFE 1a").doesNotContain("MEDIUM LOW_LIFE 1a");
        assertThat(view(dead).alarms().get(0).sentence())
                .isEqualTo("Bowl 1a is past its life since 10:34: stop applying it, bin it, begin a fresh one.");
        assertThat(alarms(Scene.begun().does(Scene.weigh("1a", 30_000, 30_000))))
                .containsExactly("HIGH OUTSIDE_DIRECTIONS 1a");
        assertThat(alarms(Scene.planned().at("09:57").ticks())).containsExactly("MEDIUM LATE 1a");
        assertThat(alarms(Scene.planned().at("10:05"))).containsExactly("LOW NOT_STARTED ");
        assertThat(alarms(Scene.begun().does(new CancelService(1, "left")))).containsExactly("MEDIUM CLIENT_GONE 1a");
    }

    private static List<String> alarms(Scene scene) {
        return view(scene).alarms().stream()
                .map(alarm -> alarm.priority() + " " + alarm.kind() + " " + alarm.bowl())
                .toList();
    }

    @Test
    void the_highest_alarm_stands_first_and_shows_who_has_seen_it() {
        var scene = Scene.atChair().at("10:36").ticks().does(new AcknowledgeAlarm("PAST_LIFE:1a"));
        assertThat(view(scene).alarms())
                .extracting(AlarmCard::priority)
                .isSortedAccordingTo(
                        (one, other) -> List.of("HIGH", "MEDIUM", "LOW").indexOf(one)
                                - List.of("HIGH", "MEDIUM", "LOW").indexOf(other));
        assertThat(view(scene).alarms().get(0).acknowledgedBy()).contains("ilka");
    }

    @Test
    void every_gram_is_accounted_for() {
        var scene = Scene.atChair().at("10:20").does(new BinBowl("1a", 7_000, OverMixCause.LEFT_OVER));
        var totals = view(scene).totals();
        assertThat(totals.mixedMilligrams()).isEqualTo(90_000);
        assertThat(totals.residueMilligrams()).isEqualTo(3_000);
        assertThat(totals.appliedMilligrams()).isEqualTo(80_000);
        assertThat(totals.overMixedByCause()).containsOnly(java.util.Map.entry("LEFT_OVER", 7_000));
        DoneBowl done = view(scene).done().get(0);
        assertThat(view(scene).done()).hasSize(1);
        assertThat(done.at()).isEqualTo(at("10:20"));
        assertThat(done.leftMilligrams()).isEqualTo(7_000);
        assertThat(done.cause()).isEqualTo("LEFT_OVER");
        assertThat(done.lightenerName()).isNotBlank();
        assertThat(done.leftCost()).isPositive();
    }

    @Test
    void a_bowl_used_up_leaves_nothing() {
        var totals = view(Scene.atChair().does(new FinishBowl("1a"))).totals();
        assertThat(totals.overMixedMilligrams()).isZero();
        assertThat(totals.appliedMilligrams()).isEqualTo(87_000);
        assertThat(totals.bowlsMixed()).isEqualTo(1);
    }

    @Test
    void actions_can_be_taken_back_for_ten_minutes() {
        assertThat(view(Scene.begun()).actions())
                .singleElement()
                .satisfies(action -> assertThat(action.sentence()).isEqualTo("began bowl 1a"));
        assertThat(view(Scene.begun().at("10:04:01")).actions()).isEmpty();
    }

    @Test
    void a_view_survives_its_wire_form_and_is_the_same_twice() {
        var view = view(Scene.atChair());
        assertThat(ContractJson.read(ContractJson.write(view), DayView.class)).isEqualTo(view);
        assertThat(ContractJson.write(view(Scene.atChair()))).isEqualTo(ContractJson.write(view));
        assertThat(view.choices().menu()).hasSize(2);
        assertThat(view.choices().lengths()).containsExactly("long", "medium");
        assertThat(Given.DAY).isEqualTo(view.salonId() + "/" + view.date());
    }

    /** Crown and sides are rinsed together, the roots for themselves. */
    @Test
    void the_latest_rinse_of_a_planned_zone_is_counted_from_the_first_touch_of_its_section() {
        var scene = Scene.planned();
        var plan = scene.day.plan().orElseThrow();
        var service = new PlannedService(
                1,
                1,
                at("10:00"),
                at("11:20"),
                0,
                List.of(
                        new PlannedZone("crown", at("10:00"), at("10:20"), at("10:38"), at("10:55"), at("10:55")),
                        new PlannedZone("sides", at("10:20"), at("10:40"), at("10:50"), at("11:00"), at("11:15")),
                        new PlannedZone("roots", at("10:40"), at("10:55"), at("11:05"), at("11:15"), at("11:25"))));
        scene.append(new DayEvent.PlanDrawn(plan.withServices(List.of(service))), "service", "");
        var zones = view(scene).services().get(0).zones();
        assertThat(zones).extracting(PlannedZone::rinseBy).containsExactly(at("10:55"), at("10:55"), at("11:25"));
        assertThat(zones).extracting(PlannedZone::rinseAt).containsExactly(at("10:55"), at("10:55"), at("11:15"));
        assertThat(zones).extracting(PlannedZone::checkAt).containsExactly(at("10:38"), at("10:50"), at("11:05"));
    }
}
