package stirtide.planner.planning.search;

import java.util.List;
import stirtide.planner.planning.search.ServiceTimeline.ZoneSlot;

/**
 * How one service is fed.
 *
 * @param timeline the service
 * @param assignments its bowls still to be mixed, in order of use
 * @param holds minutes the client waits before each zone so that all its bowls come in time
 * @param delays minutes by which each minute of application starts late because the client waits
 * @param complete whether every minute that can be fed is fed, and every bowl feeds
 * @param score what it costs
 */
record ServicePlan(
        ServiceTimeline timeline,
        List<MixAssignment> assignments,
        int[] holds,
        int[] delays,
        boolean complete,
        SearchScore score) {
    /** Lays a service out with its assignments; they must be in order. */
    static ServicePlan of(
            ServiceTimeline timeline,
            List<MixAssignment> assignments,
            int[] holds,
            SearchScore moves,
            PlanQuestion question) {
        int[] delays = new int[timeline.minutes()];
        int late = 0;
        int next = 0;
        boolean complete = true;
        for (int at = 0; at < timeline.minutes(); ) {
            FeedSegment feed = timeline.feed(at);
            if (at == feed.from() && !feed.live().isEmpty()) {
                LiveFeeding.End end = LiveFeeding.feed(timeline, feed, late, holds, delays);
                late = end.delay();
                at = end.minute();
                if (at >= feed.to()) continue;
            }
            int to = at + 1;
            if (next < assignments.size() && assignments.get(next).from() == at) {
                MixAssignment assignment = assignments.get(next++);
                late = assignment.use() - timeline.starts()[at];
                to = assignment.to();
            } else {
                late += timeline.holdBefore(at, holds);
                complete &= feed.refusal().isPresent() || timeline.need(at, at + 1) == 0;
            }
            for (; at < to; at++) delays[at] = late;
        }
        return new ServicePlan(
                timeline,
                assignments,
                holds,
                delays,
                complete && next == assignments.size(),
                score(timeline, assignments, delays, question).plus(moves));
    }

    private static SearchScore score(
            ServiceTimeline timeline, List<MixAssignment> assignments, int[] delays, PlanQuestion question) {
        int stylist = 0;
        long overMix = 0;
        int age = 0;
        for (MixAssignment assignment : assignments) {
            if (assignment.person() == MixAssignment.STYLIST) stylist++;
            overMix += assignment.weigh().surplusMilligrams()
                    + question.bowlSizes().get(assignment.size()).residueMilligrams();
            age += assignment.use() - assignment.mix();
        }
        int wait = delays.length == 0 ? 0 : delays[delays.length - 1];
        return new SearchScore(overMinutes(timeline, delays) + unfedMinutes(timeline), stylist, wait, overMix, age, 0);
    }

    private static int unfedMinutes(ServiceTimeline timeline) {
        int unfed = 0;
        for (FeedSegment feed : timeline.feeds()) if (feed.refusal().isPresent()) unfed += feed.to() - feed.from();
        return unfed;
    }

    private static int overMinutes(ServiceTimeline timeline, int[] delays) {
        int over = 0;
        for (ZoneSlot slot : timeline.zones()) {
            int start = timeline.applyStart(slot, delays[slot.from()]);
            int end = timeline.endOf(slot.to()) + delays[slot.to() - 1];
            over += Math.max(0, end - timeline.latestEnd(slot, start));
        }
        return over;
    }

    /** Place of the first zone that has not begun and would be applied too long, -1 when there is none. */
    int firstOver() {
        return firstOver(timeline, delays);
    }

    static int firstOver(ServiceTimeline timeline, int[] delays) {
        for (int zone = 0; zone < timeline.zones().size(); zone++) {
            ZoneSlot slot = timeline.zones().get(zone);
            if (slot.zone().begunMinute().isPresent()) continue;
            int start = timeline.applyStart(slot, delays[slot.from()]);
            if (timeline.endOf(slot.to()) + delays[slot.to() - 1] > timeline.latestEnd(slot, start)) return zone;
        }
        return -1;
    }

    int applyStart(ZoneSlot slot) {
        return timeline.applyStart(slot, delays[slot.from()]);
    }

    int applyEnd(ZoneSlot slot) {
        return timeline.endOf(slot.to()) + delays[slot.to() - 1];
    }

    /** Minutes the client waits before the zone that starts with this minute of application, 0 for other minutes. */
    int holdBefore(int at) {
        return timeline.holdBefore(at, holds);
    }

    /** Minutes the client waits for a bowl. */
    int waitFor(MixAssignment assignment) {
        int before = assignment.from() == 0 ? 0 : delays[assignment.from() - 1];
        return delays[assignment.from()] - before;
    }
}
