package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
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
import stirtide.planner.privacy.ClientKeys;
import stirtide.planner.salonfiles.SetupCheck;
import stirtide.planner.service.DayRegistry.KeptDay;

/** All days of the service. Everything in it happens on one context. */
final class DayService implements DayOperations {
    /** After a longer rest only the last hours are gone through plan by plan: nobody acted on the others. */
    private static final Duration CATCH_UP_WITH_PLANS = Duration.ofHours(2);

    /** Every few minutes something falls due on a day that was left open: a longer way would take hours. */
    private static final Duration FARTHEST = Duration.ofDays(7);

    private final ClientDataService clients;
    private final AsyncEventLog log;
    private final SalonClock clock;
    private final CommandRunner commands;
    private final PlanningExecutor drawing;
    private final DueEventScheduler ticks;
    private final CatchUp due;
    private final SerialQueue advances = new SerialQueue();
    private final DayRegistry days;
    private final RequestCoalescer atOnce;
    private Runnable onChange = () -> {};

    DayService(
            Vertx vertx,
            AsyncEventLog log,
            ClosedDayCache file,
            SalonClock clock,
            PlanningExecutor drawing,
            ServiceMetrics meters,
            ClientKeys clients) {
        this.days =
                new DayRegistry(vertx, log, file, clock, keeper -> new PlanRunner(vertx, keeper, drawing), this::heard);
        this.clients = new ClientDataService(vertx, clients, days);
        this.log = log;
        this.atOnce = new RequestCoalescer(vertx);
        this.clock = clock;
        this.commands = new CommandRunner(log, clock, meters, this::learned, DayService::filesObjection);
        this.drawing = drawing;
        this.ticks = new DueEventScheduler(vertx, clock, days::all);
        this.due = new CatchUp(clock, days);
    }

    private KeptDay heard(KeptDay kept) {
        kept.keeper().listen(ticks::arrange);
        kept.keeper().listen(() -> onChange.run());
        return kept;
    }

    /** How many days are whole in memory; may be asked on any thread. */
    int whole() {
        return days.whole();
    }

    /** Calls this after every change of any day. */
    void onChange(Runnable action) {
        onChange = action;
    }

    /** Verifies what the start has not read. */
    Future<Void> check() {
        return days.check();
    }

    /** Completes when all days are planned. */
    Future<Void> settled() {
        return due.settled();
    }

    /** Replays every day, then lets happen what fell due while nobody was looking, plans drawn again included. */
    Future<Void> resume() {
        return days.readAll().compose(read -> log.readOnly().isPresent() ? standStill() : catchUp());
    }

    private Future<Void> catchUp() {
        if (clock instanceof DrivenClock driven) days.newestTime().ifPresent(driven::moveTo);
        Instant now = clock.now();
        return due.walk(now, now.minus(CATCH_UP_WITH_PLANS))
                .compose(caughtUp -> clients.eraseAgain())
                .onSuccess(caughtUp -> {
                    days.layPassedToRest();
                    ticks.arrange();
                });
    }

