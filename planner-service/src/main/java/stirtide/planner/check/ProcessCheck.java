package stirtide.planner.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedService;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.AppliedZone;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/** Application, halfway check and rinse of the zones of one service. */
final class ProcessCheck {
    private final PlanQuestion question;
    private final Plan plan;
    private final PlannedService planned;
    private final Findings findings;
    private final List<Expected> expected = new ArrayList<>();

    private record Expected(
            String zone, int start, int end, int wanted, int section, Optional<Integer> longest, boolean fact) {}

    private ProcessCheck(PlanQuestion question, Plan plan, PlannedService planned, Findings findings) {
        this.question = question;
        this.plan = plan;
        this.planned = planned;
        this.findings = findings;
    }

    static void check(
            PlanQuestion question,
            Plan plan,
            ServiceTask task,
            PlannedService planned,
            ServiceWalk walk,
            Findings findings) {
        ProcessCheck check = new ProcessCheck(question, plan, planned, findings);
        check.expect(task, walk);
        findings.unless(planned.chair() == task.chair(), "service %d is at the wrong chair", task.service());
        findings.unless(
                planned.waitMinutes() == walk.waited(),
                "service %d waits %d minutes, the plan says %d",
                task.service(),
                walk.waited(),
                planned.waitMinutes());
        findings.unless(
                planned.zones().size() == check.expected.size(),
                "service %d has %d zones, the plan shows %d",
                task.service(),
                check.expected.size(),
                planned.zones().size());
        for (int i = 0; i < Math.min(planned.zones().size(), check.expected.size()); i++)
            check.zone(planned.zones().get(i), check.expected.get(i));
        check.span();
    }

    private void expect(ServiceTask task, ServiceWalk walk) {
        for (AppliedZone zone : task.processing())
            expected.add(new Expected(
                    zone.zone(),
                    zone.applyStart(),
                    zone.applyEnd(),
                    zone.applyEnd() + zone.processMinutes(),
                    zone.section(),
                    longest(zone.lightenerId(), zone.technique()),
                    true));
        for (RunTask run : task.runs()) {
            for (ZoneTask zone : run.zones()) {
                int[] times = walk.times().get(zone);
                if (times == null) continue;
                expected.add(new Expected(
                        zone.zone(),
                        times[0],
                        times[1],
                        times[1] + zone.processMinutes(),
                        zone.section(),
                        longest(run.lightenerId(), zone.technique()),
                        unavoidable(run, zone)));
            }
        }
    }

    /** Begun already, or longer to apply than it may process: whatever is planned, its longest processing ends first. */
    private boolean unavoidable(RunTask run, ZoneTask zone) {
        return zone.begunMinute().isPresent()
                || longest(run.lightenerId(), zone.technique())
                        .map(minutes -> minutes < zone.applyMinutes())
                        .orElse(false);
    }

    private Optional<Integer> longest(String lightenerId, String technique) {
        return FirstFeed.rule(question, lightenerId, technique).map(TechniqueRule::longestProcessingMinutes);
    }

    private void zone(PlannedZone zone, Expected wanted) {
        String place = "service " + planned.service() + ", zone " + zone.zone();
        int check = findings.minute(zone.checkAt(), place);
        int rinse = findings.minute(zone.rinseAt(), place);
        int rinseBy = findings.minute(zone.rinseBy(), place);
        findings.unless(zone.zone().equals(wanted.zone), "%s: %s is expected", place, wanted.zone);
        findings.unless(
                findings.minute(zone.applyStart(), place) == wanted.start
                        && findings.minute(zone.applyEnd(), place) == wanted.end,
                "%s: applied from %d to %d",
                place,
                wanted.start,
                wanted.end);
        int common = expected.stream()
                .filter(each -> each.section == wanted.section)
                .mapToInt(Expected::wanted)
                .max()
                .orElseThrow();
        int limit =
                wanted.longest.map(minutes -> wanted.start + minutes).orElse(Math.max(common, question.nowMinute()));
        findings.unless(rinseBy == limit, "%s: must be rinsed by minute %d, not %d", place, limit, rinseBy);
        findings.unless(rinse <= limit, "%s: rinsed at minute %d, processed too long", place, rinse);
        findings.unless(
                rinse == Math.min(limit, Math.max(common, question.nowMinute())),
                "%s: rinse at minute %d does not fit its section",
                place,
                rinse);
        findings.unless(
                wanted.end <= check && check <= rinse || wanted.end > limit && check == rinse,
                "%s: the halfway check is not between application and rinse",
                place);
        findings.unless(rinse >= common || noted("RINSE_EARLY"), "%s: rinsed early without a note", place);
        findings.unless(
                limit >= Math.max(wanted.end, question.nowMinute()) || wanted.fact && noted("PROCESSING_OVER"),
                "%s: its longest processing ends at minute %d, before application does, and need not",
                place,
                limit);
    }

    private boolean noted(String kind) {
        return plan.notes().stream().anyMatch(note -> note.kind().equals(kind) && note.service() == planned.service());
    }

    private void span() {
        if (planned.zones().isEmpty()) return;
        findings.unless(
                planned.start().equals(planned.zones().get(0).applyStart()),
                "service %d starts with its first zone",
                planned.service());
        findings.unless(
                planned.zones().stream().map(PlannedZone::rinseAt).noneMatch(planned.end()::isBefore),
                "service %d ends before its last rinse",
                planned.service());
    }
}
