package stirtide.demo.print;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.BatchShare;
import stirtide.events.day.DayEvent;
import stirtide.events.day.OverMixCause;
import stirtide.events.day.StoredEvent;
import stirtide.events.formula.DeveloperPart;

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

    private void binned(Instant at, int leftMilligrams, OverMixCause why) {
        closedAt = Optional.of(at);
        left = leftMilligrams;
        cause = Optional.of(why);
    }

    private static int sum(List<DeveloperPart> parts) {
        return parts.stream().mapToInt(DeveloperPart::milligrams).sum();
    }

    int mixed() {
        return lightener + developer;
    }

    /** All bowls, in the order in which they were begun. */
    static List<BowlSummary> of(List<StoredEvent> events) {
        Map<String, BowlSummary> byId = new LinkedHashMap<>();
        SortedMap<String, String> pairs = new TreeMap<>();
        for (StoredEvent stored : events) {
            if (stored.event() instanceof DayEvent.BowlBegun begun) {
                byId.put(begun.bowl(), new BowlSummary(begun, stored.time()));
            } else if (stored.event() instanceof DayEvent.BatchBegun begun) {
                for (BatchShare share : begun.shares())
                    byId.put(share.bowl(), new BowlSummary(begun, share, stored.time()));
                pairs.put(begun.shares().get(0).bowl(), begun.shares().get(1).bowl());
            } else if (!applyMix(byId, pairs, stored)) apply(byId, stored);
        }
        return List.copyOf(byId.values());
    }

    /** Applies weighing, dividing and binning of one mix for two bowls; until it is divided, shares are as planned. */
    private static boolean applyMix(
            Map<String, BowlSummary> bowls, SortedMap<String, String> pairs, StoredEvent stored) {
        if (stored.event() instanceof DayEvent.BatchWeighed weighed) {
            BowlSummary first = known(bowls, weighed.batch());
            BowlSummary second = known(bowls, pairs.getOrDefault(weighed.batch(), ""));
            int whole = weighed.lightenerMilligrams() + sum(weighed.developerParts());
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
                summary.binned(stored.time(), summary.mixed(), binned.cause());
            }
        } else return false;
        return true;
    }

    private static void apply(Map<String, BowlSummary> bowls, StoredEvent stored) {
        if (stored.event() instanceof DayEvent.BowlWeighed weighed) {
            BowlSummary summary = known(bowls, weighed.bowl());
            summary.lightener = weighed.lightenerMilligrams();
            summary.developer = sum(weighed.developerParts());
            summary.weighed = true;
            summary.inside = weighed.insideDirections();
        } else if (stored.event() instanceof DayEvent.BowlHandedOver over) {
            known(bowls, over.bowl()).handedOverAt = Optional.of(stored.time());
        } else if (stored.event() instanceof DayEvent.BowlFinished done) {
            known(bowls, done.bowl()).closedAt = Optional.of(stored.time());
        } else if (stored.event() instanceof DayEvent.BowlBinned binned) {
            known(bowls, binned.bowl()).binned(stored.time(), binned.leftMilligrams(), binned.cause());
        }
    }

    private static BowlSummary known(Map<String, BowlSummary> bowls, String bowl) {
        BowlSummary summary = bowls.get(bowl);
        if (summary == null) throw new IllegalStateException("bowl " + bowl + " was never begun");
        return summary;
    }
}
