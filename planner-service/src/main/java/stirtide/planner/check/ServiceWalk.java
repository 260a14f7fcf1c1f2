package stirtide.planner.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.AppliedZone;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/** Walks through one service minute by minute, feeding each from the bowls of the plan. */
final class ServiceWalk {
    /** Shortage of a live bowl that is no reason for another one: half a gram. */
    private static final int LIVE_SLACK_MILLIGRAMS = 500;

    private final PlanQuestion question;
    private final ServiceTask task;
    private final Findings findings;
    private final Deque<PlannedBowl> bowls;
    private final boolean mayLackBowls;
    private final Plan plan;
    private final Set<Integer> appliedMinutes = new java.util.HashSet<>();
    private final Set<Integer> stylistMinutes = new java.util.HashSet<>();
    private final Map<ZoneTask, int[]> times = new LinkedHashMap<>();
    private int clock;
    private int waited;
    private int served;

    ServiceWalk(PlanQuestion question, Plan plan, ServiceTask task, List<PlannedBowl> own, Findings findings) {
        this.question = question;
        this.task = task;
        this.findings = findings;
        this.plan = plan;
        this.bowls = new ArrayDeque<>(own.stream()
                .sorted(Comparator.comparing(PlannedBowl::neededFrom))
                .toList());
        this.mayLackBowls = plan.notes().stream()
                .anyMatch(note -> note.kind().equals("NO_FORMULA") && note.service() == task.service());
    }

    /** First and last minute of application of the zones still to be applied, in order. */
    Map<ZoneTask, int[]> times() {
        return times;
    }

    int waited() {
        return waited;
    }

    void walk() {
        clock = anchor();
        boolean first = true;
        for (RunTask run : task.runs()) {
            List<ApplicationMinute> minutes = ApplicationMinute.of(run);
            if (first && !minutes.isEmpty())
                clock = Math.max(clock, question.nowMinute() - minutes.get(0).gap());
            first = first && minutes.isEmpty();
            int at = feedLive(run, minutes);
            while (at < minutes.size()) at = feedOne(run, minutes, at);
        }
        for (PlannedBowl left : bowls)
            findings.unless(false, "bowl %s feeds no minute of service %d", left.bowl(), task.service());
    }

    private int anchor() {
        if (!task.runs().isEmpty()
                && !task.runs().get(0).zones().isEmpty()
                && task.runs().get(0).zones().get(0).begunMinute().isPresent()) return question.nowMinute();
        return Math.max(
                task.startMinute(),
                task.processing().stream().mapToInt(AppliedZone::applyEnd).max().orElse(task.startMinute()));
    }

    private int ready(ApplicationMinute minute) {
        return clock + minute.gap();
    }

    /** A zone that has not begun may start later than it could: the client waits before it, as the plan shows. */
    private int held(ApplicationMinute minute, int earliest) {
        if (minute.zone().begunMinute().isPresent() || times.containsKey(minute.zone())) return earliest;
        return plan.services().stream()
                .filter(service -> service.service() == task.service())
                .flatMap(service -> service.zones().stream())
                .filter(zone -> zone.zone().equals(minute.zone().zone()))
                .mapToInt(zone -> Math.max(earliest, findings.minute(zone.applyStart(), "start of " + zone.zone())))
                .findFirst()
                .orElse(earliest);
    }

    private void apply(ApplicationMinute minute, int start) {
        appliedMinutes.add(start);
        int[] span = times.computeIfAbsent(
                minute.zone(), zone -> new int[] {zone.begunMinute().orElse(start), start});
        clock = start + 1;
        span[1] = clock;
    }

    /**
     * Live bowls feed first. Where the last of them lacks no more than what the last minute needs, another bowl is not
     * asked for.
     */
    private int feedLive(RunTask run, List<ApplicationMinute> minutes) {
        List<ApplicationMinute> own = minutes.stream()
                .filter(minute -> run.zones().indexOf(minute.zone()) < FirstFeed.length(question, run))
                .toList();
        if (own.isEmpty()) return 0;
        List<Integer> starts = liveStarts(run, own, LIVE_SLACK_MILLIGRAMS);
        int lastNeed = own.get(own.size() - 1).needMilligrams();
        if (starts.size() < own.size() && lastNeed > LIVE_SLACK_MILLIGRAMS) {
            List<Integer> generous = liveStarts(run, own, lastNeed);
            if (generous.size() == own.size()) starts = generous;
        }
        int at = 0;
        for (int start : starts) {
            ApplicationMinute minute = own.get(at++);
            waited += start - ready(minute);
            apply(minute, start);
        }
        return at;
    }

