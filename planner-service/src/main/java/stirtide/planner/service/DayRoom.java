package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.command.DayCommand.ChangeSetup;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.day.Booking;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.ContractJson;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.UseHistory;
import stirtide.events.view.SetupView;
import stirtide.planner.client.ClientKeys;
import stirtide.planner.day.BowlState;
import stirtide.planner.day.Day;
import stirtide.planner.day.PastUses;
import stirtide.planner.day.Refusal;
import stirtide.planner.day.ServiceState;
import stirtide.planner.day.SetupChangeRules;
import stirtide.planner.day.SetupGaps;
import stirtide.planner.day.Ticker;
import stirtide.planner.files.SetupCheck;
import stirtide.planner.files.SetupFiles;
import stirtide.planner.http.DayDesk;
import stirtide.planner.http.Declined;
import stirtide.planner.view.DayViews;
import stirtide.planner.view.GramsViews;
import stirtide.planner.view.PourAdvices;
import stirtide.planner.view.SwatchViews;
import stirtide.planner.view.VisitsViews;
import stirtide.planner.whatif.WhatIfAnswer;
import stirtide.planner.whatif.WhatIfQuestion;

/** All days of the service. Everything in it happens on one context. */
final class DayRoom implements DayDesk {
    /** After a longer rest only the last hours are gone through plan by plan: nobody acted on the others. */
    private static final Duration CATCH_UP_WITH_PLANS = Duration.ofHours(2);

    /** Every few minutes something falls due on a day that was left open: a longer way would take hours. */
    private static final Duration FARTHEST = Duration.ofDays(7);

    /** Some months of a busy bar; more would make the opening of a day large and teach little. */
    private static final int MOST_USES = 1000;

    private final Vertx vertx;
    private final ClientDesk clients;
    private final LogThread log;
    private final SalonClock clock;
    private final CommandRunner commands;
    private final PlanRunner.Drawing drawing;
    private final TickRunner ticks;
    private final SerialQueue advances = new SerialQueue();
    private final SortedMap<String, KeptDay> days = new TreeMap<>();
    private Runnable onChange = () -> {};

    /** A day with the one who has its plans drawn. */
    record KeptDay(DayKeeper keeper, PlanRunner plans) {
        Future<Void> settled() {
            return plans.settled();
        }

        Optional<Instant> nextAt() {
            return Ticker.nextAt(keeper.day());
        }
    }

    DayRoom(
            Vertx vertx,
            LogThread log,
            SalonClock clock,
            PlanRunner.Drawing drawing,
            Meters meters,
            ClientKeys clients) {
        this.clients = new ClientDesk(vertx, clients, this::openedDays);
        this.vertx = vertx;
        this.log = log;
        this.clock = clock;
        this.commands = new CommandRunner(log, clock, meters, this::learned, DayRoom::filesObjection);
        this.drawing = drawing;
        this.ticks = new TickRunner(vertx, clock, this::kept);
    }

    private Collection<KeptDay> kept() {
        return List.copyOf(days.values());
    }

    /** Calls this after every change of any day. */
    void onChange(Runnable action) {
        onChange = action;
    }

    /** Completes when all plans are drawn. */
    Future<Void> settled() {
        return Future.join(kept().stream().map(KeptDay::settled).toList()).mapEmpty();
    }

    /** Replays every day, then lets happen what fell due while nobody was looking, plans drawn again included. */
    Future<Void> resume() {
        return log.days()
                .compose(names -> Future.join(
                        names.stream().map(name -> keep(name).keeper().readOn()).toList()))
                .compose(read -> log.readOnly().isPresent() ? standStill() : catchUp());
    }

    private Future<Void> catchUp() {
        if (clock instanceof DrivenClock driven) newestTime().ifPresent(driven::moveTo);
        Instant now = clock.now();
        return runTo(now, now.minus(CATCH_UP_WITH_PLANS))
                .compose(caughtUp -> clients.eraseAgain())
                .onSuccess(caughtUp -> ticks.arrange());
    }

    /** Days are shown as far as they can be read; nothing falls due, for nothing can be noted. */
    private Future<Void> standStill() {
        ticks.stop();
        kept().forEach(kept -> kept.plans().stop());
        return Future.succeededFuture();
    }

    /** Why nothing can be stored any more; empty while all is well. */
    Optional<String> readOnly() {
        return log.readOnly();
    }

    private Collection<DayKeeper> openedDays() {
        return kept().stream()
                .map(KeptDay::keeper)
                .filter(keeper -> keeper.day().revision() > 0)
                .toList();
    }

