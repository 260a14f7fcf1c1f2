package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/** When stylists and chairs of a plan are taken or stylists off duty, and which services come too early or wait for them. */
final class FloorSeats {
    private static final Minutes ALWAYS = new Minutes(Integer.MIN_VALUE, Integer.MAX_VALUE);

    private final PlanQuestion question;
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

    /** What a service waits for, or lacks. */
    enum Cause {
        STYLIST_APPLIES,
        STYLIST_OFF_DUTY,
        CHAIR_TAKEN
    }

    /**
     * Who or what a service waits for, or lacks.
     *
     * @param cause why
     * @param before the service that takes it, 0 if none does
     * @param until minute from which it is free, or the stylist on duty for all of the service
     */
    record Taken(Cause cause, int before, int until) {}

    /**
     * The seats of a plan.
     *
     * @param schedules schedules of the services, in the order of the plans
     */
    FloorSeats(PlanQuestion question, List<ServicePlan> plans, List<ZoneSchedule> schedules) {
        this.question = question;
        this.seats = new ArrayList<>();
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

    /** What a service that has not begun needs and another has then, the one that is free last; else hours of its stylist that do not hold it. */
    Optional<Taken> clash(int service) {
        Seat own = seat(service);
        Optional<Taken> taken = taken(own, each -> each.until > own.from);
        return taken.isPresent() || hours(own, own.from, own.applied).isPresent()
                ? taken
                : question.stylistHours(own.task).map(none -> new Taken(Cause.STYLIST_OFF_DUTY, 0, own.applied));
    }

    /** The hours of its stylist that hold a stretch; all hours where nothing is known of them. */
    private Optional<Minutes> hours(Seat own, int from, int to) {
        return question.stylistHours(own.task).orElse(List.of(ALWAYS)).stream()
                .filter(each -> each.from() <= from && to <= each.to())
                .findFirst();
    }

    /** Hours of its stylist that a service begins in, though it would begin before them for its booking. */
    private Optional<Taken> offDuty(Seat own) {
        return question.stylistHours(own.task)
                .flatMap(known -> hours(own, own.from, own.applied))
                .filter(each -> each.from() > own.nominal)
                .map(each -> new Taken(Cause.STYLIST_OFF_DUTY, 0, each.from()));
    }

    /** What a service that has not begun waits for beyond its booking. */
    Optional<Taken> waitsFor(int service) {
        Seat own = seat(service);
        return Stream.concat(
                        taken(own, taken -> taken.until > own.nominal && taken.until <= own.from).stream(),
                        offDuty(own).stream())
                .max(Comparator.comparingInt(Taken::until));
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
            if (own.sameStylist(before))
                taken.add(new Taken(Cause.STYLIST_APPLIES, before.task.service(), before.applied));
            if (own.task.chair() == before.task.chair())
                taken.add(new Taken(Cause.CHAIR_TAKEN, before.task.service(), before.leaves));
        }
        return taken.stream().filter(wanted).max(Comparator.comparingInt(Taken::until));
    }
}
