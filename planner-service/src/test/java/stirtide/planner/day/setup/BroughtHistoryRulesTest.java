package stirtide.planner.day.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.command.DayCommand.BookService;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.day.ClientTests;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.SwatchTest;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;

/** What a day is opened with from before is refused whole when any of it cannot be. */
class BroughtHistoryRulesTest {
    private static DaySetup policy(Optional<Integer> fixed, String minute, int missing, int halfLife) {
        return Given.setup()
                .withAllowances(Optional.of(
                        new AllowancePolicy(fixed, Optional.of(new BigDecimal(minute)), missing, halfLife)));
    }

    private static DaySetup remembering(
            List<PastVisit> visits, List<SwatchTest> swatches, List<MixStrip> strips, Optional<Integer> fraction) {
        return Given.setup()
                .with(new UseHistory(
                        List.of(), List.of(), Optional.of(new SalonMemory(visits, swatches, strips, fraction))));
    }

    private static PastVisit visit(int strength, int used) {
        return new PastVisit(
                Given.DATE.minusDays(9),
                "Q.Z.",
                "foils",
                List.of(new PastZone(
                        "crown",
                        "foil",
                        "cloudlift",
                        strength,
                        2000,
                        60_000,
                        used,
                        20,
                        20,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())));
    }

    static Stream<Arguments> setups() {
        var use = new PastUse(Given.DATE.minusDays(1), "foils", "crown", "", 40_000, 1000, 1000, 0, false);
        var swatch = new SwatchTest(Given.DATE, "cloudlift", 2000, 900, 0, 50, 75);
        var strip = new MixStrip(Given.DATE, "cloudlift", 2000, 900, 141, 5);
        return Stream.of(
                Arguments.of(policy(Optional.of(400), "1", 1, 1), "500 to 995"),
                Arguments.of(policy(Optional.empty(), "0", 1, 1), "above 0"),
                Arguments.of(policy(Optional.empty(), "1", 0, 1), "more than 0"),
                Arguments.of(policy(Optional.empty(), "1", 1, -1), "0 (never) to 36500"),
                Arguments.of(Given.setup().with(new UseHistory(List.of(use), List.of())), "above 0"),
                Arguments.of(remembering(List.of(), List.of(), List.of(), Optional.of(996)), "500 to 995"),
                Arguments.of(
                        remembering(List.of(visit(1300, 1)), List.of(), List.of(), Optional.empty()), "at most 12 %"),
                Arguments.of(remembering(List.of(visit(900, 0)), List.of(), List.of(), Optional.empty()), "above 0"),
                Arguments.of(remembering(List.of(), List.of(swatch), List.of(), Optional.empty()), "above 0"),
                Arguments.of(remembering(List.of(), List.of(), List.of(strip), Optional.empty()), "0 to 14"));
    }

    @ParameterizedTest
    @MethodSource("setups")
    void a_setup_that_remembers_what_cannot_be_is_refused(DaySetup setup, String accepted) {
        assertThat(new Scene()
                        .refused(new OpenDay(setup, List.of()), "SETUP_INVALID")
                        .sentence())
                .contains(accepted);
    }

    @Test
    void a_test_after_its_service_is_refused() {
        var late = Given.booking("three", "foils", 3, "12:00")
                .withTests(Optional.of(
                        new ClientTests(Optional.of(Given.at("12:00").plus(Duration.ofHours(1))), Optional.empty())));
        Scene.planned().refused(new BookService(late), "TEST_AFTER_START");
    }
}
