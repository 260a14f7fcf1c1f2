package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.planning.search.Altered.at;
import static stirtide.planner.planning.search.Altered.with;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBatch;
import stirtide.planner.check.PlanChecker;

/** Pairs of bowls in days by chance, and pairs that are broken on purpose, one rule at a time. */
class BatchDaysTest {
    private static final SmallDay DAY = new SmallDay()
            .people("ida", "tom")
            .scales(2)
            .service(600, SmallDay.zone("crown", 20, 30))
            .service(605, SmallDay.zone("sides", 20, 21))
            .service(720, SmallDay.zone("ends", 20, 21));
    private static final PlanQuestion QUESTION = with(DAY.question(), "oneMixTwoBowls", true);
    private static final Plan VALID = Planner.draw(QUESTION, 5);
    private static final PlannedBatch PAIR = VALID.batches().get(0);

    @Test
    void no_pair_of_some_random_days_breaks_a_rule_or_changes_the_plan() {
        int pairs = 0;
        for (int seed = 0; seed < 25; seed++) {
            PlanQuestion without = RandomQuestion.of(seed, 5 + seed * 37 % 76);
            PlanQuestion question = with(without, "oneMixTwoBowls", true);
            Plan plan = Planner.draw(question, 0);
            assertThat(PlanChecker.check(question, plan)).as("seed %d", seed).isEmpty();
            assertThat(plan.withBatches(List.of())).as("seed %d", seed).isEqualTo(Planner.draw(without, 0));
            pairs += plan.batches().size();
        }
        assertThat(pairs).isGreaterThan(10);
    }

    @Test
    void pairs_hold_and_are_kept_while_days_go_wrong() {
        int kept = 0;
        for (int seed = 0; seed < 8; seed++) {
            LivedDay day = new LivedDay(seed, with(RandomQuestion.of(seed, 40), "oneMixTwoBowls", true));
            Plan plan = Planner.draw(day.question(), 0);
            for (int step = 0; step < 8; step++) {
                List<List<String>> before =
                        plan.batches().stream().map(PlannedBatch::bowlIds).toList();
                day.pass(plan, 10);
                plan = Planner.draw(day.question(), 0);
                assertThat(PlanChecker.check(day.question(), plan))
                        .as("seed %d, step %d", seed, step)
                        .isEmpty();
                kept += (int) plan.batches().stream()
                        .filter(batch -> before.contains(batch.bowlIds()))
                        .count();
            }
        }
        assertThat(kept).isPositive();
    }

    private static Plan pair(String component, Object value) {
        return VALID.withBatches(List.of(with(PAIR, component, value)));
    }

    private static Plan moved(int minutes) {
        return VALID.withBatches(List.of(with(
                with(with(PAIR, "mixStart", later(PAIR.mixStart(), minutes)), "mixEnd", later(PAIR.mixEnd(), minutes)),
                "lifeEnds",
                later(PAIR.lifeEnds(), minutes))));
    }

    private static Instant later(Instant instant, int minutes) {
        return instant.plusSeconds(60L * minutes);
    }

    private static Plan share(int place, String component, Object value) {
        return pair("shares", at(PAIR.shares(), place, with(PAIR.shares().get(place), component, value)));
    }

    private static Plan formula(String component, Object value) {
        return pair("formula", with(PAIR.formula(), component, value));
    }

    static Stream<Arguments> brokenPairs() {
        int lightener = PAIR.formula().lightenerMilligrams();
        return Stream.of(
                Arguments.of("in two pairs", VALID.withBatches(List.of(PAIR, PAIR))),
                Arguments.of("at one time", VALID.withBatches(List.of(PAIR, PAIR, with(PAIR, "savedMilligrams", 1)))),
                Arguments.of("not in the plan", share(0, "bowl", "9z")),
                Arguments.of("first uses are too far apart", share(1, "bowl", "3a")),
                Arguments.of("in the past", moved(-200)),
                Arguments.of("mixed, divided and carried", moved(1)),
                Arguments.of("beyond its working life", moved(-30)),
                Arguments.of("take the wrong time", pair("mixEnd", later(PAIR.mixEnd(), -1))),
                Arguments.of("its working life is wrong", pair("lifeEnds", later(PAIR.lifeEnds(), 1))),
                Arguments.of("not free or not on duty", pair("personId", "nobody")),
                Arguments.of("no scale", pair("scaleId", "none")),
                Arguments.of("no bowl size", share(0, "bowlSizeId", "none")),
                Arguments.of("less than need and residue", share(1, "milligrams", 100)),
                Arguments.of("are not the mix", share(1, "milligrams", 23_100)),
                Arguments.of("cannot show the second share", share(1, "milligrams", 23_001)),
                Arguments.of("two mixes", pair("savedMilligrams", -1)),
                Arguments.of("other minutes than told", pair("savedMinutes", 5)),
                Arguments.of("more than bowl 1a holds", formula("lightenerMilligrams", 200_000)),
                Arguments.of("the ratio may leave", formula("lightenerMilligrams", lightener + 9_000)),
                Arguments.of("wrong lightener", formula("lightenerId", "other")));
    }

    @ParameterizedTest(name = "{index}: {0}")
    @MethodSource("brokenPairs")
    void a_broken_rule_of_a_pair_is_found(String words, Plan broken) {
        assertThat(PlanChecker.check(QUESTION, VALID)).isEmpty();
        assertThat(PlanChecker.check(QUESTION, broken))
                .anySatisfy(found -> assertThat(found).contains(words));
    }

    @Test
    void a_pair_in_a_salon_that_wants_none_and_for_other_clients_is_found() {
        assertThat(PlanChecker.check(DAY.question(), VALID)).containsExactly("the salon wants no mixes for two bowls");
        var second = QUESTION.services().get(1);
        var other = with(second.runs().get(0), "ratioThousandths", 1900);
        var asked = with(QUESTION, "services", at(QUESTION.services(), 1, with(second, "runs", List.of(other))));
        assertThat(PlanChecker.check(asked, VALID))
                .anySatisfy(found -> assertThat(found).contains("different mixes"));
    }
}
