package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.mixing.formula.FormulaAnswer.Weigh;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.search.ServiceTimeline.ZoneSlot;

/**
 * Feeds a service bowl by bowl, at any cost: an assistant mixes while one can have the bowl at the chair within the
 * longest wait; else the stylist mixes at the chair's turn, as soon as a scale and a bowl are free. Before a zone that
 * would else be applied after its longest processing time the client waits, so that all its bowls come in time. Always
 * ends: bowls and scales are all free some day, every single minute can be fed alone, and a zone that no wait helps
 * gets no bowl.
 */
final class LastResort {
    private static final int MOST_HOLD_MINUTES = 240;

    private final ServiceTimeline timeline;
    private final ResourceCalendar bar;
    private final PlanQuestion question;
    private final int[] holds;
    private final List<MixAssignment> assignments = new ArrayList<>();
    private final int[] delays;
    private int at;
    private int late;
    private int heldAt = -1;

    /** Bowls in order of use, and the minutes the client waits before each zone. */
    record Way(ServiceTimeline timeline, List<MixAssignment> assignments, int[] holds) {}

    private LastResort(ServiceTimeline timeline, ResourceCalendar bar, int[] holds) {
        this.timeline = timeline;
        this.bar = bar;
        this.question = bar.question();
        this.holds = holds;
        this.delays = new int[timeline.minutes()];
    }

    /** A way to feed the service that processes no zone too long but one that has begun so. */
    static Way find(ServiceTimeline timeline, ResourceCalendar bar) {
        int[] holds = timeline.noHolds();
        LastResort way = feed(timeline, bar, holds);
        for (int over = ServicePlan.firstOver(timeline, way.delays);
                over >= 0;
                over = ServicePlan.firstOver(timeline, way.delays)) {
            Optional<LastResort> held = hold(timeline, bar, holds, over);
            if (held.isEmpty() && refused(timeline, over)) break;
            if (held.isEmpty()) return find(refuse(timeline, timeline.zones().get(over)), bar);
            way = held.get();
            holds = way.holds;
        }
        return new Way(timeline, way.assignments, holds);
    }

    private static LastResort feed(ServiceTimeline timeline, ResourceCalendar bar, int[] holds) {
        LastResort way = new LastResort(timeline, bar, holds);
        way.feed();
        return way;
    }

    /** A wait before a zone that lets it end in time: doubled until one does, then halved towards the shortest. */
    private static Optional<LastResort> hold(ServiceTimeline timeline, ResourceCalendar bar, int[] holds, int zone) {
        int tooShort = holds[zone];
        Optional<LastResort> found = Optional.empty();
        for (int more = 1; found.isEmpty() && holds[zone] + more <= MOST_HOLD_MINUTES; more *= 2) {
            found = held(timeline, bar, holds, zone, holds[zone] + more);
            if (found.isEmpty()) tooShort = holds[zone] + more;
        }
        while (found.isPresent() && found.get().holds[zone] - tooShort > 1) {
            int middle = (tooShort + found.get().holds[zone]) >>> 1;
            Optional<LastResort> shorter = held(timeline, bar, holds, zone, middle);
            if (shorter.isPresent()) found = shorter;
            else tooShort = middle;
        }
        return found;
    }

    private static Optional<LastResort> held(
            ServiceTimeline timeline, ResourceCalendar bar, int[] holds, int zone, int minutes) {
        int[] longer = holds.clone();
        longer[zone] = minutes;
        LastResort way = feed(timeline, bar, longer);
        int over = ServicePlan.firstOver(timeline, way.delays);
        return over < 0 || over > zone ? Optional.of(way) : Optional.empty();
    }

    private static boolean refused(ServiceTimeline timeline, int zone) {
        return timeline.feed(timeline.zones().get(zone).from()).refusal().isPresent();
    }

    private static ServiceTimeline refuse(ServiceTimeline timeline, ZoneSlot slot) {
        FeedSegment feed = timeline.feed(slot.from());
        return timeline.refusing(
                feed,
                new FeedSegment.Refusal(
                        "No bowls that can be mixed for " + slot.zone().zone()
                                + " let it be applied within its longest processing time of " + slot.longestMinutes()
                                + " minutes.",
                        "Two sections rinsed one after the other, a larger bowl, or one more assistant."));
    }

    private void feed() {
        while (at < timeline.minutes()) {
            FeedSegment feed = timeline.feed(at);
            if (at == feed.from() && !feed.live().isEmpty()) {
                LiveFeeding.End end = LiveFeeding.feed(timeline, feed, late, holds, delays);
                if (end.minute() > at) heldAt = end.minute() - 1;
                at = end.minute();
                late = end.delay();
                if (at >= feed.to()) continue;
            }
            if (heldAt < at) late += timeline.holdBefore(at, holds);
            heldAt = at;
            if (feed.refusal().isPresent()) pass(feed.to());
            else if (timeline.need(at, at + 1) == 0) pass(at + 1);
            else serve(feed);
        }
    }

