package stirtide.planner.service;

import io.vertx.openapi.contract.OpenAPIContract;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.slf4j.LoggerFactory;
import stirtide.planner.http.HttpServers;

/** Runs the service as a process of its own. */
public final class ServiceMain {
    private ServiceMain() {}

    /** Runs until the process is told to end; ends with an exit code when the service cannot start. */
    public static void main(String[] arguments) {
        // Before several threads ask for it.
        LoggerFactory.getILoggerFactory();
        // Loading the parser takes a good part of a start: its classes are too old for the archive of parsed classes.
        CompletableFuture<OpenAPIContract> contract = StartupTask.begin("read-contract", HttpServers::contract);
        int code = ServeCommand.of(List.of(arguments), System.getenv(), settings -> run(settings, contract))
                .execute(arguments);
        if (code != 0) System.exit(code);
    }

    private static void run(Settings settings, CompletableFuture<OpenAPIContract> contract) {
        PlannerService service = PlannerService.start(settings, contract);
        // The hook waits for the stop: a process that ended at once would cut requests off.
        Runtime.getRuntime().addShutdownHook(new Thread(service::close, "stop"));
        String scheme = settings.encryption().isPresent() ? "https://" : "http://";
        System.out.println("stirtide: ready on " + scheme + settings.host() + ":" + service.port()
                + " (health and metrics on port " + service.managementPort() + ")");
    }
}
