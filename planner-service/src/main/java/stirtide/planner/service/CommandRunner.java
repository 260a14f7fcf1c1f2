package stirtide.planner.service;

import io.vertx.core.AsyncResult;
import io.vertx.core.Future;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.CommandResult;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.json.ContractJson;
import stirtide.planner.day.Decider;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.eventlog.EventLog.Append;
import stirtide.planner.eventlog.EventLog.KnownCommand;
import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.http.ApiException;
import stirtide.planner.http.DayOperations.CommandAnswer;
import stirtide.planner.privacy.ClientKeys;

/** Carries out commands on a day, each exactly once. Client references are sealed once their command is not known yet. */
final class CommandRunner {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.command");

    /** Some sixty times a busy day; a replay of so many takes a few seconds. */
    private static final long MOST_EVENTS = 250_000;

    private static final Refusal DAY_FULL = new Refusal(
            "DAY_FULL", "This day holds " + MOST_EVENTS + " events, the most there may be. Accepted: closing the day.");

    private final AsyncEventLog log;
    private final ClientDataService clients;
    private final SalonClock clock;
    private final ServiceMetrics metrics;
    private final UnaryOperator<DayCommand> prepared;
    private final BiFunction<Day, DayCommand, Optional<Refusal>> objection;

    /**
     * @param prepared adds what the service itself knows to a command before it is decided
     * @param objection what the rules of the files have against a command that the day itself accepts
     */
    CommandRunner(
            AsyncEventLog log,
            ClientDataService clients,
            SalonClock clock,
            ServiceMetrics metrics,
            UnaryOperator<DayCommand> prepared,
            BiFunction<Day, DayCommand, Optional<Refusal>> objection) {
        this.log = log;
        this.clients = clients;
        this.clock = clock;
        this.metrics = metrics;
        this.prepared = prepared;
        this.objection = objection;
    }

    Future<CommandAnswer> run(DayActor actor, CommandRequest request, Optional<Long> ifMatch, Optional<String> role) {
        if (actor.busy()) return Future.failedFuture(ApiException.notNow("too much at once; try again"));
        long began = System.nanoTime();
        return actor.step(() -> runStep(actor, request, ifMatch, role))
                .recover(CommandRunner::answerFailure)
                .onComplete(done -> outcome(done)
                        .ifPresent(outcome ->
                                metrics.command(outcome).record(System.nanoTime() - began, TimeUnit.NANOSECONDS)));
    }

    /** What was accepted before is answered before anything else: the day has moved on since, rightly. */
    private Future<CommandAnswer> runStep(
            DayActor actor, CommandRequest request, Optional<Long> ifMatch, Optional<String> role) {
        return log.command(actor.name(), request.commandId()).compose(known -> {
            if (known.isPresent()) return Future.succeededFuture(again(clients.sealKnown(request), known.get()));
            return log.readOnly().isPresent()
                    ? Future.failedFuture(ApiException.readOnly())
                    : runFresh(actor, request, ifMatch, role);
        });
    }

    private static CommandAnswer again(CommandRequest request, KnownCommand known) {
        return Arrays.equals(digest(request), known.requestDigest())
                ? new CommandAnswer.Done(new CommandResult(request.commandId(), known.first(), known.last(), true))
                : new CommandAnswer.Reused();
    }

    private Future<CommandAnswer> runFresh(
            DayActor actor, CommandRequest request, Optional<Long> ifMatch, Optional<String> role) {
        Instant now = clock.now();
        return actor.noteDue(now).compose(noted -> {
            long revision = actor.day().revision();
            if (ifMatch.isPresent() && ifMatch.get() != revision)
                return Future.succeededFuture(new CommandAnswer.Stale(revision));
            if (revision >= MOST_EVENTS && !(request.command() instanceof DayCommand.CloseDay)) return refuse(DAY_FULL);
            // From sealing to keeping nothing waits: another day could give the same id meanwhile.
            ClientKeys.Sealed sealed = clients.seal(request);
            CommandRequest safe = sealed.request();
            Decision decision =
                    Decider.decide(actor.day(), prepared.apply(safe.command()), new CommandContext(now, safe.actor()));
            if (decision instanceof Decision.Refused refused) return refuse(refused.refusal());
            Optional<Refusal> against = objection.apply(actor.day(), safe.command());
            if (against.isPresent()) return refuse(against.get());
            List<DayEvent> events = ((Decision.Accepted) decision).events();
            return clients.keep(sealed)
                    .compose(kept -> actor.append(events, now, safe, digest(safe), role))
                    .map(answer -> answer(safe, answer));
        });
    }

    private static Future<CommandAnswer> refuse(Refusal refusal) {
        return Future.succeededFuture(new CommandAnswer.Refused(refusal.code(), refusal.sentence()));
    }

    private static CommandAnswer answer(CommandRequest request, Append append) {
        if (append instanceof Append.Appended now)
            return new CommandAnswer.Done(new CommandResult(request.commandId(), now.first(), now.last(), false));
        if (append instanceof Append.Repeated before)
            return new CommandAnswer.Done(new CommandResult(request.commandId(), before.first(), before.last(), true));
        return new CommandAnswer.Reused();
    }

    /** A refused reference as an answer, a failure of the log as the sender gets it. */
    static Future<CommandAnswer> answerFailure(Throwable failed) {
        if (failed instanceof ClientKeys.Refused refused)
            return Future.succeededFuture(new CommandAnswer.Refused(refused.code(), refused.sentence()));
        if (failed instanceof LogFailure log) LOG.warn("command not stored: {}", log.getMessage());
        return Future.failedFuture(LogFailures.forSender(failed));
    }

    /** Value of the metrics' label; empty for a defect of the service. */
    private static Optional<String> outcome(AsyncResult<CommandAnswer> done) {
        if (done.cause() instanceof ApiException refused)
            return Optional.of(refused.isReadOnly() ? "read_only" : "not_now");
        if (done.failed()) return Optional.empty();
        if (done.result() instanceof CommandAnswer.Done stored)
            return Optional.of(stored.result().repeated() ? "repeated" : "accepted");
        return Optional.of(done.result() instanceof CommandAnswer.Refused ? "refused" : "not_matching");
    }

    /** Over the request as the contract writes it: white space and the order of names do not matter. */
    private static byte[] digest(CommandRequest request) {
        try {
            return MessageDigest.getInstance("SHA-256")
                    .digest(ContractJson.write(request).getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
