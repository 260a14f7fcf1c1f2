package stirtide.planner.service;

import java.util.List;
import java.util.logging.Level;

/** Starts the service from the command line and stops it when the process is told to end. */
public final class ServiceMain {
    private ServiceMain() {}

    /** Runs until the process is told to end; ends with a code of {@link StartFailure} when it cannot start. */
    public static void main(String[] arguments) {
        if (List.of(arguments).contains("--help")) {
            System.out.print(ServeCommand.USAGE);
            return;
        }
        try {
            LogOutput.start(ServeCommand.logForm(List.of(arguments), System.getenv()), Level.INFO);
            run(ServeCommand.read(List.of(arguments), System.getenv()));
        } catch (StartFailure failure) {
            System.err.println("stirtide: " + failure.getMessage());
            System.exit(failure.exitCode());
        }
    }

    /** The hook waits for the stop: a process that goes at once would cut requests off. */
    private static void run(Settings settings) {
        PlannerService service = PlannerService.start(settings);
        Runtime.getRuntime().addShutdownHook(new Thread(service::close, "stop"));
        String scheme = settings.encryption().isPresent() ? "https://" : "http://";
        System.out.println("stirtide: ready on " + scheme + settings.host() + ":" + service.port()
                + " (health and metrics on port " + service.managementPort() + ")");
    }
}
