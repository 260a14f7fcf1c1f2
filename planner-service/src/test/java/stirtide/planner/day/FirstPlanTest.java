package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.CancelService;
import stirtide.events.command.DayCommand.CloseDay;
import stirtide.events.day.DayEvent.PlanDrawn;
import stirtide.events.day.DayEvent.PlanKept;
import stirtide.events.day.StoredEvent;
import stirtide.events.plan.Plan;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.planning.search.PlanQuestion;

/** A day whose plan on show is a first one: which question the better one answers, and until when it is wanted. */
class FirstPlanTest {
    private final Scene scene = Scene.open(Given.booking("one", "full", 1, "10:00"));
    private final PlanQuestion asked = PlanQuestions.of(scene.day).orElseThrow();

    private Plan shown() {
        return scene.day.plan().orElseThrow();
    }

    private void draw(Plan plan) {
        scene.append(new PlanDrawn(plan), StoredEvent.SERVICE, "");
    }

    private void drawFirst() {
        draw(Given.plan(scene.day.revision(), scene.day.time(), Given.planned("1a", 1, "09:54", "10:00"))
                .first(200));
    }

    private PlanKept kept() {
        return new PlanKept(shown().basedOnRevision(), 200, Optional.of(0), Optional.of(1), List.of("Proven."));
    }

    @Test
    void the_better_plan_answers_the_question_of_the_first() {
        drawFirst();
        assertThat(scene.day.betterPlanSought()).isTrue();
        assertThat(scene.day.planSettled()).isTrue();
        assertThat(PlanQuestions.toImprove(scene.day)).contains(asked);
    }

    @Test
    void what_does_not_matter_to_a_plan_leaves_it_wanted() {
        drawFirst();
        scene.at("09:54").ticks();
        assertThat(scene.day.time()).isEqualTo(Given.at("09:54"));
        assertThat(scene.day.betterPlanSought()).isTrue();
        assertThat(PlanQuestions.toImprove(scene.day)).contains(asked);
    }

    @Test
    void what_matters_to_a_plan_ends_it() {
        drawFirst();
        scene.does(new CancelService(1, ""));
        assertThat(scene.day.betterPlanSought()).isFalse();
        assertThat(PlanQuestions.toImprove(scene.day)).isEmpty();
    }

    @Test
    void a_better_plan_takes_the_place_of_the_first() {
        drawFirst();
        Plan better = Given.plan(shown().basedOnRevision(), shown().asOf(), Given.planned("1a", 1, "09:53", "10:00"));
        draw(better);
        assertThat(shown()).isEqualTo(better);
        assertThat(scene.day.betterPlanSought()).isFalse();
    }

    @Test
    void a_first_plan_that_is_kept_gets_what_was_proved_of_it() {
        drawFirst();
        Plan first = shown();
        var time = scene.day.time();
        scene.at("09:00").append(kept(), StoredEvent.SERVICE, "");
        assertThat(shown().sameWork(first)).isTrue();
        assertThat(shown().rounds()).isEqualTo(200);
        assertThat(shown().totals().bowlBound()).contains(1);
        assertThat(shown().totals().proof()).containsExactly("Proven.");
        assertThat(scene.day.betterPlanSought()).isFalse();
        assertThat(scene.day.time()).as("plans do not move the day on").isEqualTo(time);
    }

    @Test
    void what_was_proved_of_another_plan_changes_nothing() {
        drawFirst();
        PlanKept late = kept();
        scene.does(new CancelService(1, ""));
        draw(Given.plan(scene.day.revision(), scene.day.time()));
        Plan newest = shown();
        scene.append(late, StoredEvent.SERVICE, "");
        assertThat(shown()).isEqualTo(newest);
    }

    @Test
    void on_a_closed_day_no_better_plan_is_looked_for() {
        drawFirst();
        scene.does(new CancelService(1, ""));
        drawFirst();
        scene.does(new CloseDay());
        assertThat(scene.day.betterPlanSought()).isFalse();
    }
}
