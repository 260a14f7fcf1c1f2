package stirtide.planner.service;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import stirtide.planner.http.HttpSecurity.Encryption;

/**
 * Settings of the service.
 *
 * @param data data folder, created if absent
 * @param host address to bind; other than loopback only with encryption and tokens
 * @param port port for the salon, 0 for any free one
 * @param managementPort port for health and metrics, 0 for any free one
 * @param salon folder with the salon's files, whose day is opened at start if it is not open yet
 * @param date day to open, empty for the only day the bookings have
 * @param drivenFrom start of a driven clock, empty for the wall clock
 * @param ratePermille rate of a driven clock, in thousandths of real time
 * @param planRounds rounds of the search for a better plan after each first one, 0 for none
 * @param encryption certificate and key, empty for none
 */
@RecordBuilder
public record Settings(
        Path data,
        String host,
        int port,
        int managementPort,
        Optional<Path> salon,
        Optional<LocalDate> date,
        Optional<Instant> drivenFrom,
        int ratePermille,
        int planRounds,
        Optional<Encryption> encryption)
        implements SettingsBuilder.With {
    /** Default address to bind. */
    public static final String LOOPBACK = "127.0.0.1";

    /** Default port for the salon. */
    public static final int PORT = 7464;

    /** Default port for health and metrics. */
    public static final int MANAGEMENT_PORT = 7465;

    /** Default rounds of the search for a better plan. */
    public static final int PLAN_ROUNDS = 200;

    /** Settings for a service within another process: any free ports, wall clock, no day to open. */
    public static Settings inProcess(Path data) {
        return new Settings(
                data,
                LOOPBACK,
                0,
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                1000,
                PLAN_ROUNDS,
                Optional.empty());
    }

    /** The same with a driven clock that starts at an instant, at a rate in thousandths of real time. */
    public Settings withDrivenClock(Instant start, int rate) {
        return withDrivenFrom(Optional.of(start)).withRatePermille(rate);
    }
}
