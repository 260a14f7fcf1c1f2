package stirtide.planner.allowance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.setup.UseHistory.PastUse;

/** How allowances learn. Invented visits. */
class AllowancesTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 5, 14);
    private static final AllowanceSettings USUAL = AllowanceSettings.usual();

    private static ZoneAsked asked(String client) {
        return new ZoneAsked("crown foils", TODAY, client, 50_000, 1000, 1000, Optional.empty(), Optional.empty());
    }

    private static PastUse used(int daysAgo, String client, int grams) {
        return new PastUse(TODAY.minusDays(daysAgo), "menu", "zone", client, 50_000, 1000, 1000, grams * 1000, false);
    }

    private static List<PastUse> history(int... grams) {
        List<PastUse> history = new ArrayList<>();
        for (int i = 0; i < grams.length; i++) history.add(used(10 + i, "c" + i, grams[i]));
        return history;
    }

    @Test
    void without_visits_the_menu_speaks_and_says_so() {
        Allowance allowance = Allowances.of(asked("kv"), List.of(), USUAL);
        assertThat(allowance.medianMilligrams()).isEqualTo(50_000);
        assertThat(allowance.plannedMilligrams()).isGreaterThan(55_000).isLessThan(75_000);
        assertThat(allowance.sentence())
                .contains("no earlier crown foils to learn from, the menu says 50 g")
                .endsWith("enough 4 times in 5");
    }

    @Test
    void one_line_names_visits_range_and_client() {
        List<PastUse> history = new ArrayList<>(history(41, 62, 50, 48, 55, 53, 47));
        history.add(used(40, "kv", 58));
        Allowance allowance = Allowances.of(asked("kv"), history, USUAL);
        assertThat(allowance.visits()).isEqualTo(8);
        assertThat(allowance.sentence())
                .matches("\\d+ g: 8 earlier crown foils used 41 g? ?to 62 g, this client 58 g; enough 4 times in 5");
    }

    @Test
    void the_clients_own_visits_weigh_more() {
        List<PastUse> history = new ArrayList<>(history(50, 51, 49, 50, 52, 48, 50, 51));
        history.add(used(30, "kv", 65));
        history.add(used(60, "kv", 66));
        int hers = Allowances.of(asked("kv"), history, USUAL).medianMilligrams();
        int others = Allowances.of(asked("zz"), history, USUAL).medianMilligrams();
        assertThat(hers).isGreaterThan(others + 4_000);
    }

    @Test
    void length_and_density_scale_the_grams() {
        ZoneAsked longHair =
                new ZoneAsked("crown foils", TODAY, "", 50_000, 1400, 1100, Optional.empty(), Optional.empty());
        assertThat(Allowances.of(longHair, List.of(), USUAL).medianMilligrams()).isEqualTo(77_000);
        PastUse earlier = new PastUse(TODAY.minusDays(9), "menu", "zone", "a", 50_000, 1400, 1100, 77_000, false);
        assertThat(Allowances.of(asked(""), List.of(earlier), USUAL).medianMilligrams())
                .isEqualTo(50_000);
    }

    @Test
    void one_odd_visit_is_set_aside_and_named() {
        Allowance clean = Allowances.of(asked(""), history(50, 51, 49, 50, 52, 48, 50, 51, 50, 49), USUAL);
        List<PastUse> odd = new ArrayList<>(history(50, 51, 49, 50, 52, 48, 50, 51, 50, 49));
        odd.add(used(5, "spill", 400));
        Allowance with = Allowances.of(asked(""), odd, USUAL);
        assertThat(with.setAside()).isEqualTo(1);
        assertThat(with.plannedMilligrams()).isEqualTo(clean.plannedMilligrams());
        assertThat(with.sentence()).contains("1 set aside as far out");
    }

    @Test
    void a_spilled_bowl_is_not_learned_from() {
        PastUse spilled = new PastUse(TODAY.minusDays(3), "menu", "zone", "a", 50_000, 1000, 1000, 55_000, true);
        assertThat(Allowances.of(asked(""), List.of(spilled), USUAL).visits()).isZero();
    }

    @Test
    void two_odd_visits_in_a_row_are_a_new_habit() {
        List<PastUse> history = new ArrayList<>(history(50, 51, 49, 50, 52, 48, 50, 51, 50, 49));
        history.add(used(5, "x", 400));
        history.add(used(4, "y", 390));
        Allowance allowance = Allowances.of(asked(""), history, USUAL);
        assertThat(allowance.setAside()).isZero();
        assertThat(allowance.medianMilligrams()).isGreaterThan(55_000);
    }

    @Test
    void a_pin_wins_and_a_reset_forgets() {
        List<PastUse> history = history(80, 82, 81);
        ZoneAsked pinned =
                new ZoneAsked("crown foils", TODAY, "", 50_000, 1000, 1000, Optional.of(61_000), Optional.empty());
        assertThat(Allowances.of(pinned, history, USUAL).plannedMilligrams()).isEqualTo(61_000);
        assertThat(Allowances.of(pinned, history, USUAL).sentence()).contains("pinned by a manager; learned would be");
        ZoneAsked reset =
                new ZoneAsked("crown foils", TODAY, "", 50_000, 1000, 1000, Optional.empty(), Optional.of(TODAY));
        assertThat(Allowances.of(reset, history, USUAL).visits()).isZero();
    }

    /** Long hair 1.3, thick 1.2: 40 g for medium hair are 40 * 1.3 * 1.2 = 62.4 g. */
    @Test
    void pinned_grams_are_for_medium_hair_and_follow_length_and_density() {
        ZoneAsked pinned =
                new ZoneAsked("crown foils", TODAY, "", 50_000, 1300, 1200, Optional.of(40_000), Optional.empty());
        Allowance allowance = Allowances.of(pinned, List.of(), USUAL);
        assertThat(allowance.plannedMilligrams()).isEqualTo(62_400);
        assertThat(allowance.medianMilligrams()).isEqualTo(62_400);
        assertThat(allowance.sentence())
                .startsWith("63 g: pinned by a manager, 40 g for medium hair; learned would be ");
    }

    @Test
    void old_visits_fade() {
        List<PastUse> old = List.of(used(3650, "a", 80), used(3649, "b", 80), used(3648, "c", 80));
        List<PastUse> fresh = List.of(used(3, "a", 80), used(4, "b", 80), used(5, "c", 80));
        assertThat(Allowances.of(asked(""), old, USUAL).medianMilligrams()).isLessThan(51_000);
        assertThat(Allowances.of(asked(""), fresh, USUAL).medianMilligrams()).isGreaterThan(65_000);
        AllowanceSettings never = new AllowanceSettings(800, 1, 3, 200, 500, 0);
        assertThat(Allowances.of(asked(""), old, never).medianMilligrams())
                .isEqualTo(Allowances.of(asked(""), fresh, never).medianMilligrams());
    }

    @Test
    void visits_of_the_day_itself_and_later_are_not_known_yet() {
        assertThat(Allowances.of(asked(""), List.of(used(0, "a", 80), used(-3, "b", 80)), USUAL)
                        .visits())
                .isZero();
    }

    @Test
    void the_last_bowl_follows_what_was_really_used() {
        Allowance all = Allowances.of(asked(""), history(50, 51, 49, 50, 52, 48), USUAL);
        Allowances.Rest asExpected = Allowances.rest(all.medianMilligrams(), all.plannedMilligrams(), 30_000, 600);
        Allowances.Rest thirsty = Allowances.rest(all.medianMilligrams(), all.plannedMilligrams(), 39_000, 600);
        assertThat(asExpected.expectedMilligrams()).isBetween(19_500, 20_800);
        assertThat(asExpected.safetyMilligrams()).isBetween(1, all.safetyMilligrams());
        assertThat(thirsty.expectedMilligrams()).isGreaterThan(asExpected.expectedMilligrams() + 2_000);
        assertThat(Allowances.rest(50_000, 60_000, 0, 0)).isEqualTo(new Allowances.Rest(50_000, 10_000));
        assertThat(Allowances.rest(50_000, 50_000, 25_000, 500)).isEqualTo(new Allowances.Rest(25_000, 0));
        assertThatThrownBy(() -> Allowances.rest(50_000, 60_000, 1, 1000)).hasMessageContaining("0 to 999");
    }

    @Test
    void the_order_of_the_history_does_not_matter() {
        List<PastUse> history = history(50, 61, 49, 40, 52, 48);
        List<PastUse> turned = new ArrayList<>(history);
        java.util.Collections.reverse(turned);
        assertThat(Allowances.of(asked(""), turned, USUAL)).isEqualTo(Allowances.of(asked(""), history, USUAL));
    }

    @Test
    void settings_out_of_range_name_the_range() {
        assertThatThrownBy(() -> new AllowanceSettings(400, 1, 3, 200, 500, 365))
                .hasMessage("fractionPermille must be 500 to 995: 400");
    }
}
