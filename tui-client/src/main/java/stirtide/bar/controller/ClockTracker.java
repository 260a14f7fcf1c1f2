package stirtide.bar.controller;

import java.time.Instant;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.model.FollowedClock;
import stirtide.bar.model.UiState;
import stirtide.events.view.DayView;

/** The salon's clock as the service reported it last, and whether it can be driven. */
final class ClockTracker {
    private FollowedClock clock;
    private boolean canBeDriven;

    ClockTracker(long startNanos) {
        clock = new FollowedClock(Instant.EPOCH, startNanos, 0);
    }

    void seen(DayView view, long nanos) {
        clock = new FollowedClock(view.time(), nanos, view.clockRatePermille());
    }

    // A picture from disk stands still: how fast the clock has run since is unknown.
    void remembered(DayView view, long nanos) {
        clock = new FollowedClock(view.time(), nanos, 0);
    }

    void told(LinkEvent.Clock told, boolean everHeard, long nanos) {
        canBeDriven = told.canBeDriven();
        if (everHeard) clock = new FollowedClock(told.now(), nanos, told.ratePermille());
    }

    void drive(int ratePermille, long nanos) {
        clock = clock.atRate(ratePermille, nanos);
    }

    Instant at(long nanos) {
        return clock.at(nanos);
    }

    UiState.ClockReading reading(long nanos) {
        return new UiState.ClockReading(clock.at(nanos), nanos, clock.ratePermille(), canBeDriven);
    }

    boolean canBeDriven() {
        return canBeDriven;
    }
}
