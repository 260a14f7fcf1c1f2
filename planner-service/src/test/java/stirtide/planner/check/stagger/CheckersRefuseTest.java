package stirtide.planner.check.stagger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stirtide.planner.planning.stagger.Assistant;
import stirtide.planner.planning.stagger.Certificate;
import stirtide.planner.planning.stagger.Claim;
import stirtide.planner.planning.stagger.DutyWindow;
import stirtide.planner.planning.stagger.MinutePrices;
import stirtide.planner.planning.stagger.PlainBowls;
import stirtide.planner.planning.stagger.StaggerEngine;
import stirtide.planner.planning.stagger.StaggerMix;
import stirtide.planner.planning.stagger.StaggerPlan;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

class CheckersRefuseTest {
    /** Two clients who want their only bowl at the same minute, one pair of hands: one bowl is mixed earlier. */
    private static final StaggerProblem TWINS = new StaggerProblem(
            1, 60, List.of(run(0), run(1)), List.of(new Assistant(List.of(new DutyWindow(0, 200)))), 1);

    private static StaggerRun run(int id) {
        return new StaggerRun(
                id, 100, 110, 3, 30, new PlainBowls(500, 10, List.of(0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100)));
    }

    private static StaggerPlan plan() {
        return new StaggerEngine(TWINS, new SplittableRandom(1)).improve(rounds -> rounds < 20);
    }

    private static StaggerPlan with(StaggerPlan plan, int place, StaggerMix mix) {
        List<StaggerMix> mixes = new ArrayList<>(plan.mixes());
        mixes.set(place, mix);
        return new StaggerPlan(
                StaggerPlanCheck.score(TWINS, mixes), mixes, plan.bound(), plan.provenLevels(), plan.certificates(), 0);
    }

    @Test
    void the_honest_plan_passes_and_is_proven_best() {
        StaggerPlan plan = plan();

        assertThat(StaggerPlanCheck.faults(TWINS, plan)).isEmpty();
        assertThat(plan.score().ageMinutes()).isEqualTo(4 + 7);
        assertThat(CertificateCheck.provenLevels(TWINS, plan)).isEqualTo(3);
    }

    @Test
    void two_mixes_at_once_by_one_person_are_a_fault() {
        StaggerPlan plan = plan();
        StaggerMix first = plan.mixes().get(0);
        StaggerMix second = plan.mixes().get(1);
        StaggerMix moved = new StaggerMix(
                second.runIndex(), second.fromMinute(), second.toMinute(), first.mixStartMinute(), second.assistant());

        assertThat(StaggerPlanCheck.faults(TWINS, with(plan, 1, moved)))
                .anyMatch(fault -> fault.contains("mixes twice"));
    }

    @Test
    void a_bowl_past_its_life_is_a_fault() {
        StaggerPlan plan = plan();
        StaggerMix mix = plan.mixes().get(0);
        StaggerMix stale = new StaggerMix(mix.runIndex(), mix.fromMinute(), mix.toMinute(), 79, mix.assistant());

        assertThat(StaggerPlanCheck.faults(TWINS, with(plan, 0, stale)))
                .contains("run 0: bowl used up to minute 31 of its life");
    }

    @Test
    void a_gap_in_a_run_is_a_fault() {
        StaggerPlan plan = plan();
        StaggerMix mix = plan.mixes().get(0);
        StaggerMix brief = new StaggerMix(mix.runIndex(), mix.fromMinute(), 105, mix.mixStartMinute(), mix.assistant());

        assertThat(StaggerPlanCheck.faults(TWINS, with(plan, 0, brief))).contains("run 0: fed only up to minute 105");
    }

    @Test
    void a_wrong_statement_of_the_score_is_a_fault() {
        StaggerPlan plan = plan();
        StaggerPlan boast = new StaggerPlan(
                new stirtide.planner.planning.stagger.StaggerScore(0, 0, 2, 8),
                plan.mixes(),
                plan.bound(),
                3,
                plan.certificates(),
                0);

        assertThat(StaggerPlanCheck.faults(TWINS, boast)).anyMatch(fault -> fault.contains("but is"));
    }

    @Test
    void prices_that_do_not_reach_the_claim_refute_nothing() {
        Certificate empty =
                new Certificate(new Claim(0, 2, 10), new Certificate.Priced(0, 0, 1, MinutePrices.of(0), null));

        assertThat(CertificateCheck.refutes(TWINS, empty)).isFalse();
    }

    @Test
    void negative_weights_refute_nothing() {
        Certificate negative = new Certificate(
                new Claim(0, 2, 10), new Certificate.Priced(0, -1_000_000, 1, MinutePrices.of(0), null));

        assertThat(CertificateCheck.refutes(TWINS, negative)).isFalse();
    }

    @Test
    void a_claim_that_a_plan_keeps_cannot_be_refuted_by_its_neighbor_s_proof() {
        StaggerPlan plan = plan();
        Certificate honest = plan.certificates().get(plan.certificates().size() - 1);
        Certificate stretched = new Certificate(new Claim(0, 2, 11), honest.root());

        assertThat(CertificateCheck.refutes(TWINS, honest)).isTrue();
        assertThat(CertificateCheck.refutes(TWINS, stretched)).isFalse();
    }
}
