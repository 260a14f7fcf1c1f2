package stirtide.bar.desk;

import java.time.Instant;
import stirtide.bar.clock.SalonTime;
import stirtide.bar.link.LinkNews;
import stirtide.events.view.DayView;

/** The salon's clock as the service told it last, and whether it can be driven. */
final class ClockWatch {
    private SalonTime clock;
    private boolean canBeDriven;

    ClockWatch(long startNanos) {
        clock = new SalonTime(Instant.EPOCH, startNanos, 0);
    }

    void seen(DayView view, long nanos) {
        clock = new SalonTime(view.time(), nanos, view.clockRatePermille());
    }

    // A picture from disk stands still: nobody knows how fast the clock has run since.
    void remembered(DayView view, long nanos) {
        clock = new SalonTime(view.time(), nanos, 0);
    }

    void told(LinkNews.Clock told, boolean everHeard, long nanos) {
        canBeDriven = told.canBeDriven();
        if (everHeard) clock = new SalonTime(told.now(), nanos, told.ratePermille());
    }

    void drive(int ratePermille, long nanos) {
        clock = clock.atRate(ratePermille, nanos);
    }

    Instant at(long nanos) {
        return clock.at(nanos);
    }

    int ratePermille() {
        return clock.ratePermille();
    }

    boolean canBeDriven() {
        return canBeDriven;
    }
}
