package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/** When stylists and chairs of a plan are taken, and which services come too early or wait for them. */
final class FloorSeats {
    private final List<Seat> seats;

    /**
     * A service at its chair.
     *
     * @param task the service
     * @param nominal when it would begin for its booking
     * @param from when it begins
     * @param applied when its last zone is applied, 0 if nothing is to be applied
     * @param leaves when it leaves the chair
     */
    private record Seat(ServiceTask task, int nominal, int from, int applied, int leaves) {
        boolean sameStylist(Seat other) {
            return task.stylistId().isPresent() && task.stylistId().equals(other.task.stylistId());
        }
    }

    /**
     * Who or what a service waits for, or lacks.
     *
     * @param before the service that takes it
     * @param stylist whether it is the stylist; else the chair
     * @param until minute from which it is free
     */
    record Taken(int before, boolean stylist, int until) {}

    /**
     * The seats of a plan.
     *
     * @param schedules schedules of the services, in the order of the plans
     */
    FloorSeats(PlanQuestion question, List<ServicePlan> plans, List<ZoneSchedule> schedules) {
        seats = new ArrayList<>();
        for (int place = 0; place < plans.size(); place++) {
            ServicePlan plan = plans.get(place);
            ServiceTimeline timeline = plan.timeline();
            int begins = timeline.minutes() == 0 ? 0 : timeline.starts()[0] + plan.delays()[0];
            seats.add(new Seat(
                    timeline.task(),
                    timeline.minutes() == 0 ? 0 : timeline.starts()[0],
                    timeline.task().started() ? question.nowMinute() : begins,
                    timeline.zones().stream().mapToInt(plan::applyEnd).max().orElse(0),
                    schedules.get(place).stays().stream()
                            .mapToInt(stay -> Math.max(stay.rinse(), stay.end()))
                            .max()
                            .orElse(0)));
        }
        seats.sort(Comparator.comparing(seat -> seat.task, FloorPeople.TURNS));
    }

    /** What a service that has not begun needs and another has then; the one that is free last. */
    Optional<Taken> clash(int service) {
        Seat own = seat(service);
        return taken(own, taken -> taken.until > own.from);
    }

    /** What a service that has not begun waits for beyond its booking. */
    Optional<Taken> waitsFor(int service) {
        Seat own = seat(service);
        return taken(own, taken -> taken.until > own.nominal && taken.until <= own.from);
    }

    /** Minutes that a service waits for its stylist and its chair. */
    int waitMinutes(int service) {
        return waitsFor(service)
                .map(taken -> taken.until - seat(service).nominal)
                .orElse(0);
    }

    /** Minutes that a client waits for a bowl, without those in which stylist or chair are not free anyway. */
    int barWait(ServicePlan plan, MixAssignment assignment) {
        int wait = plan.waitFor(assignment);
        return assignment.from() == 0
                ? Math.max(0, wait - waitMinutes(plan.timeline().task().service()))
                : wait;
    }

    private Seat seat(int service) {
        return seats.stream()
                .filter(seat -> seat.task.service() == service)
                .findFirst()
                .orElseThrow();
    }

    private Optional<Taken> taken(Seat own, Predicate<Taken> wanted) {
        if (own.task.started()) return Optional.empty();
        List<Taken> taken = new ArrayList<>();
        for (Seat before : seats.subList(0, seats.indexOf(own))) {
            if (own.sameStylist(before)) taken.add(new Taken(before.task.service(), true, before.applied));
            if (own.task.chair() == before.task.chair())
                taken.add(new Taken(before.task.service(), false, before.leaves));
        }
        return taken.stream().filter(wanted).max(Comparator.comparingInt(Taken::until));
    }
}
