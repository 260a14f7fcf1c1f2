package stirtide.demo.folder;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.demo.Exit;
import stirtide.demo.sheet.SheetDay;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.plan.Plan;
import stirtide.events.setup.DaySetup;
import stirtide.planner.day.Day;
import stirtide.planner.day.Decider;
import stirtide.planner.day.Decision;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.Facts;
import stirtide.planner.day.PlanQuestions;
import stirtide.planner.files.FolderAnswer;
import stirtide.planner.files.SalonFolder;
import stirtide.planner.plan.PlanQuestion;
import stirtide.planner.proof.ProvenPlanner;
import stirtide.planner.view.DayViews;

/** Reads a folder and plans its day as it looks before the first client. */
public final class PlannedFolder {
    /** Rounds of improvement granted to a plan that is printed. */
    private static final int ROUNDS = 200;

    private PlannedFolder() {}

    /**
     * Reads a folder.
     *
     * @param folder folder with the salon's files
     * @param date the day, where the bookings leave it open
     * @throws Exit with {@link Exit#BAD_INPUT} and one line for each problem
     */
    public static FolderAnswer.Read read(Path folder, Optional<LocalDate> date) {
        FolderAnswer answer = SalonFolder.read(folder, date);
        if (answer instanceof FolderAnswer.Rejected rejected)
            throw new Exit(Exit.BAD_INPUT, String.join("\n", rejected.lines()));
        return (FolderAnswer.Read) answer;
    }

    /**
     * Plans the day of a folder that was read.
     *
     * @throws Exit with {@link Exit#BAD_INPUT} when the day cannot be opened, and why
     */
    public static SheetDay plan(FolderAnswer.Read read) {
        DaySetup setup = read.setup();
        List<DayEvent> opened = open(setup, read.bookings());
        Day day = day(read);
        Plan plan = PlanQuestions.of(day)
                .map((PlanQuestion question) -> ProvenPlanner.draw(question, ROUNDS))
                .orElseThrow(() -> new Exit(Exit.BAD_INPUT, "there is nothing to plan: no service is booked"));
        return new SheetDay(
                setup,
                numbered(opened),
                plan,
                DayViews.of(day, midnight(setup), 0).services());
    }

    /**
     * The day of a folder as it stands once it is open.
     *
     * @throws Exit with {@link Exit#BAD_INPUT} when the day cannot be opened, and why
     */
    public static Day day(FolderAnswer.Read read) {
        return replay(read.setup(), open(read.setup(), read.bookings()));
    }

    /** Bookings by the number they got when the day was opened. */
    public static SortedMap<Integer, Booking> numbered(List<DayEvent> events) {
        SortedMap<Integer, Booking> bookings = new TreeMap<>();
        for (DayEvent event : events)
            if (event instanceof DayEvent.ServiceBooked booked) bookings.put(booked.service(), booked.booking());
        return bookings;
    }

    /** The events of opening a day. */
    public static List<DayEvent> open(DaySetup setup, List<Booking> bookings) {
        Decision decision = Decider.decide(
                Day.UNOPENED, new DayCommand.OpenDay(setup, bookings), new Facts(midnight(setup), "plan"));
        if (decision instanceof Decision.Refused refused)
            throw new Exit(Exit.BAD_INPUT, refused.refusal().sentence());
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

    private static Instant midnight(DaySetup setup) {
        return setup.date().atStartOfDay(ZoneId.of(setup.salon().zone())).toInstant();
    }
}
