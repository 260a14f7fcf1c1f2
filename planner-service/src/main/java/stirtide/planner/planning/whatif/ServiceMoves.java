package stirtide.planner.planning.whatif;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stirtide.events.command.DayCommand.MoveService;
import stirtide.events.day.Booking;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.MoveAdvice.MoveEffect;
import stirtide.events.plan.MoveAdvice.ServiceMove;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlanFigures;
import stirtide.events.plan.PlannedService;
import stirtide.planner.day.Decider;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/**
 * Moves each service that has not started within its own tolerance and the day, five minutes at a time, and two of the best together.
 * The many are planned at once, the best again with as much work as the plan at present. On a day of very many services those
 * nearest to a client who waits are tried, and how many were left out is shown.
 */
final class ServiceMoves {
    private static final int STEP_MINUTES = 5;
    private static final String ASKER = "what-if";

    private static final Comparator<Tried> BEST = Comparator.comparing(Tried::figures, WhatIfFigures.BETTER)
            .thenComparingInt(Tried::minutes)
            .thenComparing(Tried::services, Comparator.comparing(Object::toString));

    private final BaselinePlan present;
    private int left;
    private int untried;

    /** A change of starts: minutes by which each service is moved, and what follows. */
    private record Tried(List<Shift> shifts, PlanFigures figures) {
        int minutes() {
            return shifts.stream().mapToInt(shift -> Math.abs(shift.minutes)).sum();
        }

        List<Integer> services() {
            return shifts.stream().map(Shift::service).toList();
        }
    }

    private record Shift(int service, int bookedMinute, int minutes) {}

    private ServiceMoves(BaselinePlan present) {
        this.present = present;
        this.left = present.effort().plans();
    }

    static WhatIfAnswer answer(BaselinePlan present) {
        ServiceMoves moves = new ServiceMoves(present);
        List<Tried> singles = moves.singles();
        List<Tried> pairs = moves.pairs(best(singles, present.effort().paired()));
        return new WhatIfAnswer.Moves(new MoveAdvice(
                present.question().basedOnRevision(),
                present.figures(),
                moves.shown(singles),
                moves.shown(pairs),
                moves.untried));
    }

    /** One move, whatever the tolerance of the service; refused as the move itself would be. */
    static WhatIfAnswer answer(BaselinePlan present, WhatIfQuestion.OneMove move) {
        Decision decision = Decider.decide(
                present.day(),
                new MoveService(move.service(), move.start(), Optional.empty(), ""),
                new CommandContext(present.day().time(), ASKER));
        if (decision instanceof Decision.Refused refused) return new WhatIfAnswer.Refused(refused.refusal());
        int booked = present.time()
                .minuteUp(present.day()
                        .service(move.service())
                        .orElseThrow()
                        .booking()
                        .start());
        int asked = present.time().minuteUp(move.start());
        ServiceMoves moves = new ServiceMoves(present);
        List<Shift> shift = List.of(new Shift(move.service(), booked, asked - booked));
        Plan then = moves.then(shift, true);
        MoveEffect effect = moves.effect(new Tried(shift, WhatIfFigures.of(then)));
        String crowded = present.crowds(then, move.service()) ? " The chair is taken for a part of that time." : "";
        return new WhatIfAnswer.Moves(new MoveAdvice(
                present.question().basedOnRevision(),
                present.figures(),
                List.of(new MoveEffect(
                        effect.moves(), effect.then(), effect.sentence() + waits(present, then) + crowded)),
                List.of(),
                0));
    }

    /** Whose wait changes, in words: the services one by one. */
    private static String waits(BaselinePlan present, Plan then) {
        String changed = then.services().stream()
                .filter(service -> service.waitMinutes() != waitNow(present, service.service()))
                .map(service -> "service " + service.service() + " waits " + waitNow(present, service.service())
                        + " -> " + service.waitMinutes() + " min")
                .collect(Collectors.joining(", "));
        return changed.isEmpty() ? "" : " " + Character.toUpperCase(changed.charAt(0)) + changed.substring(1) + ".";
    }

    private static int waitNow(BaselinePlan present, int service) {
        return present.plan().services().stream()
                .filter(each -> each.service() == service)
                .mapToInt(PlannedService::waitMinutes)
                .sum();
    }

    private List<MoveEffect> shown(List<Tried> tried) {
        return best(tried, present.effort().shown()).stream().map(this::effect).toList();
    }

