package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import stirtide.events.plan.Plan.WaitReason;
import stirtide.planner.planning.search.OverloadFinder.Job;
import stirtide.planner.planning.search.OverloadFinder.Window;

/** Says why clients wait. Claims an overload only where the sum of minutes proves it. */
final class WaitReasons {
    private final PlanQuestion question;
    private final ResourceCalendar bar;
    private final List<ServicePlan> plans;
    private final OverloadFinder overload;
    private final FloorSeats seats;
    private final PlanText words;
    private final List<WaitReason> reasons = new ArrayList<>();
    private final List<Window> windows = new ArrayList<>();
    private final List<TreeSet<Integer>> waiting = new ArrayList<>();

    WaitReasons(PlanQuestion question, ResourceCalendar bar, List<ServicePlan> plans, FloorSeats seats) {
        this.seats = seats;
        this.question = question;
        this.bar = bar;
        this.plans = plans;
        this.overload = new OverloadFinder(question, plans, seats);
        this.words = new PlanText(question);
    }

    List<WaitReason> reasons() {
        for (ServicePlan plan : plans) {
            int live = plan.score().waitMinutes();
            if (plan.timeline().minutes() > 0)
                seats.waitsFor(plan.timeline().task().service()).ifPresent(taken -> seated(plan, taken));
            for (MixAssignment assignment : plan.assignments()) {
                live -= plan.waitFor(assignment);
                int wait = seats.barWait(plan, assignment);
                if (wait > 0 && plan.holdBefore(assignment.from()) == 0) explain(plan, assignment, wait);
            }
            for (ServiceTimeline.ZoneSlot slot : plan.timeline().zones()) {
                int hold = plan.holdBefore(slot.from());
                if (hold == 0) continue;
                held(plan, slot, hold);
                if (fedByLive(plan, slot)) live -= hold;
            }
            if (live > 0) onItsWay(plan, live);
        }
        for (int i = 0; i < windows.size(); i++) reasons.add(i, overloaded(windows.get(i), waiting.get(i)));
        return reasons;
    }

    private static boolean fedByLive(ServicePlan plan, ServiceTimeline.ZoneSlot slot) {
        return plan.assignments().stream().noneMatch(assignment -> assignment.from() == slot.from());
    }

    private void held(ServicePlan plan, ServiceTimeline.ZoneSlot slot, int hold) {
        int start = plan.applyStart(slot);
        int service = plan.timeline().task().service();
        add(
                start - hold,
                start,
                0,
                0,
                service,
                "Service " + service + " waits " + PlanText.minutes(hold) + " before "
                        + slot.zone().zone()
                        + ": begun earlier it would not be applied within its longest processing time, for want of bowls.");
    }

    private void seated(ServicePlan plan, FloorSeats.Taken taken) {
        int service = plan.timeline().task().service();
        int nominal = plan.timeline().starts()[0];
        String until = words.time(taken.until());
        add(
                nominal,
                taken.until(),
                0,
                0,
                service,
                "Service " + service + " waits " + PlanText.minutes(taken.until() - nominal) + " for "
                        + switch (taken.cause()) {
                            case STYLIST_APPLIES ->
                                "its stylist, who applies on service " + taken.before() + " until " + until + ".";
                            case STYLIST_OFF_DUTY ->
                                "its stylist, whose hours hold all of its application only from " + until + " on.";
                            case CHAIR_TAKEN ->
                                "chair " + plan.timeline().task().chair() + ", where service " + taken.before()
                                        + " sits until its rinse at " + until + ".";
                        });
    }

    private void explain(ServicePlan plan, MixAssignment assignment, int wait) {
        Job job = overload.job(plan, assignment);
        int mixMinutes = assignment.feed().recipe().mixMinutes();
        int due = assignment.use() - wait - question.handOverMinutes();
        int service = job.service();
        if (assignment.person() == MixAssignment.STYLIST)
            add(
                    assignment.mix(),
                    assignment.use(),
                    mixMinutes,
                    0,
                    service,
                    "The stylist of service " + service + " mixes, and the client waits " + PlanText.minutes(wait)
                            + " for it.");
        else if (question.nowMinute() + mixMinutes > due)
            add(
                    question.nowMinute(),
                    Math.max(due, question.nowMinute() + 1),
                    mixMinutes,
                    Math.max(0, due - question.nowMinute()),
                    service,
                    tooLate(plan, assignment, due));
        else if (!known(job)) search(plan, assignment, job, due + overload.carryMinutes());
    }

