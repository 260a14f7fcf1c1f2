package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.BeginBowl;
import stirtide.events.command.DayCommand.HandOverBowl;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.day.Booking;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.day.bowl.BowlWeighRulesTest;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.planning.search.Planner;

/**
 * Too much of one part, then too much of the correction: each is answered with the smallest correction, and the plan knows
 * what is really in the bowl as soon as it is weighed in. The scale may be 1.05 g off, see {@link BowlWeighRulesTest}.
 */
class TwoCorrectionsTest {
    /** Long dense hair: 97.5 g for crown and sides, 90 g planned for the first bowl, of which 87 g can be applied. */
    private final Scene scene = Scene.open(new Booking(
                    "one",
                    "foils",
                    1,
                    Given.at("10:00"),
                    "Q.Z.",
                    "long",
                    "dense",
                    Optional.empty(),
                    0,
                    0,
                    Optional.empty(),
                    Optional.empty()))
            .plans(Given.planned("1a", 1, "09:54", "10:00"))
            .at("09:54")
            .does(new BeginBowl("1a", "bo"))
            .at("09:56");

    /** Bowls the planner wants besides the one that is live, by what it knows now. */
    private long bowlsMore() {
        var question = PlanQuestions.of(scene.day).orElseThrow();
        var plan = Planner.draw(question, 5);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        return plan.bowls().size();
    }

    private int left() {
        return PlanQuestions.of(scene.day)
                .orElseThrow()
                .services()
                .get(0)
                .runs()
                .get(0)
                .live()
                .get(0)
                .leftMilligrams();
    }

    private String refusal() {
        return scene.refused(new HandOverBowl("1a"), "OUTSIDE_DIRECTIONS").sentence();
    }

    @Test
    void both_over_pours_are_answered_with_the_smallest_correction() {
        // at most 2.5 x (30 - 1.05) - 1.05 = 71.325 g of developer; more lightener is another pour that errs by 1.05 g,
        // so for
        // 72 g it takes (72 + 1.05) / 2.5 + 2 x 1.05 = 31.32 g
        scene.does(Scene.weigh("1a", 30_000, 72_000));
        assertThat(refusal()).contains("maybe too much developer", "Correct: add 1.4 g Cloudlift");
        // at least 1.5 x (46.5 + 1.05) + 1.05 = 72.375 g of developer
        scene.does(Scene.weigh("1a", 46_500, 72_000));
        assertThat(refusal())
                .contains("maybe too little developer", "Correct: add 0.4 g Developer 9, no tare in between")
                .contains("until the scale shows 72.4 g");
        scene.does(Scene.weigh("1a", 46_500, 72_300));
        assertThat(refusal()).contains("until the scale shows 72.4 g");
        scene.does(Scene.weigh("1a", 46_500, 72_400)).does(new StartService(1)).does(new HandOverBowl("1a"));
    }

    @Test
    void the_plan_learns_of_the_real_size_at_once() {
        scene.does(Scene.weigh("1a", 30_000, 60_000));
        assertThat(left()).isEqualTo(87_000);
        assertThat(bowlsMore()).isEqualTo(1);
        scene.does(Scene.weigh("1a", 46_500, 72_400));
        assertThat(left()).isEqualTo(115_900);
        assertThat(bowlsMore()).isZero();
        assertThat(Evolver.replay(scene.log)).isEqualTo(scene.day);
    }

    @Test
    void a_correction_that_does_not_fit_the_bowl_any_more_is_the_end_of_it() {
        // 47.5 g of lightener want 73.875 g of developer, and 121.375 g are more than the bowl may hold
        scene.does(Scene.weigh("1a", 47_500, 72_000));
        assertThat(refusal()).contains("bin it and start again", "119.5 g lost");
    }
}
