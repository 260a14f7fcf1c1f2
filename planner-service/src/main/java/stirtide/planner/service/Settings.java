package stirtide.planner.service;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import stirtide.planner.http.HttpSecurity;

/**
 * How the service is to run.
 *
 * @param data folder of the log, made when it is not there
 * @param host address to bind; other than loopback only with encryption and tokens
 * @param port port for the salon, 0 for any free one
 * @param managementPort port for health and metrics, 0 for any free one
 * @param salon folder with the salon's files, whose day is opened at start if it is not open yet
 * @param date day to open, empty for the only day the bookings have
 * @param drivenFrom start of a driven clock, empty for the wall clock
 * @param ratePermille rate of a driven clock, in thousandths of real time
 * @param planRounds rounds of improvement granted to the better plan that follows a first one, 0 for none
 * @param encryption certificate and key, empty for none
 */
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
        Optional<HttpSecurity.Encryption> encryption) {
    /** The address the service binds to when none is named. */
    public static final String LOOPBACK = "127.0.0.1";

    /** Port for the salon when none is named. */
    public static final int PORT = 7464;

    /** Port for health and metrics when none is named. */
    public static final int MANAGEMENT_PORT = 7465;

    /** Rounds of improvement when none are named. */
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

    /** The same with a clock that starts at an instant and can be driven. */
    public Settings withDrivenClock(Instant start, int rate) {
        return new Settings(
                data, host, port, managementPort, salon, date, Optional.of(start), rate, planRounds, encryption);
    }

    /** The same with a day to open at start. */
    public Settings withSalon(Path folder, Optional<LocalDate> day) {
        return new Settings(
                data,
                host,
                port,
                managementPort,
                Optional.of(folder),
                day,
                drivenFrom,
                ratePermille,
                planRounds,
                encryption);
    }

    /** The same on another address, encrypted. */
    public Settings withAddress(String address, HttpSecurity.Encryption files) {
        return new Settings(
                data,
                address,
                port,
                managementPort,
                salon,
                date,
                drivenFrom,
                ratePermille,
                planRounds,
                Optional.of(files));
    }

    /** The same with other rounds of improvement. */
    public Settings withPlanRounds(int rounds) {
        return new Settings(
                data, host, port, managementPort, salon, date, drivenFrom, ratePermille, rounds, encryption);
    }
}
