package stirtide.planner.day.state;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuEntry;
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
@RecordBuilder
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
        AllowanceLedger ledger)
        implements DayBuilder.With {

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

    /** A service by its number. */
    public Optional<ServiceState> service(int number) {
        return number >= 1 && number <= services.size() ? Optional.of(services.get(number - 1)) : Optional.empty();
    }

    /** A service that an event names. */
    public ServiceState requireService(int number) {
        return service(number).orElseThrow(() -> new ImpossibleEventException("there is no service " + number));
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

    /** A bowl that an event names. */
    public BowlState requireBowl(String id) {
        return bowl(id).orElseThrow(() -> new ImpossibleEventException("there is no bowl " + id));
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

    /** All bowls that were begun, by service and letter. */
    public Stream<BowlState> bowls() {
        return services.stream().flatMap(service -> service.bowls().stream());
    }

    /** All bowls neither used up nor binned, by service and letter. */
    public Stream<BowlState> liveBowls() {
        return bowls().filter(BowlState::live);
    }

    /** Bowls of the plan on show, in its order; bowls that were begun since are still among them. */
    public Stream<PlannedBowl> plannedBowls() {
        return plan.stream().flatMap(shown -> shown.bowls().stream());
    }

    /** A bowl of the plan on show. */
    public Optional<PlannedBowl> plannedBowl(String id) {
        return plannedBowls().filter(bowl -> bowl.bowl().equals(id)).findFirst();
    }

    /** What is in force. Only to be asked of an opened day. */
    public DaySetup opened() {
        return setup.orElseThrow(() -> new IllegalStateException("the day is not opened yet"));
    }

    /**
     * The menu entry of a service; with the formula of the client's last visit where that is planned again.
     *
     * @throws IllegalStateException when it is not on the menu, which no accepted booking is
     */
    public MenuEntry menuEntry(ServiceState service) {
        var repeat = ledger.repeat(service.service());
        if (repeat.isPresent()) return repeat.get().entry();
        var menuId = service.booking().menuId();
        return opened().menuEntry(menuId)
                .orElseThrow(() -> new IllegalStateException(
                        "service " + service.service() + " is booked as \"" + menuId + "\", which is not on the menu"));
    }

    /** Whether all zones of a service are applied. */
    public boolean applied(ServiceState service) {
        return service.zonesDone().size() >= menuEntry(service).zones().size();
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

    /** The same with a service in place of the one with its number, or behind the last. */
    public Day with(ServiceState changed) {
        var all = new ArrayList<>(services);
        if (changed.service() == services.size() + 1) all.add(changed);
        else all.set(changed.service() - 1, changed);
        return withServices(Collections.unmodifiableList(all));
    }

    /** The same with a bowl in place of the one with its id. */
    public Day with(BowlState changed) {
        return with(requireService(changed.service()).with(changed));
    }

    /** The day some time after its newest event, when nothing has happened since. */
    public Day seenAt(Instant now) {
        return now.isAfter(time) ? withTime(now) : this;
    }

    /** The day opened with a setup. */
    public Day opened(DaySetup first) {
        return inForce(first).withClosed(false).withLedger(AllowanceLedger.opened(first));
    }

    /** The same with another setup; what the ledger knows stays. */
    public Day inForce(DaySetup other) {
        return withSetup(Optional.of(other));
    }

    /** The same with a person's hours in place of those of the setup. */
    public Day shift(String personId, List<Span> onDuty) {
        var all = new TreeMap<>(shifts);
        all.put(personId, onDuty);
        return withShifts(Collections.unmodifiableSortedMap(all));
    }

    /** The hours of a person are those of the setup again. */
    public Day hoursOfSetup(String personId) {
        var others = new TreeMap<>(shifts);
        others.remove(personId);
        return withShifts(Collections.unmodifiableSortedMap(others));
    }

    /** The same with an alarm that a person has seen. */
    public Day acknowledge(String alarmId, String actor) {
        var all = new TreeMap<>(acknowledged);
        all.put(alarmId, actor);
        return withAcknowledged(Collections.unmodifiableSortedMap(all));
    }

    /** The same with a plan on show. */
    public Day show(Plan drawn) {
        return withPlan(Optional.of(drawn));
    }
}
