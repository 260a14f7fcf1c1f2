package stirtide.planner.service;

import java.time.Instant;

/** The clock of the salon, which need not be the clock on the wall. */
public interface SalonClock {
    /** The instant now, in whole milliseconds. */
    Instant now();

    /** How fast it runs against real time, in thousandths: 1000 is real, 0 stands. */
    int ratePermille();
}