    private void add(int from, int to, int needed, int available, int service, String sentence) {
        reasons.add(new WaitReason(words.at(from), words.at(to), needed, available, List.of(service), sentence));
    }

    private String tooLate(ServicePlan plan, MixAssignment assignment, int due) {
        int ready = due + question.handOverMinutes();
        return "Service " + plan.timeline().task().service() + " needs a bowl at " + words.time(ready)
                + ", but nothing can start before " + words.time(question.nowMinute())
                + ", and mixing and carrying take "
                + PlanText.minutes(assignment.feed().recipe().mixMinutes() + question.handOverMinutes())
                + ": it comes at " + words.time(assignment.use()) + ".";
    }

    private boolean known(Job job) {
        for (int i = 0; i < windows.size(); i++) {
            if (job.mustLieIn(windows.get(i).from(), windows.get(i).to()) == 0) continue;
            waiting.get(i).add(job.service());
            return true;
        }
        return false;
    }

    private void search(ServicePlan plan, MixAssignment assignment, Job job, int due) {
        Optional<Window> window = overload.around(job);
        if (window.isPresent()) {
            windows.add(window.get());
            waiting.add(new TreeSet<>(List.of(job.service())));
            return;
        }
        int available = overload.available(job.release(), due);
        String stretch = words.time(job.release()) + " to " + words.time(due);
        String sentence = bowlsShort(job, due)
                ? "Service " + job.service() + " waits for a bowl: from " + stretch
                        + " all bowls that would do are in use or being washed."
                : "Service " + job.service() + " waits " + PlanText.minutes(seats.barWait(plan, assignment))
                        + ": its bowl would have to be mixed " + (overload.carryMinutes() > 0 ? "and carried " : "")
                        + "from " + stretch
                        + ", when the plan needs people and scales for others. No single stretch proves that this"
                        + " cannot be avoided.";
        add(job.release(), due, job.minutes(), available, job.service(), sentence);
    }

    /** Whether people and a scale would be free in time, and only bowls are not. */
    private boolean bowlsShort(Job job, int due) {
        for (int mix = job.release(); mix + job.minutes() <= due; mix++) {
            if (bar.personFor(mix, mix + job.minutes(), List.of()) < 0) continue;
            for (int scale = 0; scale < bar.scaleCount(); scale++)
                if (bar.scaleFree(scale, mix, mix + job.minutes() - overload.carryMinutes())) return true;
        }
        return false;
    }

    private void onItsWay(ServicePlan plan, int wait) {
        int first = 0;
        while (plan.delays()[first] == 0) first++;
        int from = plan.timeline().starts()[first];
        int to = from + plan.delays()[first];
        int service = plan.timeline().task().service();
        add(
                from,
                to,
                0,
                0,
                service,
                "Service " + service + " waits " + PlanText.minutes(wait)
                        + " for a bowl that is begun already and is not at the chair yet.");
    }

    private WaitReason overloaded(Window window, TreeSet<Integer> services) {
        List<String> people = question.assistants().stream()
                .filter(each -> available(each, window))
                .map(PlanQuestion.Assistant::name)
                .toList();
        String scales = question.scales().size() < people.size()
                ? " on "
                        + (question.scales().size() == 1
                                ? "one scale"
                                : question.scales().size() + " scales")
                : "";
        String sentence = words.time(window.from()) + " to " + words.time(window.to()) + " needs "
                + PlanText.minutes(window.needed()) + " of mixing"
                + (overload.carryMinutes() > 0 ? " and carrying, " : ", ")
                + PlanText.list(people) + " can give "
                + window.available() + scales + ".";
        return new WaitReason(
                words.at(window.from()),
                words.at(window.to()),
                window.needed(),
                window.available(),
                List.copyOf(services),
                sentence);
    }

    private static boolean available(PlanQuestion.Assistant assistant, Window window) {
        return assistant.onDuty().stream()
                .anyMatch(duty ->
                        Math.max(duty.from(), assistant.busyUntilMinute()) < window.to() && window.from() < duty.to());
    }
}