    @Override
    public String shown(String text) {
        return clients.shown(text);
    }

    @Override
    public Optional<String> clientRecord(String reference, Optional<String> salon) {
        return clients.record(reference, salon);
    }

    @Override
    public Future<Boolean> eraseClient(String reference) {
        if (log.readOnly().isPresent()) return Future.failedFuture(Declined.readOnly());
        return clients.erase(reference, clock.now());
    }

    private Optional<Instant> newestTime() {
        return kept().stream().map(kept -> kept.keeper().day().time()).max(Instant::compareTo);
    }

    private KeptDay keep(String name) {
        return days.computeIfAbsent(name, fresh -> {
            DayKeeper keeper = new DayKeeper(fresh, log);
            KeptDay kept = new KeptDay(keeper, new PlanRunner(vertx, keeper, drawing));
            keeper.listen(ticks::arrange);
            keeper.listen(() -> onChange.run());
            return kept;
        });
    }

    @Override
    public Future<CommandAnswer> command(
            String day, CommandRequest request, Optional<Long> ifMatch, Optional<String> role) {
        boolean opens = request.command() instanceof OpenDay;
        Optional<KeptDay> known = Optional.ofNullable(days.get(day));
        if (known.isEmpty() && !opens) return Future.succeededFuture(new CommandAnswer.Unknown());
        KeptDay kept = known.orElseGet(() -> keep(day));
        return Future.<CommandRequest>future(sealing -> clients.sealed(request).onComplete(sealing))
                .compose(safe -> commands.run(kept.keeper(), safe, ifMatch, role))
                .recover(CommandRunner::answerFailure)
                .onComplete(done -> {
                    if (kept.keeper().day().revision() == 0) days.remove(day, kept);
                });
    }

    @Override
    public Optional<ShownDay> show(String day) {
        return opened(day)
                .map(kept -> new ShownDay(
                        kept.keeper().day().revision(),
                        ContractJson.write(DayViews.of(kept.keeper().day(), clock.now(), clock.ratePermille()))));
    }

    @Override
    public PourAnswer nextPour(String day, String bowl, String poured) {
        Optional<KeptDay> kept = opened(day);
        if (kept.isEmpty()) return new PourAnswer.Unknown();
        Day state = kept.get().keeper().day();
        return state.bowl(bowl)
                .filter(BowlState::mixable)
                .<PourAnswer>map(
                        known -> new PourAnswer.Advised(ContractJson.write(PourAdvices.of(state, known, poured))))
                .orElseGet(() -> new PourAnswer.Refused(
                        "BOWL_NOT_AT_BAR",
                        "Bowl " + bowl + " is not being mixed. Begin it first; one at its chair is poured no more."));
    }

    @Override
    public Optional<ShownDay> grams(String day) {
        return opened(day).map(kept -> kept.keeper().day()).map(state -> shown(state, GramsViews.of(state)));
    }

    @Override
    public Optional<ShownDay> swatches(String day) {
        return opened(day).map(kept -> kept.keeper().day()).map(state -> shown(state, SwatchViews.of(state)));
    }

    private static ShownDay shown(Day day, Object view) {
        return new ShownDay(day.revision(), ContractJson.write(view));
    }

    @Override
    public VisitsAnswer visits(String day, int service, Optional<LocalDate> first, Optional<LocalDate> second) {
        Optional<KeptDay> kept = opened(day);
        if (kept.isEmpty()) return new VisitsAnswer.Unknown();
        Day state = kept.get().keeper().day();
        return state.service(service)
                .<VisitsAnswer>map(
                        known -> new VisitsAnswer.Told(ContractJson.write(VisitsViews.of(state, known, first, second))))
                .orElseGet(() -> new VisitsAnswer.Refused(
                        "SERVICE_UNKNOWN",
                        "There is no service " + service + ". Accepted: 1 to "
                                + state.services().size() + "."));
    }

    /** A day that is opened learns from the days before it; the event carries what it learned. */
    private DayCommand learned(DayCommand command) {
        if (!(command instanceof OpenDay open)) return command;
        List<Day> known = kept().stream().map(kept -> kept.keeper().day()).toList();
        return new OpenDay(PastUses.learned(open.setup(), known, MOST_USES, open.bookings()), open.bookings());
    }

