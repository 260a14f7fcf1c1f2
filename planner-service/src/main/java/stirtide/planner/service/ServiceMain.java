package stirtide.planner.service;

/** Runs the service as a process of its own. */
public final class ServiceMain {
    private ServiceMain() {}

    /** Runs until the process is told to end; ends with an exit code when the service cannot start. */
    public static void main(String[] arguments) {
        int code = ServeCommand.of(System.getenv(), ServiceMain::run).execute(arguments);
        if (code != 0) System.exit(code);
    }

    private static void run(Settings settings) {
        PlannerService service = PlannerService.start(settings);
        // The hook waits for the stop: a process that ended at once would cut requests off.
        Runtime.getRuntime().addShutdownHook(new Thread(service::close, "stop"));
        String scheme = settings.encryption().isPresent() ? "https://" : "http://";
        System.out.println("stirtide: ready on " + scheme + settings.host() + ":" + service.port()
                + " (health and metrics on port " + service.managementPort() + ")");
    }
}
