package stirtide.bar.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FollowedClockTest {
    private static final Instant TOLD = Instant.parse("2027-05-14T10:40:00Z");

    @ParameterizedTest
    @CsvSource({
        "1000,1000,1000",
        "1000,0,0",
        "1000,60000,60000",
        "250,10000,2500",
        "1500,1000000,1500000",
        "333,500,166"
    })
    void time_runs_at_the_rate_told(long elapsedMillis, int ratePermille, long salonMillis) {
        var clock = new FollowedClock(TOLD, 77, ratePermille);
        Instant now = clock.at(77 + elapsedMillis * 1_000_000);
        assertThat(Duration.between(TOLD, now).toMillis()).isEqualTo(salonMillis);
    }

    @Test
    void a_change_of_rate_makes_no_jump() {
        var fast = new FollowedClock(TOLD, 0, 60_000);
        FollowedClock stopped = fast.atRate(0, 2_000_000_000L);
        assertThat(stopped.at(2_000_000_000L)).isEqualTo(TOLD.plusSeconds(120));
        assertThat(stopped.at(9_000_000_000L)).isEqualTo(TOLD.plusSeconds(120));
    }

    @Test
    void a_week_at_the_fastest_rate_does_not_overflow() {
        var clock = new FollowedClock(TOLD, 0, 1_000_000);
        long week = Duration.ofDays(7).toNanos();
        assertThat(clock.at(week)).isEqualTo(TOLD.plus(Duration.ofDays(7000)));
    }
}