    /** A piece changed at a terminal is held against the rules of the files, by the code that reads the files. */
    private static Optional<Refusal> filesObjection(Day day, DayCommand command) {
        if (!(command instanceof ChangeSetup change)) return Optional.empty();
        return SetupCheck.objection(SetupChangeRules.inForce(day), SetupChangeRules.changed(day, change.piece()))
                .map(sentence -> new Refusal("SETUP_INVALID", sentence));
    }

    @Override
    public Optional<ShownDay> setup(String day) {
        return opened(day).map(kept -> {
            Day state = kept.keeper().day();
            DaySetup inForce = SetupChangeRules.inForce(state).with(UseHistory.NONE);
            List<Booking> bookings = state.services().stream()
                    .filter(ServiceState::standing)
                    .map(ServiceState::booking)
                    .toList();
            SetupView view = new SetupView(
                    state.revision(),
                    inForce,
                    SetupGaps.of(inForce),
                    SetupFiles.of(withRules(inForce, state), bookings));
            return new ShownDay(state.revision(), ContractJson.write(view));
        });
    }

    /** Pins and resets in force and the fraction a manager has set: part of what a next day is to begin with. */
    private static DaySetup withRules(DaySetup inForce, Day state) {
        var rules = state.ledger().rules();
        var fraction = state.ledger().fractionPermille();
        if (rules.isEmpty() && fraction.isEmpty()) return inForce;
        var memory = new SalonMemory(List.of(), List.of(), List.of(), fraction);
        return inForce.with(new UseHistory(List.of(), rules, Optional.of(memory)));
    }

    private Optional<KeptDay> opened(String day) {
        return Optional.ofNullable(days.get(day))
                .filter(kept -> kept.keeper().day().revision() > 0);
    }

    @Override
    public SortedMap<String, Long> revisions() {
        SortedMap<String, Long> revisions = new TreeMap<>();
        days.forEach((name, kept) -> {
            if (kept.keeper().day().revision() > 0)
                revisions.put(name, kept.keeper().day().revision());
        });
        return revisions;
    }

    @Override
    public Future<List<StoredEvent>> events(String day, long after, int limit) {
        return log.read(day, after, limit);
    }

    @Override
    public Runnable listen(String day, Runnable listener) {
        return opened(day).map(kept -> kept.keeper().listen(listener)).orElse(() -> {});
    }

    @Override
    public Future<Optional<WhatIfAnswer>> whatIf(String day, WhatIfQuestion question) {
        return opened(day)
                .map(kept -> drawing.ask(kept.keeper().day(), question, clock.now()))
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
        ticks.arrange();
        kept().forEach(kept -> kept.keeper().announce());
    }

    @Override
    public Future<Optional<ClockReading>> advance(Instant to) {
        if (!(clock instanceof DrivenClock driven)) return Future.succeededFuture(Optional.empty());
        if (to.isAfter(clock.now().plus(FARTHEST)))
            return Future.failedFuture(Declined.conflict("CLOCK_TOO_FAR", "the clock is moved seven days at most"));
        if (advances.full()) return Future.failedFuture(Declined.notNow("too many wait for the clock; try again"));
        return advances.add(() -> runTo(to, Instant.MIN)).map(done -> {
            driven.moveTo(to);
            clockChanged();
            return Optional.of(clock());
        });
    }

    /**
     * Steps through every instant at which something falls due, with all plans drawn at each.
     *
     * @param coarseUntil what fell due up to here is noted at once, without the plans that could have been drawn between
     */
    private Future<Void> runTo(Instant to, Instant coarseUntil) {
        return settled().compose(settled -> {
            Optional<Instant> next = kept().stream()
                    .flatMap(kept -> kept.nextAt().stream())
                    .min(Instant::compareTo)
                    .filter(at -> !at.isAfter(to));
            if (next.isEmpty()) return Future.succeededFuture();
            if (clock instanceof DrivenClock driven) driven.moveTo(next.get());
            Instant at = next.get().isBefore(coarseUntil) ? coarseUntil : next.get();
            return noteDue(at).compose(noted -> runTo(to, coarseUntil));
        });
    }

    private Future<Void> noteDue(Instant at) {
        return Future.join(kept().stream()
                        .map(kept -> kept.keeper().step(() -> kept.keeper().noteDue(at)))
                        .toList())
                .mapEmpty();
    }

    /** Lets every step that was taken on come to its end. */
    Future<Void> stop() {
        ticks.stop();
        kept().forEach(kept -> kept.plans().stop());
        return Future.join(kept().stream().map(kept -> kept.keeper().drained()).toList())
                .mapEmpty();
    }
}
