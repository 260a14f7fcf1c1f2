package stirtide.demo;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stirtide.demo.folder.FolderPlanner;
import stirtide.demo.folder.MovesPage;
import stirtide.demo.folder.VisitsPage;
import stirtide.demo.print.HtmlSheet;
import stirtide.demo.print.PrepSheet;
import stirtide.demo.print.PrepSheetDay;
import stirtide.events.json.ContractJson;
import stirtide.planner.cli.CommandLines;
import stirtide.planner.salonfiles.FolderResult;

/** {@code demo-day/plan}: plans the day of a folder and prints one page. */
@Command(
        name = "demo-day/plan",
        synopsisHeading = "usage: ",
        sortOptions = false,
        description = {
            "%nPlans the day whose files lie in FOLDER and prints the prep sheet.%n",
        },
        footer = {
            "",
            "Exit codes: 0 planned, 64 wrong usage, 65 a file is not accepted (the problems are listed on standard"
                    + " error, each with its place and what would be accepted), 73 FILE cannot be written.",
        })
final class PlanCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "FOLDER",
            description = "salon.json, developers.json, directions/*.json, menu.json, and bookings.ics or"
                    + " bookings.json; see docs/files.md")
    private Path folder = Path.of("");

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            converter = IsoDate.class,
            description = "the day to plan, where the bookings span several")
    private Optional<LocalDate> date = Optional.empty();

    @ArgGroup
    private Page page = new Page();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "print this help")
    @SuppressWarnings("UnusedVariable") // picocli prints the help when this is set
    private boolean help;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final PrintStream out;

    /** What is printed in place of the prep sheet. */
    static final class Page {
        @Option(names = "--json", description = "print the plan as JSON in place of the prep sheet")
        private boolean json;

        @Option(
                names = "--moves",
                description = "print which clients are worth asking to come at another time within their own tolerance,"
                        + " best first, in place of the prep sheet")
        private boolean moves;

        @Option(
                names = "--visits",
                paramLabel = "CLIENT",
                description = "print what was mixed for the client before, the last two visits side by side, in place"
                        + " of the prep sheet")
        private Optional<String> visitsOf = Optional.empty();

        @Option(
                names = "--html",
                paramLabel = "FILE",
                converter = SheetFile.Name.class,
                description =
                        "write the prep sheet for a printer to FILE, one HTML page, in place of printing it as text;"
                                + " a FILE that exists is replaced")
        private Optional<Path> html = Optional.empty();
    }

    static final class IsoDate implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String text) throws Exception {
            return CommandLines.accepting("a date such as 2027-06-11", LocalDate::parse)
                    .convert(text);
        }
    }

    /** Prints on {@code out}. */
    PlanCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        if (page.visitsOf.filter(String::isBlank).isPresent())
            throw new ParameterException(spec.commandLine(), "--visits needs the client as booked, such as K.O.");
        out.print(text(FolderPlanner.read(folder, date)));
        return 0;
    }

    private String text(FolderResult.Read salon) {
        if (page.moves) return MovesPage.of(salon);
        if (page.visitsOf.isPresent()) return VisitsPage.of(salon, page.visitsOf.get());
        PrepSheetDay day = FolderPlanner.plan(salon);
        if (page.html.isPresent()) {
            SheetFile.write(page.html.get(), HtmlSheet.of(day, salon.notes()));
            return "Written for a printer: " + page.html.get() + "\n";
        }
        return page.json ? json(day) : PrepSheet.of(day, salon.notes());
    }

    private static String json(PrepSheetDay day) {
        try {
            return ContractJson.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(day.plan()) + "\n";
        } catch (JsonProcessingException notOfTheContract) {
            throw new IllegalStateException("a plan is always JSON", notOfTheContract);
        }
    }
}
