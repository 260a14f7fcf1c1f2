package stirtide.planner.service;

import io.vertx.openapi.contract.OpenAPIContract;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import org.slf4j.LoggerFactory;
import stirtide.planner.http.HttpServers;

/** Runs the service as a process of its own. */
public final class ServiceMain {
    private ServiceMain() {}

    /** Runs until the process is stopped; ends with an exit code when the service cannot start. */
    public static void main(String[] arguments) {
        // Before several threads ask for it.
        LoggerFactory.getILoggerFactory();
        CompletableFuture<OpenAPIContract> contract = StartupTask.begin("read-contract", HttpServers::contract);
        Consumer<Settings> service = settings -> run(settings, contract);
        List<String> options = List.of(arguments);
        int code = ServeCommand.runWellFormed(options, System.getenv(), service)
                .orElseGet(
                        () -> ServeCommand.of(options, System.getenv(), service).execute(arguments));
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
