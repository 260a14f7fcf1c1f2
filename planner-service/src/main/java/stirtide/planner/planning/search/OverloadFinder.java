package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Looks for stretches of time that need more minutes of mixing than people and scales can give; of mixing and carrying than people can
 * give, where who mixed carries and there is a scale for each. A mix that may start from
 * its release on and must end by its due minute has to lie in a stretch at least as long as it lies there both when it is
 * done as early and as late as possible (energetic reasoning of cumulative scheduling).
 */
final class OverloadFinder {
    private static final int NEAR_MINUTES = 60;

    private final PlanQuestion question;
    private final List<Job> jobs = new ArrayList<>();
    private final int[] given;
    private final FloorSeats seats;
    private final int carryMinutes;

    /**
     * A mix as the chair needs it.
     *
     * @param service service it is for
     * @param release earliest start at which the bowl still lives at its last use
     * @param due minute by which it must be done so that no client waits for it, or the earliest possible end if later
     * @param minutes minutes of mixing, and of carrying where that counts
     */
    record Job(int service, int release, int due, int minutes) {
        int mustLieIn(int from, int to) {
            return Math.max(
                    0, Math.min(Math.min(minutes, to - from), Math.min(release + minutes - from, to - due + minutes)));
        }
    }

    /** A stretch that needs more than can be given. */
    record Window(int from, int to, int needed, int available) {}

    OverloadFinder(PlanQuestion question, List<ServicePlan> plans, FloorSeats seats) {
        this.question = question;
        this.seats = seats;
        this.carryMinutes = question.scales().size() < question.assistants().size() ? 0 : question.carryMinutes();
        this.given = given(question);
        for (ServicePlan plan : plans)
            for (MixAssignment assignment : plan.assignments()) jobs.add(job(plan, assignment));
    }

    Job job(ServicePlan plan, MixAssignment assignment) {
        int wait = seats.barWait(plan, assignment);
        FeedFormula recipe = assignment.feed().recipe();
        int release = Math.max(question.nowMinute(), assignment.end() - wait - recipe.lifeMinutes());
        int due = assignment.use() - wait - question.handOverMinutes() + carryMinutes;
        int minutes = recipe.mixMinutes() + carryMinutes;
        return new Job(plan.timeline().task().service(), release, Math.max(due, release + minutes), minutes);
    }

    /** Minutes of carrying that count with those of mixing. */
    int carryMinutes() {
        return carryMinutes;
    }

    /** The most overloaded stretch near a mix in which it takes part, the shortest of several. */
    Optional<Window> around(Job job) {
        Job[] near = jobs.stream()
                .filter(each -> each.due() > job.release() - NEAR_MINUTES && each.release() < job.due() + NEAR_MINUTES)
                .toArray(Job[]::new);
        TreeSet<Integer> froms = new TreeSet<>();
        TreeSet<Integer> tos = new TreeSet<>();
        for (Job each : near) {
            froms.add(each.release());
            froms.add(each.due() - each.minutes());
            tos.add(each.due());
            tos.add(each.release() + each.minutes());
        }
        Optional<Window> best = Optional.empty();
        int[] ends = tos.stream().mapToInt(to -> to).toArray();
        for (int from : froms) {
            for (int to : ends) {
                if (to <= from || job.mustLieIn(from, to) == 0) continue;
                int needed = needed(near, from, to);
                int available = available(from, to);
                if (needed <= available) continue;
                Window window = new Window(from, to, needed, available);
                if (best.isEmpty() || better(window, best.get())) best = Optional.of(window);
            }
        }
        return best;
    }

    private static boolean better(Window a, Window b) {
        int excess = a.needed - a.available - b.needed + b.available;
        return excess > 0 || excess == 0 && a.to - a.from < b.to - b.from;
    }

    private static int needed(Job[] near, int from, int to) {
        int needed = 0;
        for (Job job : near) needed += job.mustLieIn(from, to);
        return needed;
    }

    /** Minutes of mixing that people on duty and scales can give between two minutes. */
    int available(int from, int to) {
        return availableBefore(to) - availableBefore(from);
    }

    private int availableBefore(int minute) {
        return given[Math.max(0, Math.min(given.length - 1, minute - question.nowMinute()))];
    }

    /** Minutes of mixing that can be given from now until each minute of duty. */
    private static int[] given(PlanQuestion question) {
        int now = question.nowMinute();
        int last = question.assistants().stream()
                .flatMap(each -> each.onDuty().stream())
                .mapToInt(PlanQuestion.Minutes::to)
                .max()
                .orElse(now);
        int[] people = new int[Math.max(0, last - now)];
        int[] scales = new int[people.length];
        for (PlanQuestion.Assistant each : question.assistants()) {
            int busyUntil = Math.max(now, each.busyUntilMinute());
            for (PlanQuestion.Minutes duty : each.onDuty())
                for (int minute = Math.max(duty.from(), busyUntil); minute < duty.to(); minute++)
                    people[minute - now]++;
            if (each.busyScaleId().isPresent())
                for (int minute = now; minute < Math.min(busyUntil - question.carryMinutes(), last); minute++)
                    scales[minute - now]++;
        }
        int[] given = new int[people.length + 1];
        for (int i = 0; i < people.length; i++)
            given[i + 1] =
                    given[i] + Math.max(0, Math.min(people[i], question.scales().size() - scales[i]));
        return given;
    }
}