    private void pass(int to) {
        for (; at < to; at++) delays[at] = late;
    }

    private void serve(FeedSegment feed) {
        MixAssignment assignment = byAssistant(feed).or(() -> ahead(feed)).orElseGet(() -> byStylist(feed));
        assignments.add(assignment);
        heldAt = assignment.to() - 1;
        late = assignment.use() - timeline.starts()[at];
        pass(assignment.to());
    }

    private Optional<MixAssignment> byAssistant(FeedSegment feed) {
        int mixMinutes = feed.recipe().mixMinutes();
        int ready = timeline.starts()[at] + late;
        int earliest = Math.max(question.nowMinute(), lastMixEnd());
        for (int use = ready; use <= ready + FloorDay.MOST_WAIT_MINUTES; use++) {
            int latest = use - mixMinutes - question.handOverMinutes();
            for (int mix = latest; mix >= Math.max(earliest, use - feed.recipe().lifeMinutes()); mix--) {
                if (use > ready && mix < latest) break;
                int person = bar.personFor(mix, mix + mixMinutes + question.carryMinutes(), List.of());
                if (person < 0) continue;
                Optional<MixAssignment> assignment = mixed(feed, person, mix, use);
                if (assignment.isPresent()) return assignment;
            }
        }
        return Optional.empty();
    }

    private MixAssignment byStylist(FeedSegment feed) {
        int ready = timeline.starts()[at] + late;
        int idle = at == 0 ? timeline.idleFrom() : timeline.endOf(at) + delays[at - 1];
        for (int mix = Math.max(question.nowMinute(), idle); ; mix++) {
            int use = Math.max(ready, mix + feed.recipe().mixMinutes() + question.handOverMinutes());
            Optional<MixAssignment> assignment = mixed(feed, MixAssignment.STYLIST, mix, use);
            if (assignment.isPresent()) return assignment.get();
        }
    }

    /** Before a zone the client waits for anyway the stylist mixes all its bowls that live long enough. */
    private Optional<MixAssignment> ahead(FeedSegment feed) {
        ZoneSlot slot = timeline.zone(at);
        if (holds[timeline.zoneAt()[at]] == 0 || at == slot.from()) return Optional.empty();
        int start = timeline.starts()[slot.from()] + delays[slot.from()];
        int use = timeline.starts()[at] + late;
        int idle = slot.from() == 0 ? timeline.idleFrom() : timeline.endOf(slot.from()) + delays[slot.from() - 1];
        int earliest = Math.max(Math.max(question.nowMinute(), idle), lastMixEnd());
        int latest = Math.min(start, use - question.handOverMinutes())
                - feed.recipe().mixMinutes();
        for (int mix = earliest; mix <= latest; mix++) {
            Optional<MixAssignment> assignment = mixed(feed, MixAssignment.STYLIST, mix, use);
            if (assignment.isPresent()) return assignment;
        }
        return Optional.empty();
    }

    private int lastMixEnd() {
        return assignments.isEmpty()
                ? 0
                : assignments.get(assignments.size() - 1).mixEnd() + question.carryMinutes();
    }

    /** The longest bowl that this mix can fill. */
    private Optional<MixAssignment> mixed(FeedSegment feed, int person, int mix, int use) {
        Optional<MixAssignment> best = Optional.empty();
        for (int scale = 0; scale < bar.scaleCount(); scale++) {
            if (!bar.scaleFree(scale, mix, mix + feed.recipe().mixMinutes())) continue;
            for (int size : bar.sizesByResidue()) {
                Optional<MixAssignment> assignment = longest(feed, person, mix, use, scale, size);
                if (assignment.isPresent()
                        && (best.isEmpty() || assignment.get().to() > best.get().to())) best = assignment;
            }
        }
        return best;
    }

    private Optional<MixAssignment> longest(FeedSegment feed, int person, int mix, int use, int scale, int size) {
        int shift = use - timeline.starts()[at];
        int lifeEnd = mix + feed.recipe().lifeMinutes();
        int until = bar.bowlUntil(size, bar.stillOut(assignments, size, mix), mix, lifeEnd + question.washMinutes())
                - question.washMinutes();
        var bowl = question.bowlSizes().get(size);
        int to = at;
        while (to < feed.to()
                && (to == at || timeline.holdBefore(to, holds) == 0)
                && timeline.endOf(to + 1) + shift <= Math.min(lifeEnd, until)
                && timeline.need(at, to + 1) + bowl.residueMilligrams() <= bowl.usableMilligrams()) to++;
        int least = at;
        for (int most = to; least < most; ) {
            int middle = (least + most + 1) >>> 1;
            if (timeline.need(at, middle) <= feed.recipe().mostMilligrams(size, scale)) least = middle;
            else most = middle - 1;
        }
        if (least > at && feed.recipe().find(timeline.need(at, least), size, scale) instanceof Weigh weigh)
            return Optional.of(new MixAssignment(
                    feed, at, least, mix, use, timeline.endOf(least) + shift, person, scale, size, weigh));
        return Optional.empty();
    }
}