    /** Days are shown as far as they can be read; nothing falls due, for nothing can be noted. */
    private Future<Void> standStill() {
        ticks.stop();
        days.all().forEach(kept -> kept.plans().stop());
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
    public Future<Optional<String>> clientRecord(String reference, Optional<String> salon) {
        return clients.record(reference, salon);
    }

    @Override
    public Future<Boolean> eraseClient(String reference) {
        if (log.readOnly().isPresent()) return Future.failedFuture(ApiException.readOnly());
        return clients.erase(reference, clock.now());
    }

    @Override
    public Future<Void> atHand(String day) {
        return days.atHand(day);
    }

    @Override
    public Future<CommandAnswer> command(
            String day, CommandRequest request, Optional<Long> ifMatch, Optional<String> role) {
        if (!(request.command() instanceof OpenDay open)) return commandAtHand(day, request, ifMatch, role);
        // The newest day before it teaches it and must stay whole until it is open.
        Optional<String> newest = days.newestBefore(open);
        return newest.map(days::atHand)
                .orElse(Future.succeededFuture())
                .recover(unreadable -> Future.succeededFuture())
                .compose(read -> {
                    Runnable letGo = newest.map(name -> listen(name, () -> {})).orElse(() -> {});
                    return commandAtHand(day, request, ifMatch, role).onComplete(done -> {
                        letGo.run();
                        days.layPassedToRest();
                    });
                });
    }

    private Future<CommandAnswer> commandAtHand(
            String day, CommandRequest request, Optional<Long> ifMatch, Optional<String> role) {
        return days.atHand(day).compose(read -> {
            Optional<KeptDay> known = days.find(day);
            if (known.isEmpty() && !(request.command() instanceof OpenDay))
                return Future.succeededFuture(new CommandAnswer.Unknown());
            KeptDay kept = known.orElseGet(() -> days.keep(day));
            Runnable letGo = kept.keeper().follow(() -> {});
            return Future.<CommandRequest>future(
                            sealing -> clients.sealed(request).onComplete(sealing))
                    .compose(safe -> commands.run(kept.keeper(), safe, ifMatch, role))
                    .recover(CommandRunner::answerFailure)
                    .onComplete(done -> {
                        letGo.run();
                        days.dropUnopened(day, kept);
                    });
        });
    }

    @Override
    public Optional<ShownDay> show(String day) {
        return day(day).map(state -> atOnce.answer(
                List.of(day, state.revision()), () -> DayQueries.view(state, clock.now(), clock.ratePermille())));
    }

    @Override
    public PourAnswer nextPour(String day, String bowl, String poured) {
        return day(day).map(state -> DayQueries.nextPour(state, bowl, poured)).orElseGet(PourAnswer.Unknown::new);
    }

    @Override
    public Optional<ShownDay> grams(String day) {
        return day(day).map(DayQueries::grams);
    }

    @Override
    public Optional<ShownDay> swatches(String day) {
        return day(day).map(DayQueries::swatches);
    }

    @Override
    public VisitsAnswer visits(String day, int service, Optional<LocalDate> first, Optional<LocalDate> second) {
        return day(day).map(state -> DayQueries.visits(state, service, first, second))
                .orElseGet(VisitsAnswer.Unknown::new);
    }

    @Override
    public Optional<ShownDay> setup(String day) {
        return day(day).map(DayQueries::setup);
    }

    /** A day that is opened learns from the days before it; the event carries what it learned. */
    private DayCommand learned(DayCommand command) {
        return command instanceof OpenDay open ? days.taught(open) : command;
    }

    /** A piece changed at a terminal is held against the rules of the files, by the code that reads the files. */
    private static Optional<Refusal> filesObjection(Day day, DayCommand command) {
        if (!(command instanceof ChangeSetup change)) return Optional.empty();
        return SetupCheck.objection(SetupChangeRules.inForce(day), SetupChangeRules.changed(day, change.piece()))
                .map(sentence -> new Refusal("SETUP_INVALID", sentence));
    }

    private Optional<Day> day(String name) {
        return days.opened(name).map(KeptDay::day);
    }

    @Override
    public SortedMap<String, Long> revisions() {
        return days.revisions();
    }

    @Override
    public Future<List<StoredEvent>> events(String day, long after, int limit) {
        long newest = day(day).map(Day::revision).orElse(Long.MAX_VALUE);
        // Whoever has everything needs no reading: a thousand who come back at once would keep commands from the log.
        if (after == newest) return Future.succeededFuture(List.of());
        return atOnce.answer(List.of(day, newest, after, limit), () -> log.read(day, after, limit));
    }

    @Override
    public Runnable listen(String day, Runnable listener) {
        return days.opened(day).map(kept -> kept.keeper().follow(listener)).orElse(() -> {});
    }

    @Override
    public Future<Optional<WhatIfAnswer>> whatIf(String day, WhatIfQuestion question) {
        return day(day).map(state -> drawing.ask(state, question, clock.now()))
                .map(answer -> answer.map(Optional::of))
                .orElse(Future.succeededFuture(Optional.empty()));
    }

    @Override
    public ClockReading clock() {
        return new ClockReading(clock.now(), clock.ratePermille(), clock instanceof DrivenClock);
    }

    @Override
    public Optional<ClockReading> setRate(int ratePermille) {
        if (!(clock instanceof DrivenClock driven)) return Optional.empty();
        driven.setRate(ratePermille);
        clockChanged();
        return Optional.of(clock());
    }

    private void clockChanged() {
        atOnce.forget();
        ticks.arrange();
        days.all().forEach(kept -> kept.keeper().announce());
    }

    @Override
    public Future<Optional<ClockReading>> advance(Instant to) {
        if (!(clock instanceof DrivenClock driven)) return Future.succeededFuture(Optional.empty());
        if (to.isAfter(clock.now().plus(FARTHEST)))
            return Future.failedFuture(ApiException.conflict("CLOCK_TOO_FAR", "the clock is moved seven days at most"));
        if (advances.full()) return Future.failedFuture(ApiException.notNow("too many wait for the clock; try again"));
        return advances.add(() -> due.walk(to, Instant.MIN))
                .recover(LogFailureMapping::declined)
                .map(done -> {
                    driven.moveTo(to);
                    clockChanged();
                    return Optional.of(clock());
                });
    }

    /** Lets every step that was taken on come to its end. */
    Future<Void> stop() {
        ticks.stop();
        return Future.join(days.all().stream().map(kept -> kept.plans().stop()).toList())
                .eventually(() -> Future.join(
                        days.all().stream().map(kept -> kept.keeper().drained()).toList()))
                .mapEmpty();
    }
}
