package stirtide.demo.folder;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.demo.print.PrepSheetDay;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.plan.Plan;
import stirtide.events.setup.DaySetup;
import stirtide.planner.cli.CommandException;
import stirtide.planner.day.Decider;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.planning.bounds.BoundedPlanner;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.salonfiles.FolderResult;
import stirtide.planner.salonfiles.SalonFolder;
import stirtide.planner.views.DayViews;

/** Reads a folder and plans its day as it is before the first client. */
public final class FolderPlanner {
    /** Rounds of improvement granted to a plan that is printed. */
    private static final int ROUNDS = 200;

    private FolderPlanner() {}

    /**
     * Reads a folder.
     *
     * @param folder folder with the salon's files
     * @param date the day, where the bookings leave it open
     * @throws CommandException with {@link CommandException#BAD_INPUT} and one line for each problem
     */
    public static FolderResult.Read read(Path folder, Optional<LocalDate> date) {
        FolderResult answer = SalonFolder.read(folder, date);
        if (answer instanceof FolderResult.Rejected rejected)
            throw new CommandException(CommandException.BAD_INPUT, String.join("\n", rejected.lines()));
        return (FolderResult.Read) answer;
    }

    /**
     * Plans the day of a folder that was read.
     *
     * @throws CommandException with {@link CommandException#BAD_INPUT} when the day cannot be opened, and why
     */
    public static PrepSheetDay plan(FolderResult.Read read) {
        DaySetup setup = read.setup();
        List<DayEvent> opened = open(setup, read.bookings());
        Day day = day(read);
        Plan plan = PlanQuestions.of(day)
                .map((PlanQuestion question) -> BoundedPlanner.draw(question, ROUNDS))
                .orElseThrow(() -> new CommandException(
                        CommandException.BAD_INPUT, "there is nothing to plan: no service is booked"));
        return new PrepSheetDay(
                setup,
                numbered(opened),
                plan,
                DayViews.of(day, midnight(setup), 0).services());
    }

    /**
     * The day of a folder as it stands once it is open.
     *
     * @throws CommandException with {@link CommandException#BAD_INPUT} when the day cannot be opened, and why
     */
    public static Day day(FolderResult.Read read) {
        return replay(read.setup(), open(read.setup(), read.bookings()));
    }

    /** Bookings by service number. */
    public static SortedMap<Integer, Booking> numbered(List<DayEvent> events) {
        SortedMap<Integer, Booking> bookings = new TreeMap<>();
        for (DayEvent event : events)
            if (event instanceof DayEvent.ServiceBooked booked) bookings.put(booked.service(), booked.booking());
        return bookings;
    }

    /** The events of opening a day. */
    public static List<DayEvent> open(DaySetup setup, List<Booking> bookings) {
        Decision decision = Decider.decide(
                Day.UNOPENED, new DayCommand.OpenDay(setup, bookings), new CommandContext(midnight(setup), "plan"));
        if (decision instanceof Decision.Refused refused)
            throw new CommandException(
                    CommandException.BAD_INPUT, refused.refusal().sentence());
        return ((Decision.Accepted) decision).events();
    }

    private static Day replay(DaySetup setup, List<DayEvent> events) {
        String stream = setup.salon().salonId() + "/" + setup.date();
        Day day = Day.UNOPENED;
        long revision = 0;
        for (DayEvent event : events) {
            revision++;
            day = Evolver.evolve(
                    day,
                    new StoredEvent(
                            "plan-" + revision, stream, revision, midnight(setup), "plan", "plan-folder", event));
        }
        return day;
    }

    /** The start of the day in the zone of the salon. */
    static Instant midnight(DaySetup setup) {
        return setup.date().atStartOfDay(ZoneId.of(setup.salon().zone())).toInstant();
    }
}
