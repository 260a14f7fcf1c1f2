package stirtide.demo.live;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stirtide.demo.folder.PlannedFolder;
import stirtide.demo.link.SalonLink;
import stirtide.demo.play.Cast;
import stirtide.demo.play.Knowledge;
import stirtide.demo.play.Script;
import stirtide.planner.files.FolderAnswer;

/** {@code run}: service and terminal on the demo day, with the people of the day moving by themselves. */
public final class LiveDay {
    private LiveDay() {}

    /**
     * Opens the terminal and returns when it is left.
     *
     * @param folder folder of the demo salon, script included
     * @param handsFree whether the assistants work by themselves too
     * @param ratePermille how fast the salon's clock runs at first, in thousandths of real time
     * @param terminalOptions further options of the terminal
     * @return the terminal's exit code
     */
    public static int run(Path folder, boolean handsFree, int ratePermille, List<String> terminalOptions) {
        Script script = PrintedDay.script(folder);
        FolderAnswer.Read salon = PlannedFolder.read(folder, Optional.empty());
        Knowledge knowledge = new Knowledge(salon.setup());
        DemoService service = DemoService.start(salon, script);
        // Leaving by a signal ends the process from within the terminal: only a hook sees both ways out.
        Thread clean = new Thread(service::close, "close-demo");
        Runtime.getRuntime().addShutdownHook(clean);
        SalonLink link = service.link();
        link.advance(knowledge.at(script.liveFrom()));
        link.setRate(ratePermille);
        Cast cast = new Cast(knowledge, script, service.bookings(), handsFree);
        try (LivePlayer people = new LivePlayer(service.link(), cast)) {
            people.start();
            return TerminalDoor.open(service, knowledge, service.scratch(), terminalOptions);
        }
    }
}
