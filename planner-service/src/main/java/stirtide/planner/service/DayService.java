package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.command.DayCommand.ChangeSetup;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.setup.SetupChangeRules;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.http.ApiException;
import stirtide.planner.http.DayOperations;
import stirtide.planner.planning.whatif.WhatIfAnswer;
import stirtide.planner.planning.whatif.WhatIfQuestion;
import stirtide.planner.salonfiles.SetupCheck;

/** The operations of the planner, on all days. Everything in it happens on one context. */
final class DayService implements DayOperations {
    /** After a longer stop only the last hours are gone through plan by plan: the others were never acted on. */
    private static final Duration CATCH_UP_WITH_PLANS = Duration.ofHours(2);

    private final AsyncEventLog log;
    private final SalonClock clock;
    private final PlanningExecutor planning;
    private final DayRegistry days;
    private final ClientDataService clients;
    private final DayCommands commands;
    private final CatchUp catchUp;
    private final DueEventScheduler due;
    private final ClockControl clockControl;
    private final RequestCoalescer coalescer;
    private final LogCopier copier;
    private Runnable onChange = () -> {};

    DayService(
            Vertx vertx,
            AsyncEventLog log,
            DataFolder folder,
            SalonClock clock,
            PlanningExecutor planning,
            ServiceMetrics metrics) {
        this.log = log;
        this.clock = clock;
        this.planning = planning;
        ClosedDaySummaries summaries = new ClosedDaySummaries(vertx, log, folder.closedDays());
        this.days = new DayRegistry(log, summaries, clock, actor -> prepared(vertx, actor));
        this.clients = new ClientDataService(vertx, folder.clients(), days);
        OpeningHistory history = new OpeningHistory(days);
        this.commands = new DayCommands(
                days,
                history,
                new CommandRunner(
                        log,
                        clients,
                        clock,
                        metrics,
                        command -> command instanceof OpenDay open ? history.withHistory(open) : command,
                        DayService::filesObjection));
        this.catchUp = new CatchUp(clock, days);
        this.due = new DueEventScheduler(vertx, clock, days::loaded);
        this.clockControl = new ClockControl(clock, catchUp, this::clockChanged);
        this.coalescer = new RequestCoalescer(vertx);
        this.copier = new LogCopier(log, folder.log());
    }

    private LoadedDay prepared(Vertx vertx, DayActor actor) {
        LoadedDay day = new LoadedDay(actor, new PlanRunner(vertx, actor, planning));
        actor.listen(due::arrange);
        actor.listen(() -> onChange.run());
        return day;
    }

    /** A changed setup is checked against the rules of the files, by the code that reads the files. */
    private static Optional<Refusal> filesObjection(Day day, DayCommand command) {
        if (!(command instanceof ChangeSetup change)) return Optional.empty();
        return SetupCheck.objection(SetupChangeRules.inForce(day), SetupChangeRules.changed(day, change.piece()))
                .map(sentence -> new Refusal("SETUP_INVALID", sentence));
    }

    /** Number of days in memory; may be called on any thread. */
    int loadedDays() {
        return days.loadedCount();
    }

    /** Calls this after every change of any day. */
    void onChange(Runnable action) {
        onChange = action;
    }

    /** Verifies the events of the days that the start has not read. */
    Future<Void> verifyClosedDays() {
        return days.evicted().verify();
    }

    /** Completes when all days are planned. */
    Future<Void> settled() {
        return catchUp.settled();
    }

    /** Replays every day, then records what fell due while the service was down, with plans drawn again. */
    Future<Void> resume() {
        return days.readAll().compose(read -> log.readOnly().isPresent() ? standStill() : catchUp());
    }

    private Future<Void> catchUp() {
        if (clock instanceof DrivenClock driven) days.newestTime().ifPresent(driven::moveTo);
        Instant now = clock.now();
        return catchUp.walk(now, now.minus(CATCH_UP_WITH_PLANS))
                .compose(caughtUp -> {
                    clients.giveFreshIds();
                    return clients.eraseAgain();
                })
                .onSuccess(caughtUp -> {
                    days.evictPassed();
                    due.arrange();
                });
    }

