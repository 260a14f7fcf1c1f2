package stirtide.planner.plan;

import java.util.ArrayList;
import java.util.Collections;
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
final class PathSearch {
    /** Longest wait of one client for assistants; after that the stylist steps in. */
    static final int MOST_WAIT_MINUTES = 60;

    private final Track track;
    private final Bar bar;
    private final List<Shown.Mix> pins;
    private final int early;
    private final int now;
    private final int handOver;
    private final int wash;
    private final int windowFrom;
    private final int windowTo;
    private final @Nullable Step[] best;
    private final @Nullable Step[][] expanded;
    private final int[][] expandedStart;
    private final Map<Integer, int[][]> latest = new HashMap<>();
    private final Map<Integer, List<Step>> later = new HashMap<>();
    private final int[] scratch;
    private final int[] noHolds;

    /** A way to have fed all minutes before {@code minute}. */
    record Step(
            int minute,
            int delay,
            int depth,
            int mixEnd,
            int zoneStart,
            long overMix,
            int age,
            @Nullable Step before,
            @Nullable Arc arc) {}

    /** A bowl on the way. */
    record Arc(int from, int to, int mix, int use, int end, int scale, int size) {}

    /**
     * @param pins mixes that the first bowls must have
     * @param early minutes by which mixes start earlier than need be, to leave later minutes to others
     */
    PathSearch(Track track, Bar bar, List<Shown.Mix> pins, int early) {
        this.track = track;
        this.bar = bar;
        this.pins = pins;
        this.early = early;
        now = bar.question().nowMinute();
        handOver = bar.question().handOverMinutes();
        wash = bar.question().washMinutes();
        int longestLife = track.feeds().stream()
                .mapToInt(feed -> feed.recipe().lifeMinutes())
                .max()
                .orElse(0);
        windowFrom = Math.max(now, track.starts()[0] - longestLife);
        windowTo = Math.max(windowFrom, track.endOf(track.minutes()) + 2 * MOST_WAIT_MINUTES);
        best = new Step[track.minutes() + 1];
        expanded = new Step[track.minutes()][bar.scaleCount()];
        expandedStart = new int[track.minutes()][bar.scaleCount()];
        scratch = new int[track.minutes()];
        noHolds = track.noHolds();
    }

    /** Bowls in order of use, or empty when no path exists within the longest wait. */
    Optional<List<Arc>> find() {
        best[0] = new Step(0, 0, 0, 0, zoneStart(0, 0, 0), 0, 0, null, null);
        for (int delay = 0; delay <= MOST_WAIT_MINUTES; delay++) {
            for (Step step : later.getOrDefault(delay, List.of())) offer(step);
            for (int at = 0; at < track.minutes(); at++) {
                Step step = best[at];
                if (step != null) advance(step, delay);
            }
            Step end = best[track.minutes()];
            if (end != null) return Optional.of(arcs(end));
        }
        return Optional.empty();
    }

    private static List<Arc> arcs(Step end) {
        List<Arc> arcs = new ArrayList<>();
        for (Step step = end; step != null; step = step.before()) if (step.arc() != null) arcs.add(step.arc());
        Collections.reverse(arcs);
        return arcs;
    }

    private void offer(Step step) {
        Step old = best[step.minute()];
        if (old == null || step.overMix() < old.overMix() || step.overMix() == old.overMix() && step.age() < old.age())
            best[step.minute()] = step;
    }

    private void advance(Step step, int delay) {
        int at = step.minute();
        Feed feed = track.feed(at);
        if (at == feed.from() && !feed.live().isEmpty()) {
            LiveFeeding.End end = LiveFeeding.feed(track, feed, step.delay(), noHolds, scratch);
            if (end.minute() > at) {
                if (step.delay() == delay) pass(step, end.minute(), end.delay(), delay);
                return;
            }
        }
        if (feed.refusal().isPresent()) {
            if (step.delay() == delay) pass(step, feed.to(), delay, delay);
        } else if (track.need(at, at + 1) == 0) {
            if (step.delay() == delay) pass(step, at + 1, delay, delay);
        } else expand(step, feed, delay);
    }

    /** Goes on without a bowl of the plan. */
    private void pass(Step step, int to, int delayAfter, int delay) {
        if (delayAfter > MOST_WAIT_MINUTES) return;
        Step next = new Step(
                to,
                delayAfter,
                step.depth(),
                step.mixEnd(),
                zoneStart(to, step.minute(), delayAfter, step),
                step.overMix(),
                step.age(),
                step,
                null);
        if (delayAfter == delay) offer(next);
        else later.computeIfAbsent(delayAfter, key -> new ArrayList<>()).add(next);
    }

