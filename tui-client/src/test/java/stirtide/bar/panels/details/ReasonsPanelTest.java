package stirtide.bar.panels.details;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;
import stirtide.bar.model.UiState;
import stirtide.events.json.ContractJson;
import stirtide.events.plan.BowlReason;
import stirtide.events.plan.Plan.PlanTotals;
import stirtide.events.view.DayView;

/** What is proved about the plan stands in the panel of reasons, and what concerns a bowl in that of the bowl. */
class ReasonsPanelTest {
    private static final String FORCED = "Service 7, roots, takes 2 bowls where 1 would do: Ida is at another bowl.";

    private static UiState proved() {
        BowlReason reason = new BowlReason(
                "NOBODY_FREE", Samples.NOW, Samples.NOW.plusSeconds(480), List.of(7), List.of(), 2, 5, 0, FORCED);
        PlanTotals totals = new PlanTotals(
                0,
                2,
                90_000,
                0,
                14,
                Optional.of(0),
                Optional.of(2),
                Optional.empty(),
                Optional.empty(),
                List.of("Proven: it takes 2 bowls to serve all without a wait."),
                List.of(reason));
        ObjectNode day = ContractJson.read(ContractJson.write(Samples.busy()), ObjectNode.class);
        day.set("planTotals", ContractJson.read(ContractJson.write(totals), ObjectNode.class));
        return Samples.scene(ContractJson.read(ContractJson.write(day), DayView.class));
    }

    @Test
    void forced_bowls_follow_on_what_is_proved() {
        assertThat(ReasonsPanel.lines(proved()))
                .containsSubsequence(
                        "How good the plan is:",
                        "Proven: it takes 2 bowls to serve all without a wait.",
                        "Why not fewer bowls:",
                        FORCED);
        assertThat(ReasonsPanel.lines(Samples.scene(Samples.busy()))).doesNotContain("Why not fewer bowls:");
    }

    @Test
    void the_panel_of_a_bowl_says_what_forces_it() {
        assertThat(BowlPanel.lines("7a", proved())).containsSubsequence("Why:", FORCED);
        assertThat(BowlPanel.lines("8a", proved())).doesNotContain(FORCED);
    }
}
