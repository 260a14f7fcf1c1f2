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
    static Optional<List<MixAssignment>> through(ServiceTimeline track, Offer offer) {
        List<MixAssignment> portions = new ArrayList<>();
        int[] noHolds = track.noHolds();
        int[] delays = new int[track.minutes()];
        int late = 0;
        int at = 0;
        while (at < track.minutes()) {
            FeedSegment feed = track.feed(at);
            if (at == feed.from() && !feed.live().isEmpty()) {
                LiveFeeding.End end = LiveFeeding.feed(track, feed, late, noHolds, delays);
                at = end.minute();
                late = end.delay();
                if (at >= feed.to()) continue;
            }
            if (feed.refusal().isPresent()) at = feed.to();
            else if (track.need(at, at + 1) == 0) at++;
            else {
                Optional<MixAssignment> portion = offer.bowl(feed, at, late, portions);
                if (portion.isEmpty()) return Optional.empty();
                portions.add(portion.get());
                late = portion.get().use() - track.starts()[at];
                at = portion.get().to();
            }
        }
        return Optional.of(portions);
    }
}
