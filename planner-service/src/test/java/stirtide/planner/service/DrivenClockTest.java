package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class DrivenClockTest {
    private static final Instant START = Instant.parse("2027-03-09T08:00:00Z");
    private final AtomicLong nanos = new AtomicLong(-5_000);

    private void pass(Duration real) {
        nanos.addAndGet(real.toNanos());
    }

    @Test
    void it_runs_at_its_rate_and_keeps_its_place_when_the_rate_changes() {
        DrivenClock clock = new DrivenClock(START, 60_000, nanos::get);
        pass(Duration.ofSeconds(2));
        assertThat(clock.now()).isEqualTo(START.plusSeconds(120));
        clock.setRate(0);
        pass(Duration.ofHours(1));
        assertThat(clock.now()).isEqualTo(START.plusSeconds(120));
        clock.setRate(500);
        pass(Duration.ofSeconds(2));
        assertThat(clock.now()).isEqualTo(START.plusSeconds(121));
    }

    @Test
    void it_moves_forward_and_never_back() {
        DrivenClock clock = new DrivenClock(START, 0, nanos::get);
        clock.moveTo(START.plusSeconds(60));
        clock.moveTo(START);
        assertThat(clock.now()).isEqualTo(START.plusSeconds(60));
    }

    @Test
    void it_runs_for_years_at_its_fastest() {
        DrivenClock clock = new DrivenClock(START, DrivenClock.FASTEST_PERMILLE, nanos::get);
        pass(Duration.ofDays(30));
        assertThat(clock.now()).isEqualTo(START.plus(Duration.ofDays(30_000)));
    }

    @Test
    void a_rate_below_zero_or_above_the_fastest_is_refused() {
        DrivenClock clock = new DrivenClock(START, 0, nanos::get);
        assertThatThrownBy(() -> clock.setRate(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> clock.setRate(DrivenClock.FASTEST_PERMILLE + 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
