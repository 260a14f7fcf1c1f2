package stirtide.planner.plan;

import java.util.ArrayList;
import java.util.List;
import stirtide.events.plan.Plan;
import stirtide.planner.plan.PlanQuestion.Minutes;
import stirtide.planner.stagger.Assistant;
import stirtide.planner.stagger.BowlRule;
import stirtide.planner.stagger.Problem;
import stirtide.planner.stagger.Run;
import stirtide.planner.stagger.Window;

/**
 * A question as a stagger problem that leaves rules out but adds none: what is impossible in it is impossible in every plan of
 * the question in which assistants mix. A bowl holds whatever its size has room for, each bowl costs 1, bowls and scales of a
 * kind are not told apart, zones may process as long as they like, and of a service that becomes late only the wait of each
 * bowl against its first turn counts.
 *
 * @param problem runs that new bowls feed
 * @param services places of the runs of each service that has any
 * @param unavoidableWait minutes that clients wait for bowls that are on their way, whatever is planned
 */
public record ProofProblem(Problem problem, List<List<Integer>> services, int unavoidableWait) {
    /** Copies the lists. */
    public ProofProblem {
        services = services.stream().map(List::copyOf).toList();
    }

    /**
     * The problem of a question; what the plan feeds with no bowl for want of weights is left out.
     *
     * @param maxWaitMinutes most minutes that one service may be late besides those that cannot be avoided
     */
    public static ProofProblem of(PlanQuestion question, Plan plan, int maxWaitMinutes) {
        Builder builder = new Builder(question, plan);
        Tracks.of(question).forEach(builder::add);
        List<Assistant> people = question.assistants().stream()
                .map(each -> new Assistant(windows(question, each)))
                .toList();
        Problem problem = new Problem(
                question.handOverMinutes(),
                maxWaitMinutes,
                builder.runs,
                people,
                Math.max(1, question.scales().size()));
        return new ProofProblem(problem, builder.services, builder.unavoidable);
    }

    private static List<Window> windows(PlanQuestion question, PlanQuestion.Assistant assistant) {
        List<Window> windows = new ArrayList<>();
        int free = Math.max(question.nowMinute(), assistant.busyUntilMinute());
        for (Minutes duty : assistant.onDuty())
            if (free < duty.to()) windows.add(new Window(Math.max(free, duty.from()), duty.to()));
        return windows;
    }

    private static final class Builder {
        private final Plan plan;
        private final int room;
        private final List<Run> runs = new ArrayList<>();
        private final List<List<Integer>> services = new ArrayList<>();
        private int unavoidable;

        Builder(PlanQuestion question, Plan plan) {
            this.plan = plan;
            this.room = question.bowlSizes().stream()
                    .filter(size -> size.count() > 0)
                    .mapToInt(size -> size.usableMilligrams() - size.residueMilligrams())
                    .max()
                    .orElse(0);
        }

        void add(Track track) {
            int[] lateAt = new int[track.feeds().size()];
            int[] from = new int[lateAt.length];
            int late = 0;
            for (int k = 0; k < lateAt.length; k++) {
                Feed feed = track.feeds().get(k);
                LiveFeeding.End end = LiveFeeding.feed(track, feed, late, track.noHolds(), new int[track.minutes()]);
                late = end.delay();
                lateAt[k] = late;
                from[k] = end.minute();
            }
            unavoidable += late;
            List<Integer> own = new ArrayList<>();
            for (int k = 0; k < lateAt.length; k++) {
                Feed feed = track.feeds().get(k);
                if (lateAt[k] == late && feed.refusal().isEmpty() && fed(track, feed))
                    run(track, feed, from[k], late, own);
            }
            if (!own.isEmpty()) services.add(own);
        }

        /** Whether the plan found weights for the feed. */
        private boolean fed(Track track, Feed feed) {
            int service = track.task().service();
            List<String> zones = track.zonesIn(feed.from(), feed.to()).stream()
                    .map(slot -> slot.zone().zone())
                    .toList();
            return plan.notes().stream()
                            .noneMatch(note -> note.kind().equals("NO_FORMULA") && note.service() == service)
                    || plan.bowls().stream()
                            .filter(bowl -> bowl.service() == service && bowl.run() == feed.run())
                            .anyMatch(bowl -> bowl.zones().stream().anyMatch(zones::contains));
        }

        private void run(Track track, Feed feed, int from, int late, List<Integer> own) {
            List<Integer> use = new ArrayList<>();
            List<Integer> needUpTo = new ArrayList<>(List.of(0));
            for (int at = from; at < feed.to(); at++) {
                int need = track.need(at, at + 1);
                if (need == 0) continue;
                use.add(track.starts()[at] + late);
                needUpTo.add(needUpTo.get(needUpTo.size() - 1) + need);
            }
            if (use.isEmpty()) return;
            BowlRule rule = (a, b) -> needUpTo.get(b) - needUpTo.get(a) <= room ? 1 : BowlRule.NO_BOWL;
            own.add(runs.size());
            runs.add(new Run(
                    runs.size(), use, feed.recipe().mixMinutes(), feed.recipe().lifeMinutes(), rule));
        }
    }
}
