package stirtide.demo.live;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stirtide.demo.folder.FolderPlanner;
import stirtide.demo.play.CommandIds;
import stirtide.demo.play.DayScript;
import stirtide.demo.play.PlayedDay;
import stirtide.demo.play.SalonSimulation;
import stirtide.demo.play.SetupLookup;
import stirtide.demo.play.SteppedPlayer;
import stirtide.demo.print.DayChecks;
import stirtide.demo.print.DayReport;
import stirtide.demo.print.PrepSheet;
import stirtide.planner.cli.CommandException;
import stirtide.planner.salonfiles.FolderResult;

/** {@code run --print}: the prep sheet, then the day played to its end, then what happened. */
public final class PrintedDay {
    private PrintedDay() {}

    /**
     * Prints the day.
     *
     * @param folder folder of the demo salon, script included
     * @param out where to print
     * @throws IOException when the service does not answer
     * @throws CommandException when the files are not accepted, or when a check of the played day does not hold
     */
    public static void print(Path folder, PrintStream out) throws IOException, InterruptedException {
        DayScript script = script(folder);
        FolderResult.Read salon = FolderPlanner.read(folder, Optional.empty());
        out.print(PrepSheet.of(FolderPlanner.plan(salon), salon.notes()));
        out.println();
        out.flush();
        PlayedDay day = play(salon, script);
        List<DayChecks.Check> checks = DayChecks.of(salon.setup(), day);
        out.print(DayReport.of(salon.setup(), day, checks));
        out.flush();
        if (checks.stream().anyMatch(check -> !check.holds()))
            throw new CommandException(
                    CommandException.SOFTWARE, "a check of the played day does not hold; see CHECKS above");
    }

    /**
     * Plays the day of the demo salon to its end.
     *
     * @throws IOException when the service does not answer
     */
    public static PlayedDay play(FolderResult.Read salon, DayScript script) throws IOException, InterruptedException {
        SetupLookup lookup = new SetupLookup(salon.setup());
        try (DemoService service = DemoService.start(salon, script, () -> {})) {
            SalonSimulation simulation = new SalonSimulation(lookup, script, service.bookings(), true);
            SteppedPlayer player =
                    new SteppedPlayer(service.client(), simulation, new CommandIds("demo-day"), lookup.receptionist());
            return player.play(lookup.at(script.opensAt()), service.latest());
        }
    }

    /** Reads the script of a demo salon. */
    static DayScript script(Path folder) {
        try {
            return DayScript.read(folder.resolve("script.json"));
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new CommandException(
                    CommandException.BAD_INPUT,
                    "script.json of the demo salon cannot be read: " + unreadable.getMessage());
        }
    }
}