    /** Days are shown as far as they can be read; nothing falls due, for nothing can be stored. */
    private Future<Void> standStill() {
        due.stop();
        days.loaded().forEach(day -> day.plans().stop());
        return Future.succeededFuture();
    }

    /** Why nothing can be stored any more; empty while all is well. */
    Optional<String> readOnly() {
        return log.readOnly();
    }

    @Override
    public String shown(String text) {
        return clients.shown(text);
    }

    @Override
    public Future<Optional<String>> exportClient(String reference, Optional<String> salon) {
        return clients.export(reference, salon).recover(failed -> Future.failedFuture(LogFailures.forSender(failed)));
    }

    @Override
    public Future<Boolean> eraseClient(String reference) {
        if (log.readOnly().isPresent()) return Future.failedFuture(ApiException.readOnly());
        return clients.erase(reference, clock.now())
                .recover(failed -> Future.failedFuture(LogFailures.forSender(failed)));
    }

    @Override
    public Future<Void> backup(Path file) {
        return copier.copyTo(file);
    }

    @Override
    public Future<Void> load(String day) {
        return days.load(day);
    }

    @Override
    public Future<CommandAnswer> command(
            String day, CommandRequest request, Optional<Long> ifMatch, Optional<String> role) {
        return commands.run(day, request, ifMatch, role);
    }

    @Override
    public Optional<ShownDay> show(String day, View view) {
        return day(day).map(state -> view == View.DAY
                ? coalescer.answer(
                        List.of(day, state.revision()), () -> DayQueries.view(state, clock.now(), clock.ratePermille()))
                : DayQueries.show(state, view));
    }

    @Override
    public QueryAnswer nextPour(String day, String bowl, String poured) {
        return day(day).map(state -> DayQueries.nextPour(state, bowl, poured)).orElseGet(QueryAnswer.UnknownDay::new);
    }

    @Override
    public QueryAnswer visits(String day, int service, Optional<LocalDate> first, Optional<LocalDate> second) {
        return day(day).map(state -> DayQueries.visits(state, service, first, second))
                .orElseGet(QueryAnswer.UnknownDay::new);
    }

    private Optional<Day> day(String name) {
        return days.opened(name).map(LoadedDay::day);
    }

    @Override
    public SortedMap<String, Long> revisions() {
        return days.revisions();
    }

    @Override
    public Future<List<StoredEvent>> events(String day, long after, int limit) {
        long newest = day(day).map(Day::revision).orElse(Long.MAX_VALUE);
        // Nothing is read for a listener who has everything: a thousand who reconnect at once would delay commands.
        if (after == newest) return Future.succeededFuture(List.of());
        return coalescer.answer(List.of(day, newest, after, limit), () -> log.read(day, after, limit));
    }

    @Override
    public Runnable listen(String day, Runnable listener) {
        return days.opened(day).map(loaded -> loaded.actor().follow(listener)).orElse(() -> {});
    }

    @Override
    public Future<Optional<WhatIfAnswer>> whatIf(String day, WhatIfQuestion question) {
        return day(day).map(
                        state -> planning.ask(day, state, question, clock.now()).map(Optional::of))
                .orElse(Future.succeededFuture(Optional.empty()));
    }

    @Override
    public ClockReading clock() {
        return clockControl.reading();
    }

    @Override
    public Optional<ClockReading> setRate(int ratePermille) {
        return clockControl.setRate(ratePermille);
    }

    @Override
    public Future<Optional<ClockReading>> advance(Instant to) {
        return clockControl.advance(to);
    }

    private void clockChanged() {
        coalescer.forget();
        due.arrange();
        days.loaded().forEach(day -> day.actor().announce());
    }

    /** Lets every step that was taken on come to its end. */
    Future<Void> stop() {
        due.stop();
        return Future.join(days.loaded().stream().map(day -> day.plans().stop()).toList())
                .eventually(() -> Future.join(
                        days.loaded().stream().map(day -> day.actor().drained()).toList()))
                .mapEmpty();
    }
}
