package stirtide.demo.live;

import java.net.URI;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.SortedMap;
import stirtide.demo.exit.CommandFailure;
import stirtide.demo.folder.FolderPlanner;
import stirtide.demo.link.Answer;
import stirtide.demo.link.SalonLink;
import stirtide.demo.play.CommandIds;
import stirtide.demo.play.DayScript;
import stirtide.demo.play.SetupLookup;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.setup.DaySetup;
import stirtide.planner.salonfiles.FolderResult;
import stirtide.planner.service.PlannerService;
import stirtide.planner.service.Settings;
import stirtide.planner.cli.CommandException;

/** The service in this process, on a log in a temporary folder and a driven clock, with the day of a folder opened. */
public final class DemoService implements AutoCloseable {
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
     * @throws CommandFailure when the service cannot start or the day cannot be opened
     */
    public static DemoService start(FolderResult.Read salon, DayScript script) {
        return start(salon, script, () -> {});
    }

    /** The same; {@code beforePlanning} is called when the service runs and the day is about to be opened and planned. */
    static DemoService start(FolderResult.Read salon, DayScript script, Runnable beforePlanning) {
        TemporaryFolder folder = TemporaryFolder.make();
        try {
            Settings settings = Settings.inProcess(folder.path().resolve("log"))
                    .withDrivenClock(new SetupLookup(salon.setup()).at(script.opensAt()), 0);
            DemoService demo = new DemoService(folder, PlannerService.start(settings), salon);
            beforePlanning.run();
            demo.open();
            return demo;
        } catch (CommandException failure) {
            folder.close();
            throw new CommandFailure(CommandFailure.UNAVAILABLE, String.valueOf(failure.getMessage()));
        }
    }

    private void open() {
        String desk = new SetupLookup(salon.setup()).desk();
        Answer answer = link().open(new CommandRequest(
                new CommandIds("demo-open").next(), desk, new DayCommand.OpenDay(salon.setup(), salon.bookings())));
        if (answer.accepted()) return;
        close();
        throw new CommandFailure(CommandFailure.BAD_INPUT, answer.sentence());
    }

    /** A fresh line to the day. */
    public SalonLink link() {
        return new SalonLink(address(), day());
    }

    /** Where the service answers. */
    public URI address() {
        return URI.create("http://127.0.0.1:" + service.port() + "/");
    }

    /** Salon id and date. */
    public String day() {
        return salon.setup().salon().salonId() + "/" + salon.setup().date();
    }

    /** A folder that is removed with the service. */
    public Path scratch() {
        return folder.path().resolve("terminal");
    }

    /** What is in force on the day. */
    public DaySetup setup() {
        return salon.setup();
    }

    /** Bookings by service number. */
    public SortedMap<Integer, Booking> bookings() {
        return FolderPlanner.numbered(FolderPlanner.open(salon.setup(), salon.bookings()));
    }

    /** The last minute to which a day is played at most. */
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
