package stirtide.planner.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedService;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/**
 * A stylist applies while on duty and on one head after the other, a chair seats one client after the other until the rinse, both in the order of booking;
 * services under way come first and are let be among themselves. Where a service has no place, a note says so.
 */
record SeatCheck(PlanQuestion question, Plan plan, Findings findings) {
    private static final String NOTE = "NOT_AS_BOOKED";

    static void check(PlanQuestion question, Plan plan, Findings findings) {
        new SeatCheck(question, plan, findings).check();
    }

    private void check() {
        List<ServiceTask> order = question.services().stream()
                .sorted(Comparator.<ServiceTask>comparingInt(task -> task.started() ? 0 : 1)
                        .thenComparingInt(ServiceTask::startMinute)
                        .thenComparingInt(ServiceTask::service))
                .toList();
        for (int later = 0; later < order.size(); later++) {
            ServiceTask task = order.get(later);
            if (task.started()) continue;
            boolean early = offDuty(task);
            for (ServiceTask before : order.subList(0, later)) early |= early(before, task);
            findings.unless(
                    early || !noted(task), "service %d: a note says wrongly that it has no place", task.service());
        }
    }

    private boolean early(ServiceTask before, ServiceTask task) {
        Optional<PlannedService> first = planned(before);
        Optional<PlannedService> second = planned(task);
        if (first.isEmpty() || second.isEmpty()) return false;
        int begins = findings.minute(second.get().start(), "start of a service");
        int applied = applied(before, first.get());
        int leaves = findings.minute(first.get().end(), "end of a service");
        boolean oneStylist = task.stylistId().isPresent() && task.stylistId().equals(before.stylistId());
        boolean twoHeads = oneStylist && begins < applied;
        boolean twoClients = task.chair() == before.chair() && begins < leaves;
        findings.unless(
                !twoHeads || noted(task),
                "service %d begins at minute %d, its stylist applies on service %d until %d",
                task.service(),
                begins,
                before.service(),
                applied);
        findings.unless(
                !twoClients || noted(task),
                "service %d begins at minute %d, service %d sits in its chair until %d",
                task.service(),
                begins,
                before.service(),
                leaves);
        return twoHeads || twoClients;
    }

    private boolean offDuty(ServiceTask task) {
        Optional<PlanQuestion.Stylist> stylist = question.stylists().stream()
                .filter(each -> task.stylistId().equals(Optional.of(each.personId())))
                .findFirst();
        Optional<PlannedService> planned = planned(task);
        if (stylist.isEmpty() || planned.isEmpty()) return false;
        int begins = findings.minute(planned.get().start(), "start of a service");
        int applied = applied(task, planned.get());
        boolean off = applied > 0
                && stylist.get().onDuty().stream().noneMatch(duty -> duty.from() <= begins && applied <= duty.to());
        findings.unless(
                !off || noted(task),
                "service %d is applied from minute %d to %d, its stylist is not on duty for all of it",
                task.service(),
                begins,
                applied);
        return off;
    }

    /** When the last zone that is still to be applied is applied, 0 if there is none. */
    private int applied(ServiceTask task, PlannedService service) {
        List<String> toCome = task.runs().stream()
                .flatMap(run -> run.zones().stream())
                .map(PlanQuestion.ZoneTask::zone)
                .toList();
        return service.zones().stream()
                .filter(zone -> toCome.contains(zone.zone()))
                .map(PlannedZone::applyEnd)
                .mapToInt(end -> findings.minute(end, "end of a zone"))
                .max()
                .orElse(0);
    }

    private Optional<PlannedService> planned(ServiceTask task) {
        return plan.services().stream()
                .filter(each -> each.service() == task.service())
                .findFirst();
    }

    private boolean noted(ServiceTask task) {
        return plan.notes().stream().anyMatch(note -> note.kind().equals(NOTE) && note.service() == task.service());
    }
}
