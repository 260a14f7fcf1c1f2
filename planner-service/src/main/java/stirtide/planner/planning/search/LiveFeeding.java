package stirtide.planner.planning.search;

import java.util.List;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;

/**
 * Feeds a timeline from the bowls that are begun already, in their order, each as long as it lives and lasts, a minute at a
 * time. Grams left in a bowl and minutes done of a zone are estimates, so no other bowl is mixed for very little:
 * <ul>
 *   <li>a bowl short by no more than half a gram at its end still feeds the minute;
 *   <li>where the live bowls would feed all that is left of a feed but for one minute's grams, they feed it all;
 *   <li>where the mix lives until the last minute of a zone that has begun, what that minute needs is applied before.
 * </ul>
 * No mix is ever applied after its life.
 */
record LiveFeeding(ServiceTimeline timeline, FeedSegment feed, int[] holds, int[] delays) {
    static final int SLACK_MILLIGRAMS = 500;

    /**
     * Where the live bowls leave off.
     *
     * @param minute first minute of application that they do not feed
     * @param delay minutes the service is late by then
     */
    record End(int minute, int delay) {}

    /**
     * Feeds.
     *
     * @param delay minutes the service is late at the start of the feed
     * @param holds minutes the client waits before each zone so that its bowls come in time
     * @param delays filled with the delay of each minute fed
     */
    static End feed(ServiceTimeline timeline, FeedSegment feed, int delay, int[] holds, int[] delays) {
        LiveFeeding feeding = new LiveFeeding(timeline, feed, holds, delays);
        End strict = feeding.feed(delay, SLACK_MILLIGRAMS);
        int lastMinute = timeline.need(feed.to() - 1, feed.to());
        if (strict.minute() == feed.to() || lastMinute <= SLACK_MILLIGRAMS) return strict;
        End generous = feeding.feed(delay, lastMinute);
        return generous.minute() == feed.to() ? generous : feeding.feed(delay, SLACK_MILLIGRAMS);
    }

    private End feed(int delay, int slackOfLast) {
        int at = feed.from();
        int late = delay;
        List<LiveSupply> live = feed.live();
        for (int k = 0; k < live.size(); k++) {
            LiveSupply bowl = live.get(k);
            if (bowl.leftMilligrams() <= 0) continue;
            long left = (long) bowl.leftMilligrams() + (k == live.size() - 1 ? slackOfLast : SLACK_MILLIGRAMS);
            for (; at < feed.to(); at++) {
                int need = timeline.need(at, at + 1);
                int held = late + timeline.holdBefore(at, holds);
                if (need > 0) {
                    int start = Math.max(timeline.starts()[at] + held, bowl.atChairMinute());
                    boolean lives = start < bowl.lifeEndMinute() || start == bowl.lifeEndMinute() && lastOfBegun(at);
                    if (!lives || need > left) break;
                    held = start - timeline.starts()[at];
                    left -= need;
                }
                late = held;
                delays[at] = late;
            }
        }
        return new End(at, late);
    }

    private boolean lastOfBegun(int at) {
        ServiceTimeline.ZoneSlot slot = timeline.zone(at);
        return at + 1 == feed.to()
                && at > slot.from()
                && slot.zone().begunMinute().isPresent();
    }
}
