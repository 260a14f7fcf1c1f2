package stirtide.demo.live;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stirtide.demo.Exit;
import stirtide.demo.folder.PlannedFolder;
import stirtide.demo.play.Cast;
import stirtide.demo.play.CommandIds;
import stirtide.demo.play.Knowledge;
import stirtide.demo.play.PlayedDay;
import stirtide.demo.play.Player;
import stirtide.demo.play.Script;
import stirtide.demo.report.DayChecks;
import stirtide.demo.report.DayReport;
import stirtide.demo.sheet.PrepSheet;
import stirtide.planner.files.FolderAnswer;

/** {@code run --print}: the prep sheet, then the day played to its end, then what happened. */
public final class PrintedDay {
    private PrintedDay() {}

    /**
     * Prints the day.
     *
     * @param folder folder of the demo salon, script included
     * @param out where to print
     * @throws Exit when the files are not accepted, or when a check of the played day does not hold
     */
    public static void print(Path folder, PrintStream out) {
        Script script = script(folder);
        FolderAnswer.Read salon = PlannedFolder.read(folder, Optional.empty());
        out.print(PrepSheet.of(PlannedFolder.plan(salon), salon.notes()));
        out.println();
        out.flush();
        PlayedDay day = play(salon, script);
        List<DayChecks.Check> checks = DayChecks.of(salon.setup(), day);
        out.print(DayReport.of(salon.setup(), day, checks));
        out.flush();
        if (checks.stream().anyMatch(check -> !check.holds()))
            throw new Exit(Exit.FAULT, "a check of the played day does not hold; see CHECKS above");
    }

    /** Plays the day of the demo salon to its end. */
    public static PlayedDay play(FolderAnswer.Read salon, Script script) {
        Knowledge knowledge = new Knowledge(salon.setup());
        try (DemoService service = DemoService.start(salon, script)) {
            Cast cast = new Cast(knowledge, script, service.bookings(), true);
            Player player = new Player(service.link(), cast, new CommandIds("demo-day"), knowledge.desk());
            return player.play(knowledge.at(script.opensAt()), service.latest());
        }
    }

    /** Reads the script of a demo salon. */
    static Script script(Path folder) {
        try {
            return Script.read(folder.resolve("script.json"));
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new Exit(Exit.BAD_INPUT, "script.json of the demo salon cannot be read: " + unreadable.getMessage());
        }
    }
}