    private List<Integer> liveStarts(RunTask run, List<ApplicationMinute> own, int slackOfLast) {
        List<Integer> starts = new ArrayList<>();
        int free = clock;
        for (LiveSupply bowl : run.live()) {
            boolean last = bowl == run.live().get(run.live().size() - 1);
            long left = (long) bowl.leftMilligrams() + (last ? slackOfLast : LIVE_SLACK_MILLIGRAMS);
            while (bowl.leftMilligrams() > 0 && starts.size() < own.size()) {
                ApplicationMinute minute = own.get(starts.size());
                boolean first = starts.isEmpty() || own.get(starts.size() - 1).zone() != minute.zone();
                int start = first ? held(minute, free + minute.gap()) : free + minute.gap();
                if (minute.needMilligrams() > 0) {
                    start = Math.max(start, bowl.atChairMinute());
                    boolean hurry = starts.size() == own.size() - 1
                            && !first
                            && minute.zone().begunMinute().isPresent();
                    if (start >= bowl.lifeEndMinute() + (hurry ? 1 : 0) || minute.needMilligrams() > left) break;
                    left -= minute.needMilligrams();
                }
                starts.add(start);
                free = start + 1;
            }
        }
        return starts;
    }

    private int feedOne(RunTask run, List<ApplicationMinute> minutes, int at) {
        ApplicationMinute minute = minutes.get(at);
        PlannedBowl next = bowls.peek();
        boolean fits = next != null
                && next.run() == run.run()
                && !next.zones().isEmpty()
                && next.zones().get(0).equals(minute.zone().zone());
        if (minute.needMilligrams() > 0 && fits) return feedFrom(bowls.remove(), run, minutes, at);
        findings.unless(
                minute.needMilligrams() == 0 || mayLackBowls,
                "service %d: no bowl feeds zone %s at minute %d",
                task.service(),
                minute.zone().zone(),
                ready(minute));
        int start = minute.needMilligrams() == 0 ? held(minute, ready(minute)) : ready(minute);
        waited += start - ready(minute);
        apply(minute, start);
        return at + 1;
    }

    private int feedFrom(PlannedBowl bowl, RunTask run, List<ApplicationMinute> minutes, int from) {
        int firstUse = findings.minute(bowl.neededFrom(), "first use of " + bowl.bowl());
        int lastUse = findings.minute(bowl.neededTo(), "last use of " + bowl.bowl());
        int mixStart = findings.minute(bowl.mixStart(), "mixing of " + bowl.bowl());
        int wait = firstUse - ready(minutes.get(from));
        findings.unless(wait >= 0, "bowl %s is used at minute %d, before its turn", bowl.bowl(), firstUse);
        findings.unless(
                bowl.waitMinutes() == wait, "bowl %s: waitMinutes %d, but %d", bowl.bowl(), bowl.waitMinutes(), wait);
        if (bowl.personId().isEmpty()) stylistFree(bowl, mixStart);
        findings.unless(
                bowl.bowl().equals(task.service() + letters(task.bowlsUsed() + served)),
                "bowl %s is out of the order of letters",
                bowl.bowl());
        served++;
        waited += wait;
        return use(bowl, run, minutes, from, wait, lastUse);
    }

    private void stylistFree(PlannedBowl bowl, int mixStart) {
        int mixEnd = findings.minute(bowl.mixEnd(), "end of mixing of " + bowl.bowl());
        boolean began = appliedMinutes.isEmpty() && mixStart < anchor();
        for (int minute = mixStart; minute < mixEnd; minute++)
            findings.unless(
                    !began && !appliedMinutes.contains(minute) && stylistMinutes.add(minute),
                    "bowl %s: the stylist mixes at minute %d while still applying or mixing",
                    bowl.bowl(),
                    minute);
    }

    private int use(PlannedBowl bowl, RunTask run, List<ApplicationMinute> minutes, int from, int wait, int lastUse) {
        int at = from;
        long need = 0;
        Set<ZoneTask> zones = new LinkedHashSet<>();
        while (at < minutes.size() && (at == from || clock < lastUse)) {
            ApplicationMinute minute = minutes.get(at);
            apply(minute, ready(minute) + (at == from ? wait : 0));
            need += minute.needMilligrams();
            zones.add(minute.zone());
            at++;
        }
        findings.unless(clock == lastUse, "bowl %s: last use %d, but %d", bowl.bowl(), lastUse, clock);
        findings.unless(
                need == bowl.neededMilligrams(),
                "bowl %s: needs %d mg, but %d",
                bowl.bowl(),
                bowl.neededMilligrams(),
                need);
        List<String> names = zones.stream().map(ZoneTask::zone).toList();
        findings.unless(names.equals(bowl.zones()), "bowl %s feeds zones %s, but %s", bowl.bowl(), bowl.zones(), names);
        FormulaCheck.check(question, run, List.copyOf(zones), bowl, findings);
        return at;
    }

    /** a to z, then aa, ab and so on. */
    static String letters(int index) {
        String last = String.valueOf((char) ('a' + index % 26));
        return index < 26 ? last : letters(index / 26 - 1) + last;
    }
}
