package stirtide.planner.day.state;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import stirtide.events.day.StoredEvent;
import stirtide.events.plan.Plan;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Span;
import stirtide.planner.day.Evolver;

/**
 * The state of a day: the replay of its events and nothing else. Immutable.
 *
 * @param revision newest event, 0 before the first
 * @param time time of the newest event that is not a plan; a plan is drawn as of this instant
 * @param setup what is in force, once the day is opened
 * @param closed whether the day is over
 * @param services services in the order of their numbers; number n stands at place n - 1
 * @param shifts hours that replaced those of the setup, by person
 * @param acknowledged who has seen an alarm, by alarm id
 * @param plan plan on show
 * @param relevantRevision newest event that matters to a plan
 * @param history all events
 * @param ledger what is known of grams besides the bowls
 */
public record Day(
        long revision,
        Instant time,
        Optional<DaySetup> setup,
        boolean closed,
        List<ServiceState> services,
        SortedMap<String, List<Span>> shifts,
        SortedMap<String, String> acknowledged,
        Optional<Plan> plan,
        long relevantRevision,
        DayHistory history,
        AllowanceLedger ledger) {

    /** The day before anything happened. */
    public static final Day UNOPENED = new Day(
            0,
            Instant.EPOCH,
            Optional.empty(),
            false,
            List.of(),
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            Optional.empty(),
            0,
            DayHistory.EMPTY,
            AllowanceLedger.EMPTY);

    /**
     * The state after all the events of a stream, in time proportional to their number. Calling
     * {@link Evolver#evolve} for each gives the same, but replays again at every action taken back.
     *
     * @throws IllegalStateException when the events cannot have happened in this order
     */
    public static Day replay(List<StoredEvent> events) {
        return Evolver.replay(events);
    }

    /** A service by its number. */
    public Optional<ServiceState> service(int number) {
        return number >= 1 && number <= services.size() ? Optional.of(services.get(number - 1)) : Optional.empty();
    }

    /** A bowl that was begun, by its id. */
    public Optional<BowlState> bowl(String id) {
        var number = BowlIds.serviceOf(id);
        if (number.isEmpty()) return Optional.empty();
        return service(number.getAsInt())
                .flatMap(service -> service.bowls().stream()
                        .filter(bowl -> bowl.bowl().equals(id))
                        .findFirst());
    }

    /**
     * The mix a bowl is part of, as it lies in one bowl: for a bowl of a batch that is not divided the whole mix in the
     * bowl it is mixed in, for any other the bowl itself.
     */
    public BowlState mixOf(BowlState bowl) {
        return bowl.undivided()
                ? bowl(bowl.batch().orElseThrow().mixedIn()).orElse(bowl).whole()
                : bowl;
    }

    /** All bowls neither used up nor binned, by service and letter. */
    public Stream<BowlState> liveBowls() {
        return services.stream().flatMap(service -> service.bowls().stream()).filter(BowlState::live);
    }

    /** What is in force. Only to be asked of an opened day. */
    public DaySetup opened() {
        return setup.orElseThrow(() -> new IllegalStateException("the day is not opened yet"));
    }

    /** Whether the plan on show knows every event that matters to it. */
    public boolean planSettled() {
        return setup.isEmpty()
                || closed
                || plan.map(shown -> shown.basedOnRevision() >= relevantRevision)
                        .orElse(false);
    }

    /** Whether the plan on show is a first one, drawn at once, and a better one is still looked for. */
    public boolean betterPlanSought() {
        return !closed && planSettled() && plan.flatMap(Plan::roundsToCome).isPresent();
    }

    public Day with(ServiceState changed) {
        var all = new ArrayList<>(services);
        if (changed.service() == services.size() + 1) all.add(changed);
        else all.set(changed.service() - 1, changed);
        return changed(copy -> copy.services = Collections.unmodifiableList(all));
    }

    /** The day some time after its newest event, when nothing has happened since. */
    public Day seenAt(Instant now) {
        return now.isAfter(time) ? changed(copy -> copy.time = now) : this;
    }

    public Day opened(DaySetup first) {
        return changed(copy -> {
            copy.setup = Optional.of(first);
            copy.closed = false;
            copy.ledger = AllowanceLedger.opened(first);
        });
    }

    /** The same with another setup; what the ledger knows stays. */
    public Day inForce(DaySetup other) {
        return changed(copy -> copy.setup = Optional.of(other));
    }

    /** The hours of a person are those of the setup again. */
    public Day hoursOfSetup(String personId) {
        var others = new TreeMap<>(shifts);
        others.remove(personId);
        return changed(copy -> copy.shifts = Collections.unmodifiableSortedMap(others));
    }

    public Day with(AllowanceLedger other) {
        return changed(copy -> copy.ledger = other);
    }

    /** The same with allowances of a service worked out anew. */
    public Day learned(ServiceState service) {
        return with(ledger.learned(opened(), service));
    }

    public Day closedNow() {
        return changed(copy -> copy.closed = true);
    }

    public Day shift(String personId, List<Span> onDuty) {
        var all = new TreeMap<>(shifts);
        all.put(personId, onDuty);
        return changed(copy -> copy.shifts = Collections.unmodifiableSortedMap(all));
    }

    public Day acknowledge(String alarmId, String actor) {
        var all = new TreeMap<>(acknowledged);
        all.put(alarmId, actor);
        return changed(copy -> copy.acknowledged = Collections.unmodifiableSortedMap(all));
    }

    public Day show(Plan drawn) {
        return changed(copy -> copy.plan = Optional.of(drawn));
    }

    /** Sets the marks every event leaves: its revision, its time, whether it matters to a plan, the history. */
    public Day stamped(long newRevision, Instant newTime, boolean relevant, DayHistory newHistory) {
        return changed(copy -> {
            copy.revision = newRevision;
            copy.time = newTime;
            if (relevant) copy.relevantRevision = newRevision;
            copy.history = newHistory;
        });
    }

    private Day changed(Consumer<Copy> change) {
        var copy = new Copy(this);
        change.accept(copy);
        return copy.day();
    }

    /** A day while some of it is being replaced. */
    private static final class Copy {
        private long revision;
        private Instant time;
        private Optional<DaySetup> setup;
        private boolean closed;
        private List<ServiceState> services;
        private SortedMap<String, List<Span>> shifts;
        private SortedMap<String, String> acknowledged;
        private Optional<Plan> plan;
        private long relevantRevision;
        private DayHistory history;
        private AllowanceLedger ledger;

        private Copy(Day day) {
            revision = day.revision;
            time = day.time;
            setup = day.setup;
            closed = day.closed;
            services = day.services;
            shifts = day.shifts;
            acknowledged = day.acknowledged;
            plan = day.plan;
            relevantRevision = day.relevantRevision;
            history = day.history;
            ledger = day.ledger;
        }

        private Day day() {
            return new Day(
                    revision,
                    time,
                    setup,
                    closed,
                    services,
                    shifts,
                    acknowledged,
                    plan,
                    relevantRevision,
                    history,
                    ledger);
        }
    }
}
