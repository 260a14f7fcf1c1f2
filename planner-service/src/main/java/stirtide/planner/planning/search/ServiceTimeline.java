package stirtide.planner.planning.search;

import java.util.List;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/**
 * One service as a row of minutes of application. What a zone needs is spread evenly: up to its minute i it has used
 * {@code floor(need * i / applyMinutes)} milligrams. The last minute of a run needs the run's reserve on top.
 *
 * @param task the service
 * @param starts when each minute of application would start without waits
 * @param needUpTo milligrams used before each minute; one longer than {@code starts}
 * @param zoneAt place in {@code zones} of each minute
 * @param feedAt place in {@code feeds} of each minute
 * @param zones zones still to be applied, in order
 * @param feeds stretches fed by one formula, in order
 * @param splits runs that had to be split, each with a sentence
 * @param idleFrom minute from which the stylist applies nothing until the first minute
 */
record ServiceTimeline(
        ServiceTask task,
        int[] starts,
        int[] needUpTo,
        int[] zoneAt,
        int[] feedAt,
        List<ZoneSlot> zones,
        List<FeedSegment> feeds,
        List<String> splits,
        int idleFrom) {
    /**
     * A zone on its timeline.
     *
     * @param zone the zone
     * @param lightenerId lightener of its run
     * @param from first minute of application
     * @param to minute of application after the last
     * @param longestMinutes longest processing time, or a very large number when the directions name none
     */
    record ZoneSlot(ZoneTask zone, String lightenerId, int from, int to, int longestMinutes) {}

    int minutes() {
        return starts.length;
    }

    int need(int from, int to) {
        return needUpTo[to] - needUpTo[from];
    }

    /** End of the minute before {@code to} without waits. */
    int endOf(int to) {
        return starts[to - 1] + 1;
    }

    FeedSegment feed(int minute) {
        return feeds.get(feedAt[minute]);
    }

    ZoneSlot zone(int minute) {
        return zones.get(zoneAt[minute]);
    }

    /** Minutes the client waits before a minute of application, when it is the first of a zone. */
    int holdBefore(int minute, int[] holds) {
        return zone(minute).from() == minute ? holds[zoneAt[minute]] : 0;
    }

    int[] noHolds() {
        return new int[zones.size()];
    }

    /** Zones of which a part is in this stretch. */
    List<ZoneSlot> zonesIn(int from, int to) {
        return zones.stream()
                .filter(slot -> slot.from() < to && from < slot.to())
                .toList();
    }

    /** The same service, with nothing to be mixed for one feed. */
    ServiceTimeline refusing(FeedSegment feed, FeedSegment.Refusal refusal) {
        FeedSegment refused = new FeedSegment(
                feed.run(), feed.from(), feed.to(), feed.recipe(), feed.live(), java.util.Optional.of(refusal));
        List<FeedSegment> others =
                feeds.stream().map(each -> each == feed ? refused : each).toList();
        return new ServiceTimeline(task, starts, needUpTo, zoneAt, feedAt, zones, others, splits, idleFrom);
    }

    /** Latest end of a zone that does not process too long, given its start; its bare application is always let be. */
    int latestEnd(ZoneSlot slot, int applyStart) {
        int bare = slot.zone().begunMinute().isPresent()
                ? starts[slot.from()] + slot.to() - slot.from()
                : applyStart + slot.to() - slot.from();
        return (int) Math.max(bare, Math.min(Integer.MAX_VALUE, (long) applyStart + slot.longestMinutes()));
    }

    /** Start of application of a zone whose first minute to come starts {@code delay} minutes late. */
    int applyStart(ZoneSlot slot, int delay) {
        return slot.zone().begunMinute().orElse(starts[slot.from()] + delay);
    }
}
