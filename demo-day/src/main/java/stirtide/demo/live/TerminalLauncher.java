package stirtide.demo.live;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import stirtide.demo.play.SetupLookup;
import stirtide.events.setup.Person;

/** Opens the terminal of the color bar on the demo's service, in this process. */
final class TerminalLauncher {
    private TerminalLauncher() {}

    /**
     * Returns when the terminal is left.
     *
     * @param state folder where the terminal keeps what is on its way
     * @param options further options of the terminal
     * @return the terminal's exit code
     */
    static int open(DemoService service, SetupLookup knowledge, Path state, List<String> options) {
        String operator = knowledge.people(Person.Role.ASSISTANT).stream()
                .findFirst()
                .map(Person::personId)
                .orElseGet(knowledge::desk);
        List<String> arguments = new ArrayList<>(List.of(
                "--server",
                "http://127.0.0.1:" + service.address().getPort(),
                "--day",
                service.day(),
                "--person",
                operator,
                "--state",
                state.toString()));
        arguments.addAll(options);
        return stirtide.bar.BarMain.run(arguments);
    }
}
