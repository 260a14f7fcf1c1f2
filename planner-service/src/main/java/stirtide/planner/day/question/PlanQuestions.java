package stirtide.planner.day.question;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stirtide.events.setup.Person;
import stirtide.events.setup.Span;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.setup.People;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.day.stock.ShelfStock;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.BowlOut;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.PlanQuestion.Stylist;

/**
 * What the planner is asked after something happened: all that is left to do, as of the newest event. A function of the
 * events alone, so the same events always give the same plan.
 *
 * <p>A client who is not there at the booked start does not stop the bar: the service is planned as if it began now,
 * until it is started, moved or cancelled.
 */
public final class PlanQuestions {
    /** Mixes that start within this many minutes move only if they must. */
    static final int FROZEN_MINUTES = 5;

    private PlanQuestions() {}

    /** The question to ask, empty when the day is not open or the plan on show knows all that matters. */
    public static Optional<PlanQuestion> of(Day day) {
        return day.planSettled() ? Optional.empty() : Optional.of(ask(day));
    }

    /** The question as of now, whether or not it has to be asked; empty when the day is not open. */
    public static Optional<PlanQuestion> standing(Day day, Instant now) {
        return day.setup().isEmpty() || day.closed() ? Optional.empty() : Optional.of(ask(day.seenAt(now)));
    }

    /**
     * The question that the first plan on show answers, as it was asked: the better plan that is looked for answers the
     * same. Empty when none is looked for. Replays the day up to where it was asked.
     */
    public static Optional<PlanQuestion> toImprove(Day day) {
        if (!day.betterPlanSought()) return Optional.empty();
        long asked = day.plan().orElseThrow().basedOnRevision();
        return of(Evolver.replay(day.history().events().stream()
                .filter(event -> event.revision() <= asked)
                .toList()));
    }

    private static PlanQuestion ask(Day day) {
        var setup = day.opened();
        var time = DayTime.of(setup);
        int now = time.minuteUp(day.time());
        var supplies = new LiveSupplies(day, time, now);
        var shelf = new ShelfStock(day);
        return new PlanQuestion(
                day.revision(),
                day.time(),
                time.dayStart(),
                time.zone(),
                now,
                setup.salon().handOverMinutes(),
                setup.salon().washMinutes(),
                FROZEN_MINUTES,
                assistants(day, supplies),
                stylists(day),
                setup.salon().scales(),
                setup.salon().bowls(),
                shelf.developers(),
                shelf.directions(),
                bowlsOut(day, time, now),
                tasks(day, supplies),
                day.plan(),
                setup.salon().oneMixTwoBowls().orElse(false),
                setup.salon().carryMinutes());
    }

    private static List<Assistant> assistants(Day day, LiveSupplies supplies) {
        return day.opened().salon().people().stream()
                .filter(person -> person.role() == Person.Role.ASSISTANT)
                .map(person -> assistant(day, person, supplies))
                .toList();
    }

    private static List<Stylist> stylists(Day day) {
        var applying = day.services().stream()
                .filter(ServiceState::standing)
                .flatMap(service -> service.booking().stylistId().stream())
                .collect(Collectors.toSet());
        return day.opened().salon().people().stream()
                .filter(person -> applying.contains(person.personId()))
                .map(person ->
                        new Stylist(person.personId(), minutes(People.shift(day, person), DayTime.of(day.opened()))))
                .toList();
    }

    private static Assistant assistant(Day day, Person person, LiveSupplies supplies) {
        var own = day.liveBowls()
                .filter(bowl -> bowl.personId().equals(person.personId())
                        && bowl.handedOverAt().isEmpty())
                .toList();
        int carry = day.opened().salon().carryMinutes();
        int busyUntil = own.stream()
                .mapToInt(bowl -> supplies.mixEndMinute(bowl) + carry)
                .max()
                .orElse(0);
        return new Assistant(
                person.personId(),
                person.name(),
                minutes(People.shift(day, person), DayTime.of(day.opened())),
                busyUntil > supplies.nowMinute() ? busyUntil : 0,
                own.stream().filter(BowlState::mixing).map(BowlState::scaleId).findFirst());
    }

    /** Whole minutes inside the spans; a stretch shorter than that gives nothing. */
    private static List<Minutes> minutes(List<Span> spans, DayTime time) {
        var minutes = new ArrayList<Minutes>();
        for (var span : spans) {
            int from = time.minuteUp(span.from());
            int to = time.minuteDown(span.to());
            if (from < to) minutes.add(new Minutes(from, to));
        }
        return minutes;
    }

    /** A live bowl comes back when its life is over at the latest, a closed one when it is washed. */
    private static List<BowlOut> bowlsOut(Day day, DayTime time, int now) {
        var wash = Duration.ofMinutes(day.opened().salon().washMinutes());
        var out = new ArrayList<BowlOut>();
        for (var service : day.services())
            for (var bowl : service.bowls()) {
                var back = bowl.closed().map(BowlState.Closed::at).orElse(bowl.lifeEnds());
                int free = time.minuteUp(back.plus(wash));
                int earliest = bowl.live() ? now + 1 + day.opened().salon().washMinutes() : now;
                if (bowl.live() || free > now) out.add(new BowlOut(bowl.bowlSizeId(), Math.max(free, earliest)));
            }
        return out;
    }

    private static List<ServiceTask> tasks(Day day, LiveSupplies supplies) {
        return day.services().stream()
                .filter(ServiceState::standing)
                .map(service -> ServiceTasks.of(day, service, supplies))
                .flatMap(Optional::stream)
                .toList();
    }
}
