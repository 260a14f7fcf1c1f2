package stirtide.planner.views;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;

/** The usual cautions stand with the first bowl of every product; docs/safety.md gives their sources. */
class CautionsTest {
    private static final List<String> SHOWN =
            Cautions.of(Scene.open(Given.booking("one", "foils", 1, "10:00")).day, "any");

    /** 15 minutes: ANSI/ISEA Z358.1, from memory. The others are common practice, no source. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "for 15 minutes",
                "burns or stings",
                "foil that swells or gets hot",
                "No heat unless the leaflet allows it",
                "Henna",
                "metal salts",
                "Trouble with breathing"
            })
    void a_caution_of_the_trade_is_shown(String words) {
        assertThat(SHOWN).anyMatch(caution -> caution.contains(words));
    }

    @Test
    void the_leaflet_comes_before_the_plan() {
        assertThat(SHOWN.get(0)).startsWith("The maker's leaflet");
    }
}
