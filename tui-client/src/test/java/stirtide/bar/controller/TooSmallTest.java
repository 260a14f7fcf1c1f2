package stirtide.bar.controller;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;
import stirtide.bar.keys.Key;
import stirtide.events.command.DayCommand.BeginBowl;

class TooSmallTest {
    private final ControllerFixture bench = ControllerFixture.with(Samples.busy());

    @Test
    void nobody_begins_a_bowl_that_is_not_on_the_screen() {
        bench.controller.tooSmall(true);
        bench.type("m");
        assertThat(bench.sent).isEmpty();
        bench.controller.tooSmall(false);
        bench.type("m");
        assertThat(bench.sent).containsExactly(new BeginBowl("7a", "tamsin"));
    }

    @Test
    void an_open_entry_is_kept_and_takes_no_keys_unseen() {
        bench.type("m34");
        bench.controller.tooSmall(true);
        bench.type("9").press(Key.Kind.ESCAPE);
        bench.controller.tooSmall(false);
        assertThat(bench.title()).startsWith("WEIGH-IN");
        assertThat(bench.picture()).contains("[34     ]").doesNotContain("[349");
    }

    @Test
    void an_end_of_input_still_ends_it() {
        bench.controller.tooSmall(true);
        bench.press(Key.Kind.GONE);
        assertThat(bench.controller.isLeaving()).isTrue();
    }
}
