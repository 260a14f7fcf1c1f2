package stirtide.demo.live;

import java.util.ArrayList;
import java.util.List;
import stirtide.bar.BarMain;

/** Opens the terminal of the color bar on a service in this process. */
public final class TerminalLauncher {
    private TerminalLauncher() {}

    /**
     * Returns the terminal's exit code when it is left.
     *
     * @param port port of the service
     * @param options further options of the terminal
     */
    public static int open(int port, List<String> options) {
        List<String> arguments = new ArrayList<>(List.of("--server", "http://127.0.0.1:" + port));
        arguments.addAll(options);
        return BarMain.run(arguments);
    }
}
