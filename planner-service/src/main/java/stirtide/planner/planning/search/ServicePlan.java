package stirtide.planner.planning.search;

import java.util.List;
import stirtide.planner.planning.search.ServiceTimeline.ZoneSlot;

/**
 * How one service is fed.
 *
 * @param track the service
 * @param portions its bowls still to be mixed, in order of use
 * @param holds minutes the client waits before each zone so that all its bowls come in time
 * @param delays minutes by which each minute of application starts late because the client waits
 * @param score what it costs
 */
record ServicePlan(ServiceTimeline track, List<MixAssignment> portions, int[] holds, int[] delays, SearchScore score) {
    /** Lays a service out with its portions; they must be in order and feed every minute that needs feeding. */
    static ServicePlan of(
            ServiceTimeline track,
            List<MixAssignment> portions,
            int[] holds,
            SearchScore moves,
            PlanQuestion question) {
        int[] delays = new int[track.minutes()];
        int late = 0;
        int next = 0;
        for (int at = 0; at < track.minutes(); ) {
            FeedSegment feed = track.feed(at);
            if (at == feed.from() && !feed.live().isEmpty()) {
                LiveFeeding.End end = LiveFeeding.feed(track, feed, late, holds, delays);
                late = end.delay();
                at = end.minute();
                if (at >= feed.to()) continue;
            }
            int to = at + 1;
            if (next < portions.size() && portions.get(next).from() == at) {
                MixAssignment portion = portions.get(next++);
                late = portion.use() - track.starts()[at];
                to = portion.to();
            } else {
                late += track.holdBefore(at, holds);
            }
            for (; at < to; at++) delays[at] = late;
        }
        return new ServicePlan(
                track,
                portions,
                holds,
                delays,
                score(track, portions, delays, question).plus(moves));
    }

    private static SearchScore score(
            ServiceTimeline track, List<MixAssignment> portions, int[] delays, PlanQuestion question) {
        int stylist = 0;
        long overMix = 0;
        int age = 0;
        for (MixAssignment portion : portions) {
            if (portion.person() == MixAssignment.STYLIST) stylist++;
            overMix += portion.weigh().surplusMilligrams()
                    + question.bowlSizes().get(portion.size()).residueMilligrams();
            age += portion.use() - portion.mix();
        }
        int wait = delays.length == 0 ? 0 : delays[delays.length - 1];
        return new SearchScore(overMinutes(track, delays) + unfedMinutes(track), stylist, wait, overMix, age, 0);
    }

    private static int unfedMinutes(ServiceTimeline track) {
        int unfed = 0;
        for (FeedSegment feed : track.feeds()) if (feed.refusal().isPresent()) unfed += feed.to() - feed.from();
        return unfed;
    }

    private static int overMinutes(ServiceTimeline track, int[] delays) {
        int over = 0;
        for (ZoneSlot slot : track.zones()) {
            int start = track.applyStart(slot, delays[slot.from()]);
            int end = track.endOf(slot.to()) + delays[slot.to() - 1];
            over += Math.max(0, end - track.latestEnd(slot, start));
        }
        return over;
    }

    /** Place of the first zone that has not begun and would be applied too long, -1 when there is none. */
    int firstOver() {
        return firstOver(track, delays);
    }

    static int firstOver(ServiceTimeline track, int[] delays) {
        for (int zone = 0; zone < track.zones().size(); zone++) {
            ZoneSlot slot = track.zones().get(zone);
            if (slot.zone().begunMinute().isPresent()) continue;
            int start = track.applyStart(slot, delays[slot.from()]);
            if (track.endOf(slot.to()) + delays[slot.to() - 1] > track.latestEnd(slot, start)) return zone;
        }
        return -1;
    }

    int applyStart(ZoneSlot slot) {
        return track.applyStart(slot, delays[slot.from()]);
    }

    int applyEnd(ZoneSlot slot) {
        return track.endOf(slot.to()) + delays[slot.to() - 1];
    }

    /** Minutes the client waits before the zone that starts with this minute of application, 0 for other minutes. */
    int holdBefore(int at) {
        return track.holdBefore(at, holds);
    }

    /** Minutes the client waits for a bowl. */
    int waitFor(MixAssignment portion) {
        int before = portion.from() == 0 ? 0 : delays[portion.from() - 1];
        return delays[portion.from()] - before;
    }
}
