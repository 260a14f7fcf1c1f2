package stirtide.planner.check;

import java.util.ArrayList;
import java.util.List;
import stirtide.events.plan.Plan;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.AppliedZone;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/**
 * What new bowls have to feed in a question, derived anew: minutes of application that need something and that no bowl begun
 * already feeds, with the earliest time of each.
 */
final class ProofDay {
    /** Shortage of a live bowl that is no reason for another one: half a gram. */
    private static final int LIVE_SLACK_MILLIGRAMS = 500;

    private final PlanQuestion question;
    private final Plan plan;
    private final List<Part> parts = new ArrayList<>();
    private int unavoidableWait;

    /** A minute of application: when it begins without waits, and what it needs. */
    private record Minute(String zone, int start, int needMilligrams, boolean lastOfBegun) {}

    /** Consecutive minutes that may share bowls, their zones, and how late the service is there for bowls on their way. */
    record Part(
            int service,
            RunTask run,
            List<String> zones,
            List<Integer> useMinutes,
            List<Integer> needMilligrams,
            int late) {}

    ProofDay(PlanQuestion question, Plan plan) {
        this.question = question;
        this.plan = plan;
        question.services().forEach(this::service);
    }

    List<Part> parts() {
        return parts;
    }

    int unavoidableWait() {
        return unavoidableWait;
    }

    private void service(ServiceTask task) {
        int clock = task.processing().stream().mapToInt(AppliedZone::applyEnd).reduce(task.startMinute(), Math::max);
        boolean first = true;
        int late = 0;
        List<Part> own = new ArrayList<>();
        for (RunTask run : task.runs()) {
            for (int from = 0; from < run.zones().size(); ) {
                if (first) clock = begin(run.zones().get(0), clock);
                first = false;
                int to = from + 1;
                boolean permitted = FirstFeed.permits(question, run, run.zones().get(from));
                while (permitted
                        && to < run.zones().size()
                        && FirstFeed.permits(question, run, run.zones().get(to))) to++;
                List<Minute> minutes = minutes(run, from, to, clock);
                clock = minutes.get(minutes.size() - 1).start + 1;
                int fed = 0;
                if (permitted && from == 0) {
                    List<Integer> starts = live(run, minutes, late);
                    fed = starts.size();
                    if (fed > 0) late = starts.get(fed - 1) - minutes.get(fed - 1).start;
                }
                if (permitted && weighable(task, run, run.zones().subList(from, to)))
                    own.add(part(task, run, minutes.subList(fed, minutes.size()), late));
                from = to;
            }
        }
        unavoidableWait += late;
        for (Part part : own) if (part.late == late && !part.useMinutes.isEmpty()) parts.add(part);
    }

    private int begin(ZoneTask zone, int clock) {
        return zone.begunMinute().isPresent()
                ? question.nowMinute()
                : Math.max(clock, question.nowMinute() - zone.gapMinutes());
    }

    private static List<Minute> minutes(RunTask run, int from, int to, int clock) {
        List<Minute> minutes = new ArrayList<>();
        int start = clock;
        for (int z = from; z < to; z++) {
            ZoneTask zone = run.zones().get(z);
            start += zone.gapMinutes();
            int used = 0;
            for (int i = 1; i <= zone.applyMinutes(); i++) {
                int upTo = (int) ((long) zone.needMilligrams() * i / zone.applyMinutes());
                boolean lastOfRun = z == run.zones().size() - 1 && i == zone.applyMinutes();
                boolean hurry = z == to - 1 && i == zone.applyMinutes() && i > 1;
                minutes.add(new Minute(
                        zone.zone(),
                        start++,
                        upTo - used + (lastOfRun ? run.reserveMilligrams() : 0),
                        hurry && zone.begunMinute().isPresent()));
                used = upTo;
            }
        }
        return minutes;
    }

    /** When the minutes that live bowls feed begin. A bowl that lacks only what the last minute needs feeds it too. */
    private static List<Integer> live(RunTask run, List<Minute> minutes, int late) {
        List<Integer> strict = live(run, minutes, late, LIVE_SLACK_MILLIGRAMS);
        int last = minutes.get(minutes.size() - 1).needMilligrams;
        if (strict.size() == minutes.size() || last <= LIVE_SLACK_MILLIGRAMS) return strict;
        List<Integer> generous = live(run, minutes, late, last);
        return generous.size() == minutes.size() ? generous : strict;
    }

    private static List<Integer> live(RunTask run, List<Minute> minutes, int late, int slackOfLast) {
        List<Integer> starts = new ArrayList<>();
        int delay = late;
        for (LiveSupply bowl : run.live()) {
            boolean last = bowl == run.live().get(run.live().size() - 1);
            long left = (long) bowl.leftMilligrams() + (last ? slackOfLast : LIVE_SLACK_MILLIGRAMS);
            while (bowl.leftMilligrams() > 0 && starts.size() < minutes.size()) {
                Minute minute = minutes.get(starts.size());
                int start = minute.start + delay;
                if (minute.needMilligrams > 0) {
                    start = Math.max(start, bowl.atChairMinute());
                    int lifeEnd = bowl.lifeEndMinute() + (minute.lastOfBegun ? 1 : 0);
                    if (start >= lifeEnd || minute.needMilligrams > left) break;
                    left -= minute.needMilligrams;
                }
                delay = start - minute.start;
                starts.add(start);
            }
        }
        return starts;
    }

    /** Not so where the plan says that nothing can be mixed for the zones, and mixes nothing for them. */
    private boolean weighable(ServiceTask task, RunTask run, List<ZoneTask> zones) {
        List<String> names = zones.stream().map(ZoneTask::zone).toList();
        boolean refused = plan.notes().stream()
                .anyMatch(note -> note.kind().equals("NO_FORMULA") && note.service() == task.service());
        return !refused
                || plan.bowls().stream()
                        .filter(bowl -> bowl.service() == task.service() && bowl.run() == run.run())
                        .flatMap(bowl -> bowl.zones().stream())
                        .anyMatch(names::contains);
    }

    private static Part part(ServiceTask task, RunTask run, List<Minute> minutes, int late) {
        List<Minute> needing =
                minutes.stream().filter(minute -> minute.needMilligrams > 0).toList();
        return new Part(
                task.service(),
                run,
                needing.stream().map(Minute::zone).distinct().toList(),
                needing.stream().map(minute -> minute.start + late).toList(),
                needing.stream().map(Minute::needMilligrams).toList(),
                late);
    }
}
