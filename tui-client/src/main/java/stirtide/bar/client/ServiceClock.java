package stirtide.bar.client;

import java.time.Instant;

/**
 * The salon's clock as the service reports it.
 *
 * @param now the salon's time
 * @param ratePermille speed in thousandths of real time: 1000 is real time, 0 is stopped
 * @param driven whether clients may set the speed
 */
public record ServiceClock(Instant now, int ratePermille, boolean driven) {}
