package stirtide.planner.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stirtide.events.day.StoredEvent;
import stirtide.events.plan.Plan;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Span;

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
        History history,
        Ledger ledger) {

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
            History.EMPTY,
            Ledger.EMPTY);

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

    Day with(ServiceState changed) {
        var copy = new ArrayList<>(services);
        if (changed.service() == services.size() + 1) copy.add(changed);
        else copy.set(changed.service() - 1, changed);
        return withServices(Collections.unmodifiableList(copy));
    }

    /** The day some time after its newest event, when nothing has happened since. */
    Day seenAt(Instant now) {
        if (!now.isAfter(time)) return this;
        return new Day(
                revision, now, setup, closed, services, shifts, acknowledged, plan, relevantRevision, history, ledger);
    }

    private Day withServices(List<ServiceState> changed) {
        return new Day(
                revision, time, setup, closed, changed, shifts, acknowledged, plan, relevantRevision, history, ledger);
    }

    Day opened(DaySetup inForce) {
        return new Day(
                revision,
                time,
                Optional.of(inForce),
                false,
                services,
                shifts,
                acknowledged,
                plan,
                relevantRevision,
                history,
                Ledger.opened(inForce));
    }

    /** The same with another setup; what the ledger knows stays. */
    Day inForce(DaySetup changed) {
        return new Day(
                revision,
                time,
                Optional.of(changed),
                closed,
                services,
                shifts,
                acknowledged,
                plan,
                relevantRevision,
                history,
                ledger);
    }

    /** The hours of a person are those of the setup again. */
    Day hoursOfSetup(String personId) {
        var changed = new TreeMap<>(shifts);
        changed.remove(personId);
        return new Day(
                revision,
                time,
                setup,
                closed,
                services,
                Collections.unmodifiableSortedMap(changed),
                acknowledged,
                plan,
                relevantRevision,
                history,
                ledger);
    }

    Day with(Ledger changed) {
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
                changed);
    }

    /** The same with allowances of a service worked out anew. */
    Day learned(ServiceState service) {
        return with(ledger.learned(opened(), service));
    }

    Day closedNow() {
        return new Day(
                revision, time, setup, true, services, shifts, acknowledged, plan, relevantRevision, history, ledger);
    }

    Day shift(String personId, List<Span> onDuty) {
        var changed = new TreeMap<>(shifts);
        changed.put(personId, onDuty);
        return new Day(
                revision,
                time,
                setup,
                closed,
                services,
                Collections.unmodifiableSortedMap(changed),
                acknowledged,
                plan,
                relevantRevision,
                history,
                ledger);
    }

    Day acknowledge(String alarmId, String actor) {
        var changed = new TreeMap<>(acknowledged);
        changed.put(alarmId, actor);
        return new Day(
                revision,
                time,
                setup,
                closed,
                services,
                shifts,
                Collections.unmodifiableSortedMap(changed),
                plan,
                relevantRevision,
                history,
                ledger);
    }

    Day show(Plan drawn) {
        return new Day(
                revision,
                time,
                setup,
                closed,
                services,
                shifts,
                acknowledged,
                Optional.of(drawn),
                relevantRevision,
                history,
                ledger);
    }

    /** Sets the marks every event leaves: its revision, its time, whether it matters to a plan, the history. */
    Day stamped(long newRevision, Instant newTime, boolean relevant, History newHistory) {
        return new Day(
                newRevision,
                newTime,
                setup,
                closed,
                services,
                shifts,
                acknowledged,
                plan,
                relevant ? newRevision : relevantRevision,
                newHistory,
                ledger);
    }
}