    private int zoneStart(int at, int from, int delay) {
        return zoneStart(at, from, delay, null);
    }

    /** Start of application of the zone that minute {@code at} is in, when minutes from {@code from} on have this delay. */
    private int zoneStart(int at, int from, int delay, @Nullable Step step) {
        if (at >= track.minutes()) return 0;
        Track.ZoneSlot slot = track.zone(at);
        if (slot.from() < from && step != null) return step.zoneStart();
        return track.applyStart(slot, delay);
    }

    private void expand(Step step, Feed feed, int delay) {
        int at = step.minute();
        Track.ZoneSlot slot = track.zone(at);
        boolean inZone = at > slot.from() || slot.zone().begunMinute().isPresent();
        if (inZone && track.endOf(slot.to()) + delay > track.latestEnd(slot, step.zoneStart())) return;
        int use = track.starts()[at] + delay;
        int mixMinutes = feed.recipe().mixMinutes();
        for (int scale = 0; scale < bar.scaleCount(); scale++) {
            int mix = start(step, scale, use - mixMinutes - handOver, mixMinutes);
            if (mix < now || mix < step.mixEnd()) continue;
            if (expanded[at][scale] == step && expandedStart[at][scale] == mix) continue;
            expanded[at][scale] = step;
            expandedStart[at][scale] = mix;
            reach(step, feed, delay, scale, mix, use);
        }
    }

    private int start(Step step, int scale, int notAfter, int mixMinutes) {
        if (step.depth() < pins.size()) {
            Shown.Mix pin = pins.get(step.depth());
            boolean free = pin.scale() == scale
                    && pin.start() <= notAfter
                    && bar.scaleFree(scale, pin.start(), pin.start() + mixMinutes)
                    && bar.personFree(pin.person(), pin.start(), pin.start() + mixMinutes);
            return free ? pin.start() : -1;
        }
        if (notAfter < windowFrom) return -1;
        int[][] starts = latest.computeIfAbsent(mixMinutes, minutes -> new int[bar.scaleCount()][]);
        if (starts[scale] == null) starts[scale] = bar.latestStarts(scale, mixMinutes, windowFrom, windowTo);
        return early(starts[scale], Math.min(notAfter - windowFrom, starts[scale].length - 1));
    }

    /** The latest free start that is early enough, else the first free one after it that is still in time. */
    private int early(int[] starts, int last) {
        int wanted = last - early;
        if (wanted >= 0 && starts[wanted] >= 0) return starts[wanted];
        for (int i = Math.max(0, wanted); i < last; i++) if (starts[i] >= 0) return starts[i];
        return last < 0 ? -1 : starts[last];
    }

    private void reach(Step step, Feed feed, int delay, int scale, int mix, int use) {
        int at = step.minute();
        int lifeEnd = mix + feed.recipe().lifeMinutes();
        int[] sizes = bar.sizesByResidue();
        int[] until = new int[sizes.length];
        for (int k = 0; k < sizes.length; k++)
            until[k] = bar.bowlUntil(sizes[k], own(step, sizes[k], mix), mix, lifeEnd + wash) - wash;
        for (int to = at + 1; to <= feed.to(); to++) {
            int end = track.endOf(to) + delay;
            if (end > lifeEnd) return;
            int need = track.need(at, to);
            int size = -1;
            boolean fits = false;
            for (int k = 0; k < sizes.length && size < 0; k++) {
                var bowl = bar.question().bowlSizes().get(sizes[k]);
                if (bowl.count() < 1 || need + bowl.residueMilligrams() > bowl.usableMilligrams()) continue;
                fits = true;
                if (end <= until[k] && !feed.recipe().knownImpossible(need, sizes[k], scale)) size = sizes[k];
            }
            if (!fits) return;
            if (size < 0) continue;
            long overMix = step.overMix() + bar.question().bowlSizes().get(size).residueMilligrams();
            Step old = best[to];
            int age = step.age() + use - mix;
            if (old != null && (overMix > old.overMix() || overMix == old.overMix() && age >= old.age())) continue;
            best[to] = new Step(
                    to,
                    delay,
                    step.depth() + 1,
                    mix + feed.recipe().mixMinutes(),
                    zoneStart(to, at, delay, step),
                    overMix,
                    age,
                    step,
                    new Arc(at, to, mix, use, end, scale, size));
        }
    }

    /** Bowls of the size that the service itself would still have out at a minute. */
    private int own(Step step, int size, int minute) {
        int own = 0;
        for (Step each = step; each != null; each = each.before()) {
            Arc arc = each.arc();
            if (arc != null && arc.size() == size && arc.end() + wash > minute) own++;
        }
        return own;
    }
}
