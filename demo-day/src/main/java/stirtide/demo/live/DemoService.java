package stirtide.demo.live;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.SortedMap;
import stirtide.bar.client.CommandAnswer;
import stirtide.bar.client.Credentials;
import stirtide.bar.client.DayClient;
import stirtide.bar.client.ServiceClient;
import stirtide.demo.folder.FolderPlanner;
import stirtide.demo.play.CommandIds;
import stirtide.demo.play.DayScript;
import stirtide.demo.play.SetupLookup;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.setup.DaySetup;
import stirtide.planner.cli.CommandException;
import stirtide.planner.salonfiles.FolderResult;
import stirtide.planner.service.PlannerService;
import stirtide.planner.service.Settings;

/** The service in this process, with its log in a temporary folder and a driven clock, and the day of a folder opened. */
public final class DemoService implements AutoCloseable {
    /** Time for an answer; the clock may have to draw many plans before it has advanced. */
    private static final Duration TIMEOUT = Duration.ofSeconds(30);

    private final TemporaryFolder folder;
    private final PlannerService service;
    private final FolderResult.Read salon;

    private DemoService(TemporaryFolder folder, PlannerService service, FolderResult.Read salon) {
        this.folder = folder;
        this.service = service;
        this.salon = salon;
    }

    /**
     * Starts the service with a clock that stands still, and opens the day.
     *
     * @param salon the salon's files
     * @param script says when the day is opened
     * @param beforePlanning called when the service runs and the day is about to be opened and planned
     * @throws IOException when the service does not answer
     * @throws CommandException when the service cannot start or the day cannot be opened
     */
    public static DemoService start(FolderResult.Read salon, DayScript script, Runnable beforePlanning)
            throws IOException, InterruptedException {
        TemporaryFolder folder = TemporaryFolder.make();
        DemoService demo = new DemoService(folder, startService(folder, salon, script), salon);
        boolean opened = false;
        try {
            beforePlanning.run();
            demo.open();
            opened = true;
            return demo;
        } finally {
            if (!opened) demo.close();
        }
    }

    private static PlannerService startService(TemporaryFolder folder, FolderResult.Read salon, DayScript script) {
        try {
            return PlannerService.start(Settings.inProcess(folder.path().resolve("log"))
                    .withDrivenClock(new SetupLookup(salon.setup()).at(script.opensAt()), 0));
        } catch (CommandException failure) {
            folder.close();
            throw new CommandException(CommandException.UNAVAILABLE, String.valueOf(failure.getMessage()));
        }
    }

    private void open() throws IOException, InterruptedException {
        DayCommand command = new DayCommand.OpenDay(salon.setup(), salon.bookings());
        String receptionist = new SetupLookup(salon.setup()).receptionist();
        CommandAnswer answer =
                client().service().open(new CommandRequest(new CommandIds("demo-open").next(), receptionist, command));
        if (answer instanceof CommandAnswer.Rejected rejected)
            throw new CommandException(CommandException.BAD_INPUT, rejected.sentence());
        if (answer instanceof CommandAnswer.Undecided undecided) throw new IOException(undecided.reason());
    }

    /** A new client of the day. */
    public DayClient client() {
        URI address = URI.create("http://127.0.0.1:" + port());
        return new DayClient(new ServiceClient(address, Credentials.NONE, TIMEOUT), day());
    }

    /** Port of the service. */
    public int port() {
        return service.port();
    }

    /** Salon id and date. */
    public String day() {
        return salon.setup().salon().salonId() + "/" + salon.setup().date();
    }

    /** State folder for a terminal, removed with the service. */
    public Path scratch() {
        return folder.path().resolve("terminal");
    }

    /** Setup of the day. */
    public DaySetup setup() {
        return salon.setup();
    }

    /** Bookings by service number. */
    public SortedMap<Integer, Booking> bookings() {
        return FolderPlanner.numbered(FolderPlanner.open(salon.setup(), salon.bookings()));
    }

    /** Latest instant to which a day is played. */
    public Instant latest() {
        return setup().date()
                .plusDays(1)
                .atStartOfDay(ZoneId.of(setup().salon().zone()))
                .toInstant()
                .minusSeconds(3600);
    }

    /** Stops the service and removes its folder. */
    @Override
    public void close() {
        try {
            service.close();
        } finally {
            folder.close();
        }
    }
}