    private List<Tried> singles() {
        List<Tried> best = new ArrayList<>();
        for (ServiceState service : movable()) {
            List<Shift> shifts = shifts(service);
            left -= shifts.size();
            if (left < 0) untried += shifts.isEmpty() ? 0 : 1;
            else bestOf(shifts).ifPresent(best::add);
        }
        best.sort(BEST);
        List<Tried> again = new ArrayList<>();
        for (Tried each : best(best, present.effort().shown()))
            again.add(tried(each.shifts, true).orElse(each));
        again.sort(BEST);
        return again;
    }

    private static List<Tried> best(List<Tried> sorted, int most) {
        return sorted.subList(0, Math.min(most, sorted.size()));
    }

    /** Services that have not started, those nearest to a client who waits first. */
    private List<ServiceState> movable() {
        List<Instant> waits = present.plan().services().stream()
                .filter(service -> service.waitMinutes() > 0)
                .map(PlannedService::start)
                .toList();
        return present.question().services().stream()
                .flatMap(task -> present.day().service(task.service()).stream())
                .filter(service -> service.startedAt().isEmpty())
                .sorted(Comparator.comparingLong(
                        service -> nearest(waits, service.booking().start())))
                .toList();
    }

    private static long nearest(List<Instant> waits, Instant start) {
        return waits.stream()
                .mapToLong(wait -> Math.abs(wait.getEpochSecond() - start.getEpochSecond()))
                .min()
                .orElse(0);
    }

    private List<Shift> shifts(ServiceState service) {
        Booking booking = service.booking();
        int booked = present.time().minuteUp(booking.start());
        List<Shift> shifts = new ArrayList<>();
        int earliest = Math.max(-booking.earlierMinutes(), present.nowMinute() - booked);
        int latest = Math.min(
                booking.laterMinutes(), present.time().minuteDown(present.time().dayEnd()) - booked - 1);
        for (int minutes = -Math.floorDiv(-earliest, STEP_MINUTES) * STEP_MINUTES;
                minutes <= latest;
                minutes += STEP_MINUTES) if (minutes != 0) shifts.add(new Shift(service.service(), booked, minutes));
        return shifts;
    }

    private Optional<Tried> bestOf(List<Shift> shifts) {
        return shifts.stream()
                .flatMap(shift -> tried(List.of(shift), false).stream())
                .min(BEST);
    }

    /** Empty when a service would come into another client's time at its chair. */
    private Optional<Tried> tried(List<Shift> shifts, boolean thorough) {
        Plan then = then(shifts, thorough);
        if (shifts.stream().anyMatch(shift -> present.crowds(then, shift.service))) return Optional.empty();
        return Optional.of(new Tried(shifts, WhatIfFigures.of(then)));
    }

    private Plan then(List<Shift> shifts, boolean thorough) {
        PlanQuestion changed = present.question()
                .withServices(present.question().services().stream()
                        .map(task -> moved(task, shifts))
                        .toList());
        return thorough ? present.thorough(changed) : present.quick(changed);
    }

    private static ServiceTask moved(ServiceTask task, List<Shift> shifts) {
        for (Shift shift : shifts)
            if (shift.service == task.service()) return task.startingAt(shift.bookedMinute + shift.minutes);
        return task;
    }

    private List<Tried> pairs(List<Tried> singles) {
        List<Tried> pairs = new ArrayList<>();
        for (int i = 0; i < singles.size(); i++) {
            for (int j = i + 1; j < singles.size(); j++) {
                PlanFigures alone = singles.get(i).figures;
                List<Shift> both = List.of(
                        singles.get(i).shifts.get(0), singles.get(j).shifts.get(0));
                tried(both, true)
                        .filter(pair -> WhatIfFigures.BETTER.compare(pair.figures, alone) < 0)
                        .ifPresent(pairs::add);
            }
        }
        pairs.sort(BEST);
        return pairs;
    }

    private MoveEffect effect(Tried tried) {
        List<ServiceMove> moves = tried.shifts.stream()
                .map(shift -> new ServiceMove(
                        shift.service,
                        present.question().instantOf(shift.bookedMinute),
                        present.question().instantOf(shift.bookedMinute + shift.minutes)))
                .toList();
        String sentence = moves.stream()
                .map(move -> "service " + move.service() + " from "
                        + present.time().clock(move.from()) + " to "
                        + present.time().clock(move.to()))
                .collect(Collectors.joining(" and ", "Move ", ""));
        return new MoveEffect(
                moves,
                tried.figures,
                sentence + ": " + WhatIfFigures.difference(present.figures(), tried.figures) + ".");
    }
}
