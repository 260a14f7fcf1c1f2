package stirtide.demo.print;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.BatchShare;
import stirtide.events.day.DayEvent;
import stirtide.events.day.OverMixCause;
import stirtide.events.day.StoredEvent;

/** What became of one bowl, gathered from the events. Weights are milligrams. */
final class BowlSummary {
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
    boolean inside;
    Optional<Instant> handedOverAt = Optional.empty();
    Optional<Instant> closedAt = Optional.empty();
    int left;
    Optional<OverMixCause> cause = Optional.empty();

    private BowlSummary(DayEvent.BowlBegun begun, Instant at) {
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

    private BowlSummary(DayEvent.BatchBegun begun, BatchShare share, Instant at) {
        this.bowl = share.bowl();
        this.service = share.service();
        this.sizeId = share.bowlSizeId();
        this.personId = begun.personId();
        this.lightenerId = begun.planned().lightenerId();
        this.begunAt = at;
        this.lifeEnds = begun.lifeEnds();
        holds(
                share.milligrams(),
                begun.planned().lightenerMilligrams(),
                begun.planned().totalMilligrams());
    }

    /** So many milligrams of a mix that has so much lightener in all of it. */
    private void holds(int milligrams, int wholeLightener, int whole) {
        lightener = (int) ((long) milligrams * wholeLightener / whole);
        developer = milligrams - lightener;
    }

    int mixed() {
        return lightener + developer;
    }

    /** The stories of all bowls, in the order in which they were begun. */
    static List<BowlSummary> of(List<StoredEvent> events) {
        SortedMap<String, BowlSummary> byId = new TreeMap<>();
        List<BowlSummary> inOrder = new ArrayList<>();
        SortedMap<String, String> pairs = new TreeMap<>();
        for (StoredEvent stored : events) {
            if (stored.event() instanceof DayEvent.BowlBegun begun) {
                BowlSummary story = new BowlSummary(begun, stored.time());
                byId.put(begun.bowl(), story);
                inOrder.add(story);
            } else if (stored.event() instanceof DayEvent.BatchBegun begun) {
                for (BatchShare share : begun.shares()) {
                    BowlSummary story = new BowlSummary(begun, share, stored.time());
                    byId.put(share.bowl(), story);
                    inOrder.add(story);
                }
                pairs.put(begun.shares().get(0).bowl(), begun.shares().get(1).bowl());
            } else if (!tellMix(byId, pairs, stored)) tell(byId, stored);
        }
        return inOrder;
    }

    /** Weighing, dividing and binning of one mix for two bowls; until it is divided each counts as planned. */
    private static boolean tellMix(
            SortedMap<String, BowlSummary> bowls, SortedMap<String, String> pairs, StoredEvent stored) {
        if (stored.event() instanceof DayEvent.BatchWeighed weighed) {
            BowlSummary first = told(bowls, weighed.batch());
            BowlSummary second = told(bowls, pairs.getOrDefault(weighed.batch(), ""));
            int liquid = weighed.developerParts().stream()
                    .mapToInt(part -> part.milligrams())
                    .sum();
            int whole = weighed.lightenerMilligrams() + liquid;
            int share = (int) ((long) whole * second.mixed() / (first.mixed() + second.mixed()));
            first.holds(whole - share, weighed.lightenerMilligrams(), whole);
            second.holds(share, weighed.lightenerMilligrams(), whole);
            for (BowlSummary story : List.of(first, second)) {
                story.weighed = true;
                story.inside = weighed.insideDirections();
            }
        } else if (stored.event() instanceof DayEvent.BatchDivided divided) {
            BowlSummary first = told(bowls, divided.batch());
            BowlSummary second = told(bowls, pairs.getOrDefault(divided.batch(), ""));
            int whole = first.mixed() + second.mixed();
            int lightener = first.lightener + second.lightener;
            first.holds(whole - divided.pouredMilligrams(), lightener, whole);
            second.holds(divided.pouredMilligrams(), lightener, whole);
        } else if (stored.event() instanceof DayEvent.BatchBinned binned) {
            for (String id : List.of(binned.batch(), pairs.getOrDefault(binned.batch(), ""))) {
                BowlSummary story = told(bowls, id);
                story.closedAt = Optional.of(stored.time());
                story.left = story.mixed();
                story.cause = Optional.of(binned.cause());
            }
        } else return false;
        return true;
    }

    private static void tell(SortedMap<String, BowlSummary> bowls, StoredEvent stored) {
        if (stored.event() instanceof DayEvent.BowlWeighed weighed) {
            BowlSummary story = told(bowls, weighed.bowl());
            story.lightener = weighed.lightenerMilligrams();
            story.developer = weighed.developerParts().stream()
                    .mapToInt(part -> part.milligrams())
                    .sum();
            story.weighed = true;
            story.inside = weighed.insideDirections();
        } else if (stored.event() instanceof DayEvent.BowlHandedOver over) {
            told(bowls, over.bowl()).handedOverAt = Optional.of(stored.time());
        } else if (stored.event() instanceof DayEvent.BowlFinished done) {
            told(bowls, done.bowl()).closedAt = Optional.of(stored.time());
        } else if (stored.event() instanceof DayEvent.BowlBinned binned) {
            BowlSummary story = told(bowls, binned.bowl());
            story.closedAt = Optional.of(stored.time());
            story.left = binned.leftMilligrams();
            story.cause = Optional.of(binned.cause());
        }
    }

    private static BowlSummary told(SortedMap<String, BowlSummary> bowls, String bowl) {
        BowlSummary story = bowls.get(bowl);
        if (story == null) throw new IllegalStateException("bowl " + bowl + " was never begun");
        return story;
    }
}
