package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest way to feed one service in the free time of the bar. Waits are tried from none upward; for each, a
 * shortest path over the minutes of application: a bowl is an arc from the first minute it feeds to the minute after the
 * last, mixed at the latest start that is free. The first wait with which the end is reached is the least for such paths.
 *
 * <p>Two bowls of a service are never mixed at one time, and of several ways to reach a minute only the cheapest is kept,
 * so a cleverer plan may exist; a broken rule may not.
 */
final class BowlPathSearch {
    /** Longest wait of one client for assistants; after that the stylist steps in. */
    static final int MOST_WAIT_MINUTES = 60;

    private static final int UNKNOWN = Integer.MIN_VALUE;
    /** Price of a milligram of residue in minutes of age: more than all bowls of a service are ever old. */
    private static final long MILLIGRAM = 1L << 20;

    private final ServiceTimeline timeline;
    private final ResourceCalendar bar;
    private final List<ShownPlan.Mix> pins;
    private final int now;
    private final int handOver;
    private final int wash;
    private final MixStarts starts;
    private final @Nullable BowlPathStep[] best;
    private final long[] bestCost;
    private final @Nullable BowlPathStep[][] expanded;
    private final int[][] expandedStart;
    private final int[][] expandedDelay;
    private final Map<Integer, List<BowlPathStep>> later = new HashMap<>();
    private final int[] scratch;
    private final int[] noHolds;

    /**
     * @param pins mixes that the first bowls must have
     * @param early minutes by which mixes start earlier than need be, to leave later minutes to others
     */
    BowlPathSearch(ServiceTimeline timeline, ResourceCalendar bar, List<ShownPlan.Mix> pins, int early) {
        this.timeline = timeline;
        this.bar = bar;
        this.pins = pins;
        now = bar.question().nowMinute();
        handOver = bar.question().handOverMinutes();
        wash = bar.question().washMinutes();
        int longestLife = timeline.feeds().stream()
                .mapToInt(feed -> feed.recipe().lifeMinutes())
                .max()
                .orElse(0);
        int from = Math.max(now, timeline.starts()[0] - longestLife);
        int to = Math.max(from, timeline.endOf(timeline.minutes()) + 2 * MOST_WAIT_MINUTES);
        starts = new MixStarts(bar, from, to, early);
        best = new BowlPathStep[timeline.minutes() + 1];
        bestCost = new long[timeline.minutes() + 1];
        Arrays.fill(bestCost, Long.MAX_VALUE);
        expanded = new BowlPathStep[timeline.minutes()][bar.scaleCount()];
        expandedStart = new int[timeline.minutes()][bar.scaleCount()];
        expandedDelay = new int[timeline.minutes()][bar.scaleCount()];
        scratch = new int[timeline.minutes()];
        noHolds = timeline.noHolds();
    }

    /** Bowls in order of use, or empty when no path exists within the longest wait. */
    Optional<List<BowlPathStep.Bowl>> find() {
        offer(new BowlPathStep(0, 0, 0, 0, zoneStart(0, 0, 0), 0, null, null));
        for (int delay = 0; delay <= MOST_WAIT_MINUTES; delay++) {
            for (BowlPathStep step : later.getOrDefault(delay, List.of())) offer(step);
            for (int at = 0; at < timeline.minutes(); at++) {
                BowlPathStep step = best[at];
                if (step != null) advance(step, delay);
            }
            BowlPathStep end = best[timeline.minutes()];
            if (end != null) return Optional.of(end.bowls());
        }
        return Optional.empty();
    }

    private void offer(BowlPathStep step) {
        if (step.cost() >= bestCost[step.minute()]) return;
        best[step.minute()] = step;
        bestCost[step.minute()] = step.cost();
    }

    private void advance(BowlPathStep step, int delay) {
        int at = step.minute();
        FeedSegment feed = timeline.feed(at);
        if (at == feed.from() && !feed.live().isEmpty()) {
            LiveFeeding.End end = LiveFeeding.feed(timeline, feed, step.delay(), noHolds, scratch);
            if (end.minute() > at) {
                if (step.delay() == delay) pass(step, end.minute(), end.delay(), delay);
                return;
            }
        }
        if (feed.refusal().isPresent()) {
            if (step.delay() == delay) pass(step, feed.to(), delay, delay);
        } else if (timeline.need(at, at + 1) == 0) {
            if (step.delay() == delay) pass(step, at + 1, delay, delay);
        } else expand(step, feed, delay);
    }

    /** Goes on without a bowl of the plan. */
    private void pass(BowlPathStep step, int to, int delayAfter, int delay) {
        if (delayAfter > MOST_WAIT_MINUTES) return;
        BowlPathStep next = new BowlPathStep(
                to,
                delayAfter,
                step.depth(),
                step.mixEnd(),
                zoneStart(to, step.minute(), delayAfter, step),
                step.cost(),
                step,
                null);
        if (delayAfter == delay) offer(next);
        else later.computeIfAbsent(delayAfter, key -> new ArrayList<>()).add(next);
    }

