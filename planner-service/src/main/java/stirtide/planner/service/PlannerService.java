package stirtide.planner.service;

import io.micrometer.core.instrument.config.MeterFilter;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Vertx;
import io.vertx.core.VertxOptions;
import io.vertx.core.file.FileSystemOptions;
import io.vertx.core.json.jackson.DatabindCodec;
import io.vertx.micrometer.Label;
import io.vertx.micrometer.MetricsDomain;
import io.vertx.micrometer.MicrometerMetricsFactory;
import io.vertx.micrometer.MicrometerMetricsOptions;
import io.vertx.openapi.contract.OpenAPIContract;
import java.net.BindException;
import java.util.EnumSet;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.slf4j.LoggerFactory;
import stirtide.events.command.CommandRequest;
import stirtide.events.json.ContractJson;
import stirtide.planner.cli.CommandException;
import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.http.HttpSecurity;
import stirtide.planner.http.HttpServers;

/** The service, running in this process until it is closed. */
public final class PlannerService implements AutoCloseable {
    private static final int START_SECONDS = 300;
    private static final int STOP_SECONDS = 15;

    private final Vertx vertx;
    private final CompletableFuture<DataFolder> folder;
    private final ServiceVerticle verticle;

    private PlannerService(Vertx vertx, CompletableFuture<DataFolder> folder, ServiceVerticle verticle) {
        this.vertx = vertx;
        this.folder = folder;
        this.verticle = verticle;
    }

    /**
     * Starts the service and returns when it is ready: log verified, days replayed, due events recorded, days planned.
     *
     * @throws CommandException with the reason and an exit code
     */
    public static PlannerService start(Settings settings) {
        // Before several threads ask for it.
        LoggerFactory.getILoggerFactory();
        return start(settings, StartupTask.begin("read-contract", HttpServers::contract));
    }

    /** The same, with a contract that is being read already. */
    static PlannerService start(Settings settings, CompletableFuture<OpenAPIContract> contract) {
        Optional<CommandRequest> opening = DayOpening.read(settings);
        HttpSecurity security = ExposureCheck.security(settings);
        // Opening the log, reading the contract and what Vert.x does at its start take a third of a start each.
        CompletableFuture<DataFolder> folder = StartupTask.begin("open-log", () -> DataFolder.open(settings));
        PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
        // All servers would register the same meter; "stirtide.connections" counts those of the salon's server.
        registry.config().meterFilter(MeterFilter.denyNameStartsWith("vertx.http.server.active"));
        Vertx vertx = vertx(registry);
        ServiceVerticle verticle = new ServiceVerticle(settings, security, folder, contract, registry, opening);
        PlannerService service = new PlannerService(vertx, folder, verticle);
        try {
            vertx.deployVerticle(verticle).await(START_SECONDS, TimeUnit.SECONDS);
            return service;
        } catch (Exception failed) {
            service.close();
            throw startFailure(failed, settings);
        }
    }

    private static Vertx vertx(PrometheusMeterRegistry registry) {
        MicrometerMetricsOptions metrics = new MicrometerMetricsOptions()
                .setEnabled(true)
                .setJvmMetricsEnabled(true)
                // Each server would register gauges of the same pool once more.
                .addDisabledMetricsCategory(MetricsDomain.NAMED_POOLS)
                .setLabels(EnumSet.of(Label.HTTP_ROUTE, Label.HTTP_METHOD, Label.HTTP_CODE));
        VertxOptions options = new VertxOptions()
                .setEventLoopPoolSize(1)
                .setMetricsOptions(metrics)
                // Nothing is looked up on the class path; a folder for what is found there would outlive a killed
                // service.
                .setFileSystemOptions(new FileSystemOptions()
                        .setClassPathResolvingEnabled(false)
                        .setFileCachingEnabled(false));
        // The library too reads bodies, with buffers that would keep them.
        DatabindCodec.mapper().getFactory().setRecyclerPool(ContractJson.freshBuffers());
        return Vertx.builder()
                .with(options)
                .withMetrics(new MicrometerMetricsFactory(registry))
                .build();
    }

    private static CommandException startFailure(Exception failed, Settings settings) {
        if (failed instanceof CommandException already) return already;
        if (failed instanceof LogFailure log) return CommandException.of(log);
        if (failed instanceof BindException)
            return new CommandException(
                    CommandException.UNAVAILABLE,
                    "port " + settings.port() + " or " + settings.managementPort() + " is taken; name another one");
        if (failed instanceof TimeoutException)
            return new CommandException(CommandException.UNAVAILABLE, "not ready after " + START_SECONDS + " seconds");
        throw new IllegalStateException("the service cannot start", failed);
    }

    /** Port for the salon. */
    public int port() {
        return verticle.edge().port();
    }

    /** Port for health and metrics. */
    public int managementPort() {
        return verticle.edge().managementPort();
    }

    /** Stops in order: feeds, requests in flight, steps taken on, log. Returns when all is done. */
    @Override
    public void close() {
        try {
            vertx.close().await(STOP_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException tooLong) {
            throw new IllegalStateException("the service did not stop in " + STOP_SECONDS + " seconds", tooLong);
        } finally {
            folder.thenAccept(DataFolder::close)
                    .exceptionally(neverOpened -> null)
                    .join();
        }
    }
}
