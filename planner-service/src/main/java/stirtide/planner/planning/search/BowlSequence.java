package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Goes through a service from bowl to bowl: live bowls feed first, then whatever is offered for the next minute in need. */
final class BowlSequence {
    private BowlSequence() {}

    /** Offers bowls. */
    @FunctionalInterface
    interface Offer {
        /**
         * The bowl that feeds the minute of application {@code at}.
         *
         * @param late minutes the service is late by then
         * @param before bowls of the service so far
         * @return empty when there is none that keeps the rules
         */
        Optional<MixAssignment> bowl(FeedSegment feed, int at, int late, List<MixAssignment> before);
    }

    /** All bowls of the service, or empty when for some minute none is offered. */
    static Optional<List<MixAssignment>> through(ServiceTimeline timeline, Offer offer) {
        List<MixAssignment> assignments = new ArrayList<>();
        int[] noHolds = timeline.noHolds();
        int[] delays = new int[timeline.minutes()];
        int late = 0;
        int at = 0;
        while (at < timeline.minutes()) {
            FeedSegment feed = timeline.feed(at);
            if (at == feed.from() && !feed.live().isEmpty()) {
                LiveFeeding.End end = LiveFeeding.feed(timeline, feed, late, noHolds, delays);
                at = end.minute();
                late = end.delay();
                if (at >= feed.to()) continue;
            }
            if (feed.refusal().isPresent()) at = feed.to();
            else if (timeline.need(at, at + 1) == 0) at++;
            else {
                Optional<MixAssignment> assignment = offer.bowl(feed, at, late, assignments);
                if (assignment.isEmpty()) return Optional.empty();
                assignments.add(assignment.get());
                late = assignment.get().use() - timeline.starts()[at];
                at = assignment.get().to();
            }
        }
        return Optional.of(assignments);
    }
}
