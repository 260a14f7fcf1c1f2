package stirtide.demo.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.DayEvent;
import stirtide.events.day.OverMixCause;
import stirtide.events.day.StoredEvent;

/** What became of one bowl, gathered from the events. Weights are milligrams. */
final class BowlStory {
    final String bowl;
    final int service;
    final String sizeId;
    final String personId;
    final String lightenerId;
    final Instant begunAt;
    final Instant lifeEnds;
    int lightener;
    int developer;
    boolean weighed;
    Optional<Instant> handedOverAt = Optional.empty();
    Optional<Instant> closedAt = Optional.empty();
    int left;
    Optional<OverMixCause> cause = Optional.empty();

    private BowlStory(DayEvent.BowlBegun begun, Instant at) {
        this.bowl = begun.bowl();
        this.service = begun.service();
        this.sizeId = begun.bowlSizeId();
        this.personId = begun.personId();
        this.lightenerId = begun.planned().lightenerId();
        this.begunAt = at;
        this.lifeEnds = begun.lifeEnds();
        this.lightener = begun.planned().lightenerMilligrams();
        this.developer = begun.planned().developerMilligrams();
    }

    int mixed() {
        return lightener + developer;
    }

    /** The stories of all bowls, in the order in which they were begun. */
    static List<BowlStory> of(List<StoredEvent> events) {
        SortedMap<String, BowlStory> byId = new TreeMap<>();
        List<BowlStory> inOrder = new ArrayList<>();
        for (StoredEvent stored : events) {
            if (stored.event() instanceof DayEvent.BowlBegun begun) {
                BowlStory story = new BowlStory(begun, stored.time());
                byId.put(begun.bowl(), story);
                inOrder.add(story);
            } else tell(byId, stored);
        }
        return inOrder;
    }

    private static void tell(SortedMap<String, BowlStory> bowls, StoredEvent stored) {
        if (stored.event() instanceof DayEvent.BowlWeighed weighed) {
            BowlStory story = told(bowls, weighed.bowl());
            story.lightener = weighed.lightenerMilligrams();
            story.developer = weighed.developerParts().stream()
                    .mapToInt(part -> part.milligrams())
                    .sum();
            story.weighed = true;
        } else if (stored.event() instanceof DayEvent.BowlHandedOver over) {
            told(bowls, over.bowl()).handedOverAt = Optional.of(stored.time());
        } else if (stored.event() instanceof DayEvent.BowlFinished done) {
            told(bowls, done.bowl()).closedAt = Optional.of(stored.time());
        } else if (stored.event() instanceof DayEvent.BowlBinned binned) {
            BowlStory story = told(bowls, binned.bowl());
            story.closedAt = Optional.of(stored.time());
            story.left = binned.leftMilligrams();
            story.cause = Optional.of(binned.cause());
        }
    }

    private static BowlStory told(SortedMap<String, BowlStory> bowls, String bowl) {
        BowlStory story = bowls.get(bowl);
        if (story == null) throw new IllegalStateException("bowl " + bowl + " was never begun");
        return story;
    }
}
