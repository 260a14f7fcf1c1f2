package stirtide.planner.plan;

import stirtide.planner.plan.PlanQuestion.LiveSupply;

/**
 * Feeds a track from the bowls that are begun already, in their order, each as long as it lives and lasts, a minute at a
 * time. A bowl that is short by no more than half a gram at its end still feeds the minute: the grams left are an
 * estimate, and nobody mixes another bowl for so little.
 */
final class LiveFeeding {
    static final int SLACK_MILLIGRAMS = 500;

    private LiveFeeding() {}

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
     * @param delays filled with the delay of each minute fed
     */
    static End feed(Track track, Feed feed, int delay, int[] delays) {
        int at = feed.from();
        int late = delay;
        for (LiveSupply bowl : feed.live()) {
            if (bowl.leftMilligrams() <= 0) continue;
            long left = (long) bowl.leftMilligrams() + SLACK_MILLIGRAMS;
            for (; at < feed.to(); at++) {
                int need = track.need(at, at + 1);
                if (need > 0) {
                    int start = Math.max(track.starts()[at] + late, bowl.atChairMinute());
                    if (start >= bowl.lifeEndMinute() || need > left) break;
                    late = start - track.starts()[at];
                    left -= need;
                }
                delays[at] = late;
            }
        }
        return new End(at, late);
    }
}
