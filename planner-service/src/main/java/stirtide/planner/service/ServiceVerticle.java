package stirtide.planner.service;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Future;
import io.vertx.core.VerticleBase;
import io.vertx.openapi.contract.OpenAPIContract;
import java.util.Collection;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.events.command.CommandRequest;
import stirtide.planner.cli.CommandException;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.SqliteEventLog;
import stirtide.planner.http.AdminServer;
import stirtide.planner.http.DayOperations.CommandAnswer;
import stirtide.planner.http.HttpSecurity;
import stirtide.planner.http.HttpServers;
import stirtide.planner.http.Readiness;

/** Everything that runs on the service's one context. */
final class ServiceVerticle extends VerticleBase {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.service");

    private static final long PLACE_CHECK_MILLIS = 1000;

    private final Settings settings;
    private final HttpSecurity security;
    private final CompletableFuture<DataFolder> folder;
    private final CompletableFuture<OpenAPIContract> contract;
    private final PrometheusMeterRegistry registry;
    private final Optional<CommandRequest> opening;
    private volatile boolean ready;
    private volatile long newestRevisions;
    private volatile int knownDays;
    private volatile @Nullable EventLog log;
    private volatile @Nullable HttpServers edge;
    private @Nullable DayService days;
    private @Nullable AdminServer admin;

    ServiceVerticle(
            Settings settings,
            HttpSecurity security,
            CompletableFuture<DataFolder> folder,
            CompletableFuture<OpenAPIContract> contract,
            PrometheusMeterRegistry registry,
            Optional<CommandRequest> opening) {
        this.settings = settings;
        this.security = security;
        this.folder = folder;
        this.contract = contract;
        this.registry = registry;
        this.opening = opening;
    }

    /** The servers, once started. */
    HttpServers edge() {
        return Objects.requireNonNull(edge, "asked before the start was over");
    }

    @Override
    public Future<?> start() {
        return Future.fromCompletionStage(folder, context).compose(this::serve);
    }

    private Future<?> serve(DataFolder opened) {
        log = opened.log();
        ServiceMetrics metrics = new ServiceMetrics(registry);
        AsyncEventLog asyncLog = new AsyncEventLog(vertx, opened.log(), metrics.append());
        PlanningExecutor planning = new PlanningExecutor(vertx, settings.planRounds(), metrics);
        DayService service = new DayService(vertx, asyncLog, opened, clock(), planning, metrics);
        days = service;
        measure(service, opened.log());
        vertx.setPeriodic(PLACE_CHECK_MILLIS, timer -> asyncLog.checkPlace());
        return service.resume()
                .compose(resumed -> open(service))
                .compose(shown -> HttpServers.start(
                        vertx,
                        address(),
                        security,
                        service,
                        registry,
                        this::state,
                        Future.fromCompletionStage(contract, context)))
                .compose(started -> {
                    edge = started;
                    return startAdmin(service);
                })
                .onSuccess(started -> {
                    ready = true;
                    service.verifyClosedDays()
                            .onFailure(failed -> LOG.warn("closed days are not verified: {}", failed.getMessage()));
                });
    }

    private void measure(DayService days, SqliteEventLog opened) {
        Gauge.builder("stirtide.anchor.whole", () -> opened.anchorLoss().isPresent() ? 0 : 1)
                .description(
                        "0 when the file anchor was lost or torn before the start, so that missing ends do not show")
                .register(registry);
        Gauge.builder("stirtide.events", () -> newestRevisions)
                .description("Events in the log, all days together")
                .register(registry);
        Gauge.builder("stirtide.days", () -> knownDays)
                .description("Days in the log")
                .register(registry);
        Gauge.builder("stirtide.days.whole", days, DayService::loadedDays)
                .description("Days whole in memory; the others are read when somebody asks")
                .register(registry);
        Gauge.builder("stirtide.storing", () -> state() == Readiness.READY ? 1 : 0)
                .description("1 while commands can be stored, 0 while starting, stopping or read only")
                .register(registry);
        days.onChange(() -> {
            Collection<Long> revisions = days.revisions().values();
            knownDays = revisions.size();
            newestRevisions = revisions.stream().mapToLong(Long::longValue).sum();
        });
    }

    /** Not every folder takes a socket; without one the commands of the operator need a stopped service. */
    private Future<Void> startAdmin(DayService service) {
        return AdminServer.start(vertx, settings.data(), service)
                .onSuccess(started -> admin = started)
                .onFailure(failed ->
                        LOG.warn("no backups while running, the data folder takes no socket: {}", failed.getMessage()))
                .<Void>mapEmpty()
                .otherwiseEmpty();
    }

    private Readiness state() {
        if (!ready) return Readiness.NOT_READY;
        EventLog opened = Objects.requireNonNull(log, "ready without a log");
        return opened.readOnly().isPresent() ? Readiness.READ_ONLY : Readiness.READY;
    }

    private SalonClock clock() {
        return settings.drivenFrom()
                .<SalonClock>map(start -> new DrivenClock(start, settings.ratePermille()))
                .orElseGet(WallClock::new);
    }

    private HttpServers.Address address() {
        return new HttpServers.Address(settings.host(), settings.port(), settings.managementPort());
    }

    private Future<Void> open(DayService days) {
        if (opening.isEmpty() || days.readOnly().isPresent()) return Future.succeededFuture();
        String day = DayOpening.day(opening.get());
        if (days.revisions().containsKey(day)) {
            LOG.info("{} is open already; its files were not read into it again", day);
            return Future.succeededFuture();
        }
        return days.command(day, opening.get(), Optional.empty(), Optional.empty())
                .recover(failed -> Future.failedFuture(notOpened(day, String.valueOf(failed.getMessage()))))
                .compose(answer -> {
                    if (answer instanceof CommandAnswer.Done) return days.settled();
                    return Future.failedFuture(notOpened(
                            day,
                            answer instanceof CommandAnswer.Refused refused ? refused.sentence() : answer.toString()));
                });
    }

    private static CommandException notOpened(String day, String reason) {
        return new CommandException(CommandException.BAD_INPUT, day + " cannot be opened: " + reason);
    }

    @Override
    public Future<?> stop() {
        ready = false;
        Future<Void> closed = admin == null ? Future.succeededFuture() : admin.stop();
        return closed.eventually(() -> edge == null ? Future.succeededFuture() : edge().stop())
                .eventually(() -> days == null ? Future.succeededFuture() : days.stop());
    }
}
