package stirtide.bar.text;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

class BowlTextTest {
    private static final int QUEUED = 3;

    /** Bowl 8z is live for service 8, whose zones begin 30 and 55 minutes from now; bowl 8a comes after it. */
    private static DayView day(int nextNeededInMinutes, int queued) {
        var plain = Samples.view(List.of(), List.of(Samples.live("8z", 1, "weighed", 3, true)), queued);
        var day = ContractJson.read(ContractJson.write(plain), ObjectNode.class);
        day.withArray("/live/0/zones").removeAll().add("back foils").add("crown foils");
        day.get("queue").forEach(card -> {
            var bowl = (ObjectNode) card.get("bowl");
            if (bowl.get("service").asInt() == 8)
                bowl.put("neededFrom", Samples.at(nextNeededInMinutes).toString());
        });
        return ContractJson.read(ContractJson.write(day), DayView.class);
    }

    private static List<String> zones(DayView day) {
        return BowlText.zones(day.live().get(0), day);
    }

    @Test
    void a_live_bowl_is_for_the_zones_that_begin_before_the_next_bowl_of_its_service_is_needed() {
        assertThat(zones(day(55, QUEUED))).containsExactly("back foils");
        assertThat(zones(day(56, QUEUED))).containsExactly("back foils", "crown foils");
    }

    @Test
    void without_a_next_bowl_of_its_service_it_is_for_all_zones_it_may_be_used_for() {
        assertThat(zones(day(55, 1))).containsExactly("back foils", "crown foils");
    }

    @Test
    void a_plan_that_gives_it_no_zone_takes_none_from_it() {
        assertThat(zones(day(30, QUEUED))).containsExactly("back foils", "crown foils");
    }

    @Test
    void one_bowl_is_no_bowls() {
        assertThat(CountText.of(1, "bowl")).isEqualTo("1 bowl");
        assertThat(CountText.of(0, "bowl")).isEqualTo("0 bowls");
    }
}
