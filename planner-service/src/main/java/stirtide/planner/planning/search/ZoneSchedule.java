package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import stirtide.events.plan.PlannedService;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.planner.planning.search.PlanQuestion.AppliedZone;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.ServiceTimeline.ZoneSlot;

/**
 * Application, halfway check and rinse of the zones of one service. Zones of a section are rinsed together when the last
 * of them has processed as long as wanted; a zone whose longest processing time ends before that is rinsed early.
 */
final class ZoneSchedule {
    private final PlanQuestion question;
    private final ServicePlan plan;
    private final List<Stay> stays = new ArrayList<>();

    /** A zone with its minutes; {@code rinse} is never after {@code rinseBy}, {@code common} is the section's rinse. */
    record Stay(String zone, int section, int start, int end, int wanted, int rinseBy, int common, int rinse) {}

    ZoneSchedule(PlanQuestion question, ServicePlan plan) {
        this.question = question;
        this.plan = plan;
        List<Stay> open = new ArrayList<>();
        ServiceTask task = plan.timeline().task();
        for (AppliedZone zone : task.processing())
            open.add(stay(
                    zone.zone(),
                    zone.section(),
                    zone.applyStart(),
                    zone.applyEnd(),
                    zone.processMinutes(),
                    longest(zone.lightenerId(), zone.technique())));
        for (ZoneSlot slot : plan.timeline().zones())
            open.add(stay(
                    slot.zone().zone(),
                    slot.zone().section(),
                    plan.applyStart(slot),
                    plan.applyEnd(slot),
                    slot.zone().processMinutes(),
                    slot.longestMinutes()));
        for (Stay stay : open) stays.add(settle(stay, open));
    }

    List<Stay> stays() {
        return stays;
    }

    private static Stay stay(String zone, int section, int start, int end, int process, int longest) {
        int rinseBy = longest == ServiceTimelines.NO_LIMIT ? ServiceTimelines.NO_LIMIT : start + longest;
        return new Stay(zone, section, start, end, end + process, rinseBy, 0, 0);
    }

    private Stay settle(Stay stay, List<Stay> open) {
        int common = open.stream()
                .filter(each -> each.section == stay.section)
                .mapToInt(Stay::wanted)
                .max()
                .orElse(stay.wanted);
        int due = Math.max(common, question.nowMinute());
        int rinseBy = stay.rinseBy == ServiceTimelines.NO_LIMIT ? due : stay.rinseBy;
        return new Stay(
                stay.zone, stay.section, stay.start, stay.end, stay.wanted, rinseBy, common, Math.min(rinseBy, due));
    }

    private int longest(String lightenerId, String technique) {
        return question.rule(lightenerId, technique)
                .map(TechniqueRule::longestProcessingMinutes)
                .orElse(ServiceTimelines.NO_LIMIT);
    }

    PlannedService service() {
        ServiceTask task = plan.timeline().task();
        int start = stays.isEmpty() ? task.startMinute() : stays.get(0).start;
        int end = stays.stream()
                .mapToInt(stay -> Math.max(stay.rinse, stay.end))
                .max()
                .orElse(start);
        return new PlannedService(
                task.service(),
                task.chair(),
                question.instantOf(start),
                question.instantOf(end),
                plan.score().waitMinutes(),
                stays.stream().map(this::zone).toList());
    }

    private PlannedZone zone(Stay stay) {
        int check = Math.min(stay.rinse, stay.end + Math.max(0, stay.rinse - stay.end) / 2);
        return new PlannedZone(
                stay.zone,
                question.instantOf(stay.start),
                question.instantOf(stay.end),
                question.instantOf(check),
                question.instantOf(stay.rinse),
                question.instantOf(stay.rinseBy));
    }
}
