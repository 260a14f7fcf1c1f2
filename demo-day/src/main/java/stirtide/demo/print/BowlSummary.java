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

/** The course of one bowl, collected from the events. Weights are in milligrams. */
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

    /** Sets the content to a share of a mix with that much lightener in the whole. */
    private void holds(int milligrams, int wholeLightener, int whole) {
        lightener = (int) ((long) milligrams * wholeLightener / whole);
        developer = milligrams - lightener;
    }

    int mixed() {
        return lightener + developer;
    }

    /** All bowls, in the order in which they were begun. */
    static List<BowlSummary> of(List<StoredEvent> events) {
        SortedMap<String, BowlSummary> byId = new TreeMap<>();
        List<BowlSummary> inOrder = new ArrayList<>();
        SortedMap<String, String> pairs = new TreeMap<>();
        for (StoredEvent stored : events) {
            if (stored.event() instanceof DayEvent.BowlBegun begun) {
                BowlSummary summary = new BowlSummary(begun, stored.time());
                byId.put(begun.bowl(), summary);
                inOrder.add(summary);
            } else if (stored.event() instanceof DayEvent.BatchBegun begun) {
                for (BatchShare share : begun.shares()) {
                    BowlSummary summary = new BowlSummary(begun, share, stored.time());
                    byId.put(share.bowl(), summary);
                    inOrder.add(summary);
                }
                pairs.put(begun.shares().get(0).bowl(), begun.shares().get(1).bowl());
            } else if (!applyMix(byId, pairs, stored)) apply(byId, stored);
        }
        return inOrder;
    }

    /** Applies weighing, dividing and binning of one mix for two bowls; until it is divided, shares are as planned. */
    private static boolean applyMix(
            SortedMap<String, BowlSummary> bowls, SortedMap<String, String> pairs, StoredEvent stored) {
        if (stored.event() instanceof DayEvent.BatchWeighed weighed) {
            BowlSummary first = known(bowls, weighed.batch());
            BowlSummary second = known(bowls, pairs.getOrDefault(weighed.batch(), ""));
            int liquid = weighed.developerParts().stream()
                    .mapToInt(part -> part.milligrams())
                    .sum();
            int whole = weighed.lightenerMilligrams() + liquid;
            int share = (int) ((long) whole * second.mixed() / (first.mixed() + second.mixed()));
            first.holds(whole - share, weighed.lightenerMilligrams(), whole);
            second.holds(share, weighed.lightenerMilligrams(), whole);
            for (BowlSummary summary : List.of(first, second)) {
                summary.weighed = true;
                summary.inside = weighed.insideDirections();
            }
        } else if (stored.event() instanceof DayEvent.BatchDivided divided) {
            BowlSummary first = known(bowls, divided.batch());
            BowlSummary second = known(bowls, pairs.getOrDefault(divided.batch(), ""));
            int whole = first.mixed() + second.mixed();
            int lightener = first.lightener + second.lightener;
            first.holds(whole - divided.pouredMilligrams(), lightener, whole);
            second.holds(divided.pouredMilligrams(), lightener, whole);
        } else if (stored.event() instanceof DayEvent.BatchBinned binned) {
            for (String id : List.of(binned.batch(), pairs.getOrDefault(binned.batch(), ""))) {
                BowlSummary summary = known(bowls, id);
                summary.closedAt = Optional.of(stored.time());
                summary.left = summary.mixed();
                summary.cause = Optional.of(binned.cause());
            }
        } else return false;
        return true;
    }

    private static void apply(SortedMap<String, BowlSummary> bowls, StoredEvent stored) {
        if (stored.event() instanceof DayEvent.BowlWeighed weighed) {
            BowlSummary summary = known(bowls, weighed.bowl());
            summary.lightener = weighed.lightenerMilligrams();
            summary.developer = weighed.developerParts().stream()
                    .mapToInt(part -> part.milligrams())
                    .sum();
            summary.weighed = true;
            summary.inside = weighed.insideDirections();
        } else if (stored.event() instanceof DayEvent.BowlHandedOver over) {
            known(bowls, over.bowl()).handedOverAt = Optional.of(stored.time());
        } else if (stored.event() instanceof DayEvent.BowlFinished done) {
            known(bowls, done.bowl()).closedAt = Optional.of(stored.time());
        } else if (stored.event() instanceof DayEvent.BowlBinned binned) {
            BowlSummary summary = known(bowls, binned.bowl());
            summary.closedAt = Optional.of(stored.time());
            summary.left = binned.leftMilligrams();
            summary.cause = Optional.of(binned.cause());
        }
    }

    private static BowlSummary known(SortedMap<String, BowlSummary> bowls, String bowl) {
        BowlSummary summary = bowls.get(bowl);
        if (summary == null) throw new IllegalStateException("bowl " + bowl + " was never begun");
        return summary;
    }
}
