package stirtide.planner.service;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Future;
import io.vertx.core.VerticleBase;
import io.vertx.openapi.contract.OpenAPIContract;
import java.io.IOException;
import java.util.Collection;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.events.command.CommandRequest;
import stirtide.planner.admin.AdminServer;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.http.DayOperations.CommandAnswer;
import stirtide.planner.http.HttpSecurity;
import stirtide.planner.http.HttpServers;
import stirtide.planner.http.Readiness;

/** Everything that runs on the service's one context. */
final class ServiceVerticle extends VerticleBase {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.service");

    private final Settings settings;
    private final HttpSecurity door;
    private final CompletableFuture<DataFolder> folder;
    private final CompletableFuture<OpenAPIContract> contract;
    private final PrometheusMeterRegistry registry;
    private final Optional<CommandRequest> opening;
    private volatile boolean ready;
    private volatile long newestRevisions;
    private volatile int knownDays;
    private volatile @Nullable EventLog log;
    private volatile @Nullable HttpServers edge;
    private @Nullable DayService room;
    private @Nullable AdminServer errands;

    ServiceVerticle(
            Settings settings,
            HttpSecurity door,
            CompletableFuture<DataFolder> folder,
            CompletableFuture<OpenAPIContract> contract,
            PrometheusMeterRegistry registry,
            Optional<CommandRequest> opening) {
        this.settings = settings;
        this.door = door;
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
        ServiceMetrics meters = new ServiceMetrics(registry);
        AsyncEventLog logThread = new AsyncEventLog(vertx, opened.log(), meters.append());
        PlanningExecutor drawing = PlanningExecutor.of(vertx, settings.planRounds(), meters);
        DayService days =
                new DayService(vertx, logThread, opened.restingDays(), clock(), drawing, meters, opened.clients());
        room = days;
        measure(days);
        return days.resume()
                .compose(resumed -> open(days))
                .compose(shown -> HttpServers.start(
                        vertx,
                        address(),
                        door,
                        days,
                        registry,
                        this::state,
                        Future.fromCompletionStage(contract, context)))
                .onSuccess(started -> {
                    edge = started;
                    openErrands(new AdminRequests(context, logThread, opened.log(), days));
                    ready = true;
                    days.check().onFailure(failed -> LOG.warn("closed days are not verified: {}", failed.getMessage()));
                });
    }

    private void measure(DayService days) {
        Gauge.builder("stirtide.events", () -> newestRevisions)
                .description("Events in the log, all days together")
                .register(registry);
        Gauge.builder("stirtide.days", () -> knownDays)
                .description("Days in the log")
                .register(registry);
        Gauge.builder("stirtide.days.whole", days, DayService::whole)
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

    /** Not every place takes a socket; without one the care command waits for a stopped service. */
    private void openErrands(AdminRequests desk) {
        try {
            errands = AdminServer.open(settings.data().toAbsolutePath(), desk::answer);
        } catch (IOException noSocket) {
            LOG.warn("no backups while running, the data folder takes no socket: {}", noSocket.getMessage());
        }
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
                .compose(answer -> {
                    if (answer instanceof CommandAnswer.Done) return days.settled();
                    String reason =
                            answer instanceof CommandAnswer.Refused refused ? refused.sentence() : answer.toString();
                    return Future.failedFuture(
                            new StartFailure(StartFailure.BAD_INPUT, day + " cannot be opened: " + reason));
                });
    }

    @Override
    public Future<?> stop() {
        ready = false;
        if (errands != null) errands.close();
        Future<Void> closed = edge == null ? Future.succeededFuture() : edge().stop();
        return closed.eventually(() -> room == null ? Future.succeededFuture() : room.stop());
    }
}
