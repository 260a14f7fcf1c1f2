package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.BinBowl;
import stirtide.events.command.DayCommand.FinishBowl;
import stirtide.events.command.DayCommand.FinishZone;
import stirtide.events.command.DayCommand.HandOverBowl;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.day.OverMixCause;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;
import stirtide.planner.planning.search.Planner;

/** What allowances add for safety rides on the last bowl of a run and follows what was really used. */
class LastBowlTest {
    /** Earlier visits used 90 to 110 g on the crown and half as much on the sides: more than one bowl holds. */
    private static Scene opened() {
        var uses = new ArrayList<PastUse>();
        int[] crowns = {90_000, 110_000, 100_000, 95_000, 105_000, 100_000};
        for (int i = 0; i < crowns.length; i++) {
            var on = Given.DATE.minusDays(7L * (i + 1));
            uses.add(new PastUse(on, "foils", "crown", "", 40_000, 1000, 1000, crowns[i], false));
            uses.add(new PastUse(on, "foils", "sides", "", 20_000, 1000, 1000, crowns[i] / 2, false));
        }
        return new Scene()
                .does(new OpenDay(
                        Given.setup().with(new UseHistory(uses, List.of())),
                        List.of(Given.booking("one", "foils", 1, "10:00"))));
    }

    private static Scene atChair() {
        return opened().plans(Given.planned("1a", 1, "09:54", "10:00"))
                .at("09:54")
                .does(new stirtide.events.command.DayCommand.BeginBowl("1a", "bo"))
                .at("09:58")
                .does(Scene.weigh("1a", 31_000, 62_000))
                .at("10:00")
                .does(new StartService(1))
                .does(new HandOverBowl("1a"));
    }

    private static RunTask run(Scene scene) {
        return PlanQuestions.of(scene.day)
                .orElseThrow()
                .services()
                .get(0)
                .runs()
                .get(0);
    }

    private static int needs(RunTask run) {
        return run.zones().stream().mapToInt(ZoneTask::needMilligrams).sum();
    }

    @Test
    void only_the_last_bowl_carries_the_reserve() {
        var question = PlanQuestions.of(opened().day).orElseThrow();
        var run = question.services().get(0).runs().get(0);
        assertThat(needs(run)).isBetween(120_000, 150_000);
        assertThat(run.reserveMilligrams()).isBetween(8_000, 58_500);
        var plan = Planner.draw(question, 5);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        var bowls = plan.bowls();
        assertThat(bowls).hasSizeGreaterThan(1);
        assertThat(bowls.stream().mapToInt(PlannedBowl::neededMilligrams).sum())
                .isEqualTo(needs(run) + run.reserveMilligrams());
        // without the reserve the bowls before the last would feed as much: it is in none of them
        var without = Planner.draw(withoutReserve(question), 5);
        var last = bowls.get(bowls.size() - 1);
        assertThat(last.neededMilligrams()).isGreaterThan(run.reserveMilligrams());
        assertThat(without.bowls().stream()
                        .mapToInt(PlannedBowl::neededMilligrams)
                        .sum())
                .isEqualTo(needs(run));
    }

    private static PlanQuestion withoutReserve(PlanQuestion question) {
        var task = question.services().get(0);
        var run = task.runs().get(0);
        var bare = new RunTask(
                run.run(),
                run.lightenerId(),
                run.strengthHundredths(),
                run.ratioThousandths(),
                run.zones(),
                run.live(),
                0);
        return question.withServices(List.of(new PlanQuestion.ServiceTask(
                task.service(),
                task.chair(),
                task.stylistId(),
                task.started(),
                task.startMinute(),
                task.bowlsUsed(),
                List.of(bare),
                task.processing())));
    }

    @Test
    void a_bowl_used_up_early_makes_the_rest_larger_at_once() {
        var scene = atChair();
        var before = run(scene);
        // 90 g are on hair after 8 of the zone's 20 minutes, in which 40 g were expected
        var after = run(scene.at("10:08").does(new FinishBowl("1a")));
        assertThat(after.zones().get(0).applyMinutes()).isEqualTo(12);
        assertThat(needs(after)).isGreaterThan((needs(before) - 40_000) * 11 / 10);
        assertThat(after.reserveMilligrams()).isPositive();
        assertThat(Evolver.replay(scene.log)).isEqualTo(scene.day);
    }

    @Test
    void a_zone_that_took_little_makes_the_rest_smaller_and_its_reserve_too() {
        var before = run(atChair());
        var scene = atChair()
                .at("10:18")
                .does(new FinishZone(1, "crown"))
                .does(new BinBowl("1a", 30_000, OverMixCause.LEFT_OVER));
        // 60 g on hair where 100 g were expected
        var after = run(scene);
        assertThat(after.zones()).hasSize(1);
        assertThat(needs(after)).isBetween(28_000, 42_000);
        assertThat(after.reserveMilligrams()).isBetween(1, before.reserveMilligrams() * 2 / 3);
    }

    @Test
    void nothing_real_seen_leaves_the_plan_as_it_was() {
        var scene = atChair();
        var before = run(scene);
        var after = run(scene.at("10:05").does(new stirtide.events.command.DayCommand.ChangeShift("mika", List.of())));
        assertThat(after.reserveMilligrams()).isEqualTo(before.reserveMilligrams());
        assertThat(needs(after)).isEqualTo(needs(before) - before.zones().get(0).needMilligrams() / 4);
    }
}
