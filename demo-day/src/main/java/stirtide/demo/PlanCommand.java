package stirtide.demo;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import stirtide.demo.exit.CommandFailure;
import stirtide.demo.folder.FolderPlanner;
import stirtide.demo.folder.MovesPage;
import stirtide.demo.folder.VisitsPage;
import stirtide.demo.print.PrepSheet;
import stirtide.demo.print.PrepSheetDay;
import stirtide.events.json.ContractJson;
import stirtide.planner.salonfiles.FolderResult;

/**
 * {@code plan FOLDER [--date D] [--json | --moves | --visits CLIENT]}.
 *
 * @param folder folder with the salon's files
 * @param date the day to plan, if named
 * @param json whether the plan is printed as JSON in place of the prep sheet
 * @param moves whether the effect of moving services is printed in place of the prep sheet
 * @param visitsOf client whose earlier visits are printed in place of the prep sheet, if any
 */
public record PlanCommand(
        Path folder, Optional<LocalDate> date, boolean json, boolean moves, Optional<String> visitsOf) {
    /** One line of usage. */
    public static final String USAGE =
            "usage: demo-day/plan FOLDER [--date YYYY-MM-DD] [--json | --moves | --visits CLIENT]";

    /** What the command is for, with its options. */
    public static final String HELP = USAGE + """


            Plans the day whose files lie in FOLDER and prints the prep sheet.

              FOLDER             salon.json, developers.json, directions/*.json, menu.json, and
                                 bookings.ics or bookings.json; see docs/files.md
              --date YYYY-MM-DD  the day to plan, where the bookings span several
              --json             print the plan as JSON in place of the prep sheet
              --moves            print what moving services within their own tolerance would do,
                                 best first, in place of the prep sheet
              --visits CLIENT    print what was mixed for the client before, the last two visits
                                 side by side, in place of the prep sheet

            Exit codes: 0 planned, 64 wrong usage, 65 a file is not accepted (the problems are
            listed on standard error, each with its place and what would be accepted).
            """;

    /**
     * Reads the arguments.
     *
     * @throws CommandFailure with {@link CommandFailure#USAGE} when they are not as {@link #USAGE} says
     */
    public static PlanCommand of(List<String> arguments) {
        Deque<String> left = new ArrayDeque<>(arguments);
        Optional<Path> folder = Optional.empty();
        Optional<LocalDate> date = Optional.empty();
        boolean json = false;
        boolean moves = false;
        Optional<String> visitsOf = Optional.empty();
        while (!left.isEmpty()) {
            String argument = left.pop();
            if (argument.equals("--json")) json = true;
            else if (argument.equals("--moves")) moves = true;
            else if (argument.equals("--visits")) visitsOf = Optional.of(client(left.isEmpty() ? "" : left.pop()));
            else if (argument.equals("--date")) date = Optional.of(date(left.isEmpty() ? "" : left.pop()));
            else if (argument.startsWith("-")) throw usage("\"" + argument + "\" is not an option");
            else if (folder.isPresent()) throw usage("one folder only, \"" + argument + "\" is too much");
            else folder = Optional.of(path(argument));
        }
        if ((json ? 1 : 0) + (moves ? 1 : 0) + (visitsOf.isPresent() ? 1 : 0) > 1)
            throw usage("--json, --moves and --visits exclude each other");
        return new PlanCommand(folder.orElseThrow(() -> usage("a folder is needed")), date, json, moves, visitsOf);
    }

    /** The text for standard output. */
    public String run() {
        FolderResult.Read read = FolderPlanner.read(folder, date);
        if (moves) return MovesPage.of(read);
        if (visitsOf.isPresent()) return VisitsPage.of(read, visitsOf.get());
        PrepSheetDay day = FolderPlanner.plan(read);
        return json ? json(day) : PrepSheet.of(day, read.notes());
    }

    private static String json(PrepSheetDay day) {
        try {
            return ContractJson.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(day.plan()) + "\n";
        } catch (JsonProcessingException notOfTheContract) {
            throw new IllegalStateException("a plan is always JSON", notOfTheContract);
        }
    }

    private static String client(String reference) {
        if (reference.isBlank() || reference.startsWith("-"))
            throw usage("--visits needs the client as booked, such as K.O.");
        return reference;
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException notADate) {
            throw usage("\"" + text + "\" is not a date such as 2027-06-11");
        }
    }

    private static Path path(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException notAPath) {
            throw usage("\"" + text + "\" is not a folder name");
        }
    }

    private static CommandFailure usage(String why) {
        return new CommandFailure(CommandFailure.USAGE, why + "\n" + USAGE);
    }
}
