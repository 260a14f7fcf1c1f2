package stirtide.bar.controller;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;
import stirtide.bar.keys.Key;
import stirtide.bar.link.LinkEvent;

/** The plan before a move and after it, side by side. */
class CompareTest {
    private final ControllerFixture bench = ControllerFixture.with(Samples.busy());

    @Test
    void nothing_changed_is_said_so() {
        bench.type("2d");
        assertThat(bench.title()).isEqualTo("PLAN BEFORE AND NOW");
        assertThat(bench.picture())
                .contains("The plan as it was at 11:40, and now:")
                .containsPattern("Clients whose times changed:[ │]+\n.*none")
                .containsPattern("Bowls that changed:[ │]+\n.*none");
    }

    @Test
    void clients_and_bowls_that_changed_are_told_with_both_figures() {
        bench.hear(new LinkEvent.Seen(Samples.replanned()));
        bench.type("2d");
        assertThat(bench.picture())
                .containsPattern("7 214 +start 11:49 -> 11:59 +end 13:24 -> 13:34")
                .containsPattern("7a +mix 11:44 -> 11:54 +102.0 g +Tamsin")
                .containsPattern("8a +not planned any more");
    }

    @Test
    void that_a_better_plan_is_looked_for_is_said_quietly() {
        ControllerFixture calm = ControllerFixture.with(Samples.calm());
        assertThat(calm.picture()).contains("no alarms").doesNotContain("better plan");
        calm.hear(new LinkEvent.Seen(Samples.improving(Samples.calm())));
        assertThat(calm.picture()).containsPattern("no alarms.*looking for a better plan");
        calm.type("2d");
        assertThat(calm.picture()).contains("a better plan is still being looked for");
    }

    @Test
    void a_mark_is_what_is_compared_with_from_then_on() {
        bench.hear(new LinkEvent.Seen(Samples.replanned()));
        bench.type("2dm");
        assertThat(bench.picture()).containsPattern("Clients whose times changed:[ │]+\n.*none");
        bench.press(Key.Kind.ESCAPE);
        assertThat(bench.panel()).isEmpty();
    }
}
