package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.events.command.CommandRequest;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.ContractJson;
import stirtide.events.plan.Plan;
import stirtide.planner.day.Decider;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Decision;
import stirtide.planner.planning.search.Planner;

/** Days on which the clock changes, and the day that comes every four years. */
class CalendarDaysTest {
    private static final int ROUNDS = 3;

    /** The small salon's opening at another date, its services in the night hours in which clocks change. */
    private static CommandRequest opening(String date) {
        String text = ContractJson.write(SmallSalon.opening())
                .replace("2027-03-09T08:", "2027-03-09T00:")
                .replace("2027-03-09T09:00", "2027-03-09T00:30")
                .replace("2027-03-09T09:", "2027-03-09T00:")
                .replace("2027-03-09T11:", "2027-03-09T02:")
                .replace("2027-03-09", date);
        return ContractJson.read(text, CommandRequest.class);
    }

    private static Day opened(String date) {
        CommandRequest request = opening(date);
        Instant now = Instant.parse(date + "T00:00:00Z");
        Decision decision = Decider.decide(Day.UNOPENED, request.command(), new CommandContext(now, request.actor()));
        assertThat(decision).isInstanceOf(Decision.Accepted.class);
        List<StoredEvent> log = new ArrayList<>();
        for (DayEvent event : ((Decision.Accepted) decision).events()) {
            long revision = log.size() + 1L;
            log.add(new StoredEvent(
                    "e" + revision, "quay-house/" + date, revision, now, request.actor(), request.commandId(), event));
        }
        return Evolver.replay(log);
    }

    private static String plan(String date) {
        Plan plan = Planner.draw(PlanQuestions.of(opened(date)).orElseThrow(), ROUNDS);
        assertThat(plan.bowls()).hasSizeGreaterThanOrEqualTo(4);
        // Reasons for waits name the salon's clock, which differs.
        return ContractJson.write(plan.withWaits(List.of()));
    }

    /** In Lisbon the clock goes from 01:00 to 02:00 on 2027-03-28 and from 02:00 to 01:00 on 2027-10-31 (IANA tzdb). */
    @ParameterizedTest
    @CsvSource({"2027-03-28, 2027-04-04", "2027-10-31, 2027-11-07", "2028-02-29, 2028-03-07"})
    void a_plan_across_a_change_of_the_clock_is_that_of_a_plain_day(String odd, String plain) {
        assertThat(plan(odd).replace(odd, plain)).isEqualTo(plan(plain));
    }

    /** Lengths and beginnings from the IANA time zone database. */
    @ParameterizedTest
    @CsvSource({
        "Europe/Paris, 2027-03-28, 1380, 2027-03-27T23:00:00Z",
        "Europe/Paris, 2027-10-31, 1500, 2027-10-30T22:00:00Z",
        "Australia/Lord_Howe, 2027-10-03, 1410, 2027-10-02T13:30:00Z",
        "Australia/Lord_Howe, 2027-04-04, 1470, 2027-04-03T13:00:00Z",
        "America/Sao_Paulo, 2018-11-04, 1380, 2018-11-04T03:00:00Z",
        "Asia/Kathmandu, 2028-02-29, 1440, 2028-02-28T18:15:00Z",
    })
    void a_day_has_the_minutes_that_pass_on_it(String zone, LocalDate date, int minutes, Instant begins) {
        Instant ends = date.plusDays(1).atStartOfDay(ZoneId.of(zone)).toInstant();
        DayTime time = new DayTime(date.atStartOfDay(ZoneId.of(zone)).toInstant(), ends, ZoneId.of(zone));
        assertThat(time.dayStart()).isEqualTo(begins);
        assertThat(Duration.between(time.dayStart(), time.dayEnd()).toMinutes()).isEqualTo(minutes);
        assertThat(time.minuteUp(ends)).isEqualTo(minutes);
        assertThat(time.holds(ends.minusMillis(1))).isTrue();
        assertThat(time.holds(ends)).isFalse();
    }
}
