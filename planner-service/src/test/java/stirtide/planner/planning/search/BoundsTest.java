package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.planning.search.SmallDay.zone;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.plan.BowlReason;
import stirtide.events.plan.Plan;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.check.ProofCheck;
import stirtide.planner.planning.bounds.BoundedPlanner;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;
import stirtide.planner.planning.stagger.Certificate;
import stirtide.planner.planning.stagger.Claim;
import stirtide.planner.planning.stagger.MinutePrices;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/** What is said about the best plan there is. */
class BoundsTest {
    private static final int ROUNDS = 30;

    private static Plan plan(SmallDay day) {
        return BoundedPlanner.draw(day.question(), ROUNDS);
    }

    /** Bounds hold for all plans in which assistants mix: so one found with more or less work must keep each of them. */
    @ParameterizedTest
    @ValueSource(ints = {0, 40, 70, 90})
    void no_plan_is_better_than_what_is_proved_with_another(int load) {
        for (int seed = 0; seed < 2; seed++) {
            PlanQuestion question = RandomQuestion.loaded(seed, 12, load);
            List<Plan> plans = List.of(
                    BoundedPlanner.draw(question, 0),
                    BoundedPlanner.draw(question, ROUNDS),
                    BoundedPlanner.draw(question, 90));
            for (Plan proved : plans) {
                assertThat(PlanChecker.check(question, proved)).isEmpty();
                for (Plan other : plans) notBeaten(proved, other, "load " + load + ", seed " + seed);
            }
        }
    }

    private static void notBeaten(Plan proved, Plan other, String where) {
        if (other.bowls().stream().anyMatch(bowl -> bowl.personId().isEmpty())) return;
        int wait = other.totals().waitMinutes();
        proved.totals()
                .waitBound()
                .ifPresent(bound -> assertThat(wait).as(where).isGreaterThanOrEqualTo(bound));
        if (wait <= proved.totals().waitMinutes())
            proved.totals()
                    .bowlBound()
                    .ifPresent(
                            bound -> assertThat(other.bowls().size()).as(where).isGreaterThanOrEqualTo(bound));
        if (wait <= proved.totals().waitMinutes())
            for (BowlReason reason : proved.totals().bowlReasons())
                assertThat(other.bowls().stream().filter(reason::concerns))
                        .as("%s: %s", where, reason)
                        .hasSizeGreaterThanOrEqualTo(reason.leastBowls());
    }

    /** On days that are lived through, with bowls under way and things gone wrong. */
    @Test
    void planner_and_checker_derive_the_same_problem() {
        int runs = 0;
        for (int seed = 0; seed < 10; seed++) {
            LivedDay day = new LivedDay(seed, RandomQuestion.of(seed, 12));
            Plan plan = Planner.draw(day.question(), 0);
            for (int step = 0; step < 8; step++) {
                RelaxedProblem drawn = RelaxedProblem.of(day.question(), plan, 7);
                ProofCheck derived = new ProofCheck(day.question(), plan, 7);
                assertThat(derived.unavoidableWait())
                        .as("seed %d, step %d", seed, step)
                        .isEqualTo(drawn.unavoidableWait());
                assertThat(derived.services())
                        .as("seed %d, step %d", seed, step)
                        .isEqualTo(drawn.services());
                assertSame(derived.problem(), drawn.problem(), "seed %d, step %d".formatted(seed, step));
                runs += drawn.problem().runs().size();
                day.pass(plan, 25);
                plan = Planner.draw(day.question(), 0);
            }
        }
        assertThat(runs).isGreaterThan(300);
    }

    @Test
    void where_everybody_starts_at_one_hour_the_waiting_is_proved_to_the_minute() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.now = 600;
        for (int i = 0; i < 3; i++) day.service(600, zone("crown", 10, 20));
        Plan plan = plan(day);
        // Mixed one after the other, 5 minutes each and 2 to the chair: at the chair at 607, 612 and 617.
        assertThat(plan.totals().waitMinutes()).isEqualTo(36);
        assertThat(plan.totals().waitBound()).contains(36);
        assertThat(plan.totals().proof()).contains("Proven: the clients cannot wait less than 36 minutes in all.");
    }

    @Test
    void a_late_bowl_makes_the_rest_of_its_service_late_only_once() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.now = 600;
        day.service(600, zone("crown", 60, 60));
        Plan plan = plan(day);
        assertThat(plan.bowls()).hasSize(2);
        assertThat(plan.totals().waitMinutes()).isEqualTo(7);
        assertThat(plan.totals().waitBound()).contains(7);
    }

    @Test
    void a_bowl_on_its_way_is_waited_for_whatever_is_planned() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.now = 600;
        day.service(600, List.of(new LiveSupply("1a", 604, 640, 60_000)), zone("crown", 20, 20));
        Plan plan = plan(day);
        assertThat(plan.totals().waitMinutes()).isEqualTo(4);
        assertThat(plan.totals().waitBound()).contains(4);
        assertThat(plan.totals().bowlBound()).contains(0);
    }

    @Test
    void nothing_is_claimed_where_the_stylist_mixes() {
        Plan plan = plan(new SmallDay().scales(1).service(600, zone("crown", 20, 20)));
        assertThat(plan.totals().waitBound()).isEmpty();
        assertThat(plan.totals().bowlBound()).isEmpty();
        assertThat(plan.totals().proof()).isEmpty();
    }

    @Test
    void the_checker_confirms_neither_a_bowl_nor_a_minute_too_many() {
        SmallDay day = new SmallDay().people("ida").scales(1).service(600, zone("crown", 50, 50));
        PlanQuestion question = day.question();
        ProofCheck check = new ProofCheck(question, Planner.draw(question, ROUNDS), 0);
        assertThat(check.leastBowls(2, bowls(2))).isTrue();
        assertThat(check.leastBowls(3, bowls(3))).isFalse();
        assertThat(check.leastBowls(3, bowls(2))).isFalse();
        ProofCheck late = new ProofCheck(question, Planner.draw(question, ROUNDS), 30);
        assertThat(late.leastWait(100, MinutePrices.of(560, new int[60]))).isZero();
        assertThat(late.leastWait(100, MinutePrices.of(580, 50, 50, 50, 50, 50, 50, 50)))
                .isZero();
        assertThat(late.leastWait(0, MinutePrices.of(580, 1))).isZero();
    }

    private static Certificate bowls(int least) {
        Certificate.Priced free = new Certificate.Priced(0, 1, 0, MinutePrices.of(0), null);
        return new Certificate(new Claim(Claim.ANY, least - 1, Claim.ANY), free);
    }

    private static void assertSame(StaggerProblem own, StaggerProblem other, String where) {
        assertThat(own.assistants()).as(where).isEqualTo(other.assistants());
        assertThat(own.runs()).as(where).hasSameSizeAs(other.runs());
        for (int r = 0; r < own.runs().size(); r++) {
            StaggerRun a = own.runs().get(r);
            StaggerRun b = other.runs().get(r);
            assertThat(a.useMinutes()).as(where).isEqualTo(b.useMinutes());
            assertThat(a.mixMinutes()).as(where).isEqualTo(b.mixMinutes());
            assertThat(a.workingLifeMinutes()).as(where).isEqualTo(b.workingLifeMinutes());
            for (int from = 0; from < a.minutes(); from++)
                for (int to = from + 1; to <= a.minutes(); to++)
                    assertThat(a.bowls().cost(from, to))
                            .as(where)
                            .isEqualTo(b.bowls().cost(from, to));
        }
    }
}