    private int zoneStart(int at, int from, int delay) {
        return zoneStart(at, from, delay, null);
    }

    /** Start of application of the zone that minute {@code at} is in, when minutes from {@code from} on have this delay. */
    private int zoneStart(int at, int from, int delay, @Nullable BowlPathStep step) {
        if (at >= timeline.minutes()) return 0;
        ServiceTimeline.ZoneSlot slot = timeline.zone(at);
        if (slot.from() < from && step != null) return step.zoneStart();
        return timeline.applyStart(slot, delay);
    }

    private void expand(BowlPathStep step, FeedSegment feed, int delay) {
        int at = step.minute();
        ServiceTimeline.ZoneSlot slot = timeline.zone(at);
        boolean inZone = at > slot.from() || slot.zone().begunMinute().isPresent();
        if (inZone && timeline.endOf(slot.to()) + delay > timeline.latestEnd(slot, step.zoneStart())) return;
        int use = timeline.starts()[at] + delay;
        int mixMinutes = feed.recipe().mixMinutes();
        for (int scale = 0; scale < bar.scaleCount(); scale++) {
            int mix = start(step, scale, use - mixMinutes - handOver, mixMinutes);
            if (mix < now || mix < step.mixEnd()) continue;
            if (covered(step, feed, scale, mix, delay)) continue;
            expanded[at][scale] = step;
            expandedStart[at][scale] = mix;
            expandedDelay[at][scale] = delay;
            reach(step, feed, delay, scale, mix, use);
        }
    }

    /**
     * Whether an expansion before has reached all that this one would, and with bowls no older: on a scale that weighs as much,
     * with the same start or, where bowls of all sizes are free at all times, with one that leaves as much of the life.
     */
    private boolean covered(BowlPathStep step, FeedSegment feed, int scale, int mix, int delay) {
        int at = step.minute();
        boolean plenty = bar.leastFree() > step.depth();
        for (int other = 0; other < bar.scaleCount(); other++) {
            if (expanded[at][other] != step) continue;
            int start = expandedStart[at][other];
            boolean noOlder = start == mix || plenty && mix - delay <= start - expandedDelay[at][other];
            if (noOlder && feed.recipe().knownImpossibleNoEarlier(other, scale)) return true;
        }
        return false;
    }

    private int start(BowlPathStep step, int scale, int notAfter, int mixMinutes) {
        if (step.depth() < pins.size()) {
            ShownPlan.Mix pin = pins.get(step.depth());
            boolean free = pin.scale() == scale
                    && pin.start() <= notAfter
                    && bar.scaleFree(scale, pin.start(), pin.start() + mixMinutes)
                    && bar.personFree(pin.person(), pin.start(), pin.start() + mixMinutes);
            return free ? pin.start() : -1;
        }
        return starts.latest(scale, mixMinutes, notAfter);
    }

    /**
     * Extends a step by bowls of one mix. More minutes of application need more grams and end later, so a size that does not
     * serve so many minutes serves no more of them either.
     */
    private void reach(BowlPathStep step, FeedSegment feed, int delay, int scale, int mix, int use) {
        int at = step.minute();
        int lifeEnd = mix + feed.recipe().lifeMinutes();
        long cost = step.cost() + use - mix;
        int[] sizes = bar.sizesByResidue();
        int k = 0;
        int until = UNKNOWN;
        for (int to = at + 1; to <= feed.to(); to++) {
            int end = timeline.endOf(to) + delay;
            if (end > lifeEnd || k == sizes.length) return;
            while (k < sizes.length && cost + MILLIGRAM * bar.residue(sizes[k]) < bestCost[to]) {
                int need = timeline.need(at, to);
                if (until == UNKNOWN && need <= bar.capacity(sizes[k])) until = until(step, sizes[k], mix, lifeEnd);
                if (serves(feed, need, sizes[k], scale) && end <= until) {
                    offer(next(step, new BowlPathStep.Bowl(at, to, mix, use, end, scale, sizes[k]), delay));
                    break;
                }
                k++;
                until = UNKNOWN;
            }
        }
    }

    /** Minute up to which a bowl of a size may be in use, at most to the end of its life. */
    private int until(BowlPathStep step, int size, int mix, int lifeEnd) {
        if (bar.leastFree(size) > step.depth()) return lifeEnd;
        return bar.bowlUntil(size, step.bowlsOut(size, mix - wash), mix, lifeEnd + wash) - wash;
    }

    private boolean serves(FeedSegment feed, int need, int size, int scale) {
        return need <= bar.capacity(size) && !feed.recipe().knownImpossible(need, size, scale);
    }

    private BowlPathStep next(BowlPathStep step, BowlPathStep.Bowl arc, int delay) {
        return new BowlPathStep(
                arc.to(),
                delay,
                step.depth() + 1,
                arc.mix() + timeline.feed(arc.from()).recipe().mixMinutes(),
                zoneStart(arc.to(), arc.from(), delay, step),
                step.cost() + arc.use() - arc.mix() + MILLIGRAM * bar.residue(arc.size()),
                step,
                arc);
    }
}
