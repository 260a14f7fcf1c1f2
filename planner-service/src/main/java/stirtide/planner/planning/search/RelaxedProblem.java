package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stirtide.events.plan.Plan;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.stagger.Assistant;
import stirtide.planner.planning.stagger.BowlRule;
import stirtide.planner.planning.stagger.DutyWindow;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/**
 * A question as a stagger problem that leaves rules out but adds none: what is impossible in it is impossible in every plan of
 * the question in which assistants mix. A bowl holds whatever its size holds and serves no longer than its life less
 * mixing and hand-over, each bowl costs 1, bowls and scales of a kind are not distinguished, zones may process as long as they
 * like, and of a service that becomes late only the wait of each bowl against its first turn counts. Where two bowls may be one
 * mix, each person and scale is there twice: two bowls of one mix take no more than that.
 *
 * @param problem runs that new bowls feed
 * @param parts what those runs are of the services, by place
 * @param services places of the runs of each service that has any
 * @param unavoidableWait minutes that clients wait for bowls that are on their way, whatever is planned
 */
public record RelaxedProblem(
        StaggerProblem problem, List<Part> parts, List<List<Integer>> services, int unavoidableWait) {
    /**
     * What a run is of a service.
     *
     * @param service number of the service
     * @param zones zones that the run feeds, in order
     * @param needUpTo milligrams needed before each of its minutes; one longer than the run
     */
    public record Part(int service, List<String> zones, List<Integer> needUpTo) {
        /** Copies the lists. */
        public Part {
            zones = List.copyOf(zones);
            needUpTo = List.copyOf(needUpTo);
        }
    }

    /** Copies the lists. */
    public RelaxedProblem {
        parts = List.copyOf(parts);
        services = services.stream().map(List::copyOf).toList();
    }

    /**
     * The problem of a question; what the plan feeds with no bowl for want of weights is left out.
     *
     * @param maxWaitMinutes most minutes that one service may be late besides those that cannot be avoided
     */
    public static RelaxedProblem of(PlanQuestion question, Plan plan, int maxWaitMinutes) {
        Builder builder = new Builder(question, plan);
        ServiceTimelines.of(question).forEach(builder::add);
        List<Assistant> people = new ArrayList<>();
        int copies = question.oneMixTwoBowls() ? 2 : 1;
        for (int copy = 0; copy < copies; copy++)
            for (PlanQuestion.Assistant each : question.assistants())
                people.add(new Assistant(windows(question, each)));
        int scales = copies * Math.max(1, question.scales().size());
        StaggerProblem problem =
                new StaggerProblem(question.handOverMinutes(), maxWaitMinutes, builder.runs, people, scales);
        return new RelaxedProblem(problem, builder.parts, builder.services, builder.unavoidable);
    }

    /** What the largest bowl holds, in milligrams. */
    public static int capacity(PlanQuestion question) {
        return question.bowlSizes().stream()
                .filter(size -> size.count() > 0)
                .mapToInt(size -> size.usableMilligrams() - size.residueMilligrams())
                .max()
                .orElse(0);
    }

    private static List<DutyWindow> windows(PlanQuestion question, PlanQuestion.Assistant assistant) {
        List<DutyWindow> windows = new ArrayList<>();
        int free = Math.max(question.nowMinute(), assistant.busyUntilMinute());
        for (Minutes duty : assistant.onDuty())
            if (free < duty.to()) windows.add(new DutyWindow(Math.max(free, duty.from()), duty.to()));
        return windows;
    }

    private static final class Builder {
        private final Plan plan;
        private final int capacity;
        private final int handOver;
        private final List<StaggerRun> runs = new ArrayList<>();
        private final List<Part> parts = new ArrayList<>();
        private final List<List<Integer>> services = new ArrayList<>();
        private int unavoidable;

        Builder(PlanQuestion question, Plan plan) {
            this.plan = plan;
            this.capacity = capacity(question);
            this.handOver = question.handOverMinutes();
        }

        void add(ServiceTimeline timeline) {
            int[] lateAt = new int[timeline.feeds().size()];
            int[] from = new int[lateAt.length];
            int late = 0;
            for (int k = 0; k < lateAt.length; k++) {
                FeedSegment feed = timeline.feeds().get(k);
                LiveFeeding.End end =
                        LiveFeeding.feed(timeline, feed, late, timeline.noHolds(), new int[timeline.minutes()]);
                late = end.delay();
                lateAt[k] = late;
                from[k] = end.minute();
            }
            unavoidable += late;
            List<Integer> own = new ArrayList<>();
            for (int k = 0; k < lateAt.length; k++) {
                FeedSegment feed = timeline.feeds().get(k);
                if (lateAt[k] == late && feed.refusal().isEmpty() && fed(timeline, feed))
                    run(timeline, feed, from[k], late, own);
            }
            if (!own.isEmpty()) services.add(own);
        }

        /** Whether the plan found weights for the feed. */
        private boolean fed(ServiceTimeline timeline, FeedSegment feed) {
            int service = timeline.task().service();
            List<String> zones = timeline.zonesIn(feed.from(), feed.to()).stream()
                    .map(slot -> slot.zone().zone())
                    .toList();
            return plan.notes().stream()
                            .noneMatch(note -> note.kind().equals("NO_FORMULA") && note.service() == service)
                    || plan.bowls().stream()
                            .filter(bowl -> bowl.service() == service && bowl.run() == feed.run())
                            .anyMatch(bowl -> bowl.zones().stream().anyMatch(zones::contains));
        }

        private void run(ServiceTimeline timeline, FeedSegment feed, int from, int late, List<Integer> own) {
            List<Integer> use = new ArrayList<>();
            List<Integer> needUpTo = new ArrayList<>(List.of(0));
            Set<String> zones = new LinkedHashSet<>();
            for (int at = from; at < feed.to(); at++) {
                int need = timeline.need(at, at + 1);
                if (need == 0) continue;
                use.add(timeline.starts()[at] + late);
                zones.add(timeline.zone(at).zone().zone());
                needUpTo.add(needUpTo.get(needUpTo.size() - 1) + need);
            }
            if (use.isEmpty()) return;
            int mix = feed.recipe().mixMinutes();
            int life = feed.recipe().lifeMinutes();
            int longest = life - mix - handOver;
            BowlRule rule = (a, b) ->
                    needUpTo.get(b) - needUpTo.get(a) <= capacity && use.get(b - 1) + 1 - use.get(a) <= longest
                            ? 1
                            : BowlRule.NO_BOWL;
            own.add(runs.size());
            parts.add(new Part(timeline.task().service(), List.copyOf(zones), needUpTo));
            runs.add(new StaggerRun(runs.size(), use, mix, life, rule));
        }
    }
}
