package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.planning.floor.FloorConditions.Underway;
import stirtide.planner.planning.floor.FloorService;
import stirtide.planner.planning.floor.FloorZone;
import stirtide.planner.planning.floor.HandlingCosts;
import stirtide.planner.planning.floor.PlacedBowl;
import stirtide.planner.planning.search.ServiceTimeline.ZoneSlot;

/**
 * What new bowls feed of a service. Its minutes of application are counted anew, without those that live bowls feed, that need
 * nothing, or for which nothing may be mixed.
 *
 * @param place place of the service in the question
 * @param timeline the service
 * @param minutes by minute of application on the floor: the minute of application of the timeline
 * @param clock by minute of application on the floor: how many minutes from now it begins without waits for new bowls
 * @param service the service on the floor
 * @param underway what is under way of it
 */
record FloorServicePart(
        int place, ServiceTimeline timeline, int[] minutes, int[] clock, FloorService service, Underway underway) {
    /** Minutes between two minutes of application at which a bowl may be changed, where grams permit. */
    private static final int CHANGE_EVERY_MINUTES = 2;

    /** So many minutes of application are few enough to change bowls at each. */
    private static final int FEW_MINUTES = 24;

    /** Gives kinds of mixes their places. */
    @FunctionalInterface
    interface MixPlaces {
        /** Place of what is mixed for a stretch, the so many'th of its service. */
        int of(FeedSegment feed, int stretch);
    }

    /** Empty when no new bowl is needed. */
    static Optional<FloorServicePart> of(
            PlanQuestion question,
            int place,
            ServiceTimeline timeline,
            ShownPlan shown,
            MixPlaces mixes,
            FloorPeople people) {
        Builder builder = new Builder(timeline, question.nowMinute(), mixes);
        if (builder.minutes.isEmpty()) {
            people.passes(timeline.task(), builder.endMinute(), builder.wishMinute());
            return Optional.empty();
        }
        FloorPeople.Turn turn =
                people.turn(timeline.task(), builder.clock.get(0), builder.endMinute(), builder.wishMinute());
        builder.shift(turn.laterMinutes());
        return Optional.of(builder.part(place, turn, shown, question));
    }

    FeedSegment feed(int minute) {
        return timeline.feed(minutes[minute]);
    }

    /** Milligrams that the minutes of application {@code [from, to)} need. */
    int needMilligrams(int from, int to) {
        return timeline.need(minutes[from], end(to));
    }

    /** The last {@code to} for which the minutes of application {@code [from, to)} need no more than so much; {@code from} if even one does. */
    int furthest(int from, int milligrams) {
        int to = from;
        while (to < minutes.length && needMilligrams(from, to + 1) <= milligrams) to++;
        return to;
    }

    /** Minute of application of the timeline after the one before a minute of application on the floor. */
    int end(int to) {
        return minutes[to - 1] + 1;
    }

    /** Its bowls of the plan on show, as far as they still fit its minutes. */
    List<PlacedBowl> shown(int index, PlanQuestion question, ShownPlan shown, ScaleKinds scales, int keepBefore) {
        List<PlacedBowl> bowls = new ArrayList<>();
        int pinned = shown.mixes(timeline.task(), keepBefore).size();
        List<Integer> ends = shownEnds(question, shown);
        for (int place = 0; place < ends.size(); place++) {
            PlannedBowl bowl =
                    shown.bowl(ShownPlan.idOf(timeline.task(), place)).orElseThrow();
            Optional<ShownPlan.Mix> mix = shown.mixOf(bowl);
            int from = place == 0 ? 0 : ends.get(place - 1);
            bowls.add(new PlacedBowl(
                    index,
                    ends.get(place) < 0 ? -1 : from,
                    ends.get(place),
                    shown.sizeOf(bowl),
                    mix.map(each -> scales.kindOf(each.scale())).orElse(-1),
                    question.minuteOf(bowl.mixStart()) - question.nowMinute(),
                    question.minuteOf(bowl.neededFrom()) - question.nowMinute(),
                    mix.map(ShownPlan.Mix::person).orElse(-1),
                    place < pinned));
        }
        return bowls;
    }

    /** By bowl of the plan on show: up to which minute of application it still feeds the same, -1 from the first that does not. */
    private List<Integer> shownEnds(PlanQuestion question, ShownPlan shown) {
        List<Integer> ends = new ArrayList<>();
        int from = 0;
        for (Optional<PlannedBowl> bowl = shown.bowl(ShownPlan.idOf(timeline.task(), 0));
                bowl.isPresent();
                bowl = shown.bowl(ShownPlan.idOf(timeline.task(), ends.size()))) {
            from = from < 0 || from >= minutes.length ? -1 : shownEnd(bowl.get(), question, from);
            ends.add(from);
        }
        return ends;
    }

    /** Up to which minute of application a shown bowl still feeds just what it was to feed, -1 if it does not. */
    private int shownEnd(PlannedBowl bowl, PlanQuestion question, int from) {
        int delay = question.minuteOf(bowl.neededFrom()) - question.nowMinute() - clock[from];
        int end = question.minuteOf(bowl.neededTo()) - question.nowMinute();
        int to = from + 1;
        while (to < minutes.length && clock[to - 1] + 1 + delay < end) to++;
        boolean same = delay >= 0
                && bowl.run() == feed(from).run()
                && clock[to - 1] + 1 + delay == end
                && needMilligrams(from, to) == bowl.neededMilligrams();
        return same ? to : -1;
    }

    private static final class Builder {
        private final ServiceTimeline timeline;
        private final List<Integer> minutes = new ArrayList<>();
        private final List<Integer> clock = new ArrayList<>();
        private final List<FloorZone> zones = new ArrayList<>();
        private final TreeSet<Integer> borders = new TreeSet<>();
        private final int now;
        private int latestEnd = HandlingCosts.NONE;
        private int late;

        Builder(ServiceTimeline timeline, int now, MixPlaces mixes) {
            this.timeline = timeline;
            this.now = now;
            int[] delays = new int[timeline.minutes()];
            for (int k = 0; k < timeline.feeds().size(); k++) {
                FeedSegment feed = timeline.feeds().get(k);
                LiveFeeding.End end = LiveFeeding.feed(timeline, feed, late, timeline.noHolds(), delays);
                if (end.minute() > feed.from()) late = end.delay();
                if (feed.refusal().isPresent()) continue;
                if (minutes.isEmpty()) begun(end.minute(), delays, late);
                int mix = mixes.of(feed, k);
                for (int at = end.minute(); at < feed.to(); at++)
                    if (timeline.need(at, at + 1) > 0) minute(at, timeline.starts()[at] + late - now, mix);
            }
        }

        /** Where the first minute to be fed lies inside a zone, that zone has begun. */
        private void begun(int at, int[] delays, int late) {
            if (at >= timeline.minutes()) return;
            ZoneSlot slot = timeline.zone(at);
            boolean begun = slot.zone().begunMinute().isPresent() || at > slot.from();
            if (!begun || slot.longestMinutes() == ServiceTimelines.NO_LIMIT) return;
            int delay = at > slot.from() ? delays[slot.from()] : late;
            latestEnd = timeline.latestEnd(slot, timeline.applyStart(slot, delay)) - now;
        }

        private void minute(int at, int begins, int mix) {
            int last = minutes.size() - 1;
            boolean same = last >= 0
                    && begins == clock.get(last) + 1
                    && timeline.zone(at) == timeline.zone(minutes.get(last))
                    && zones.get(zones.size() - 1).mix() == mix;
            if (same) {
                FloorZone zone = zones.remove(zones.size() - 1);
                zones.add(zone(at, zone.gapMinutes(), zone.applyMinutes() + 1, mix));
            } else {
                borders.add(minutes.size());
                zones.add(zone(at, last < 0 ? 0 : begins - clock.get(last) - 1, 1, mix));
            }
            minutes.add(at);
            clock.add(begins);
        }

        private FloorZone zone(int at, int gap, int minutesOfIt, int mix) {
            ZoneSlot slot = timeline.zone(at);
            int need = timeline.need(at + 1 - minutesOfIt, at + 1);
            return new FloorZone(
                    gap, minutesOfIt, need / 100, mix, slot.zone().processMinutes(), slot.longestMinutes());
        }

        /** When all of it is applied if nobody waits; less than 0 if nothing is to be applied. */
        private int endMinute() {
            return timeline.minutes() == 0 ? -1 : timeline.endOf(timeline.minutes()) + late - now;
        }

        /** When the client leaves the chair for the last rinse if nobody waits. */
        private int wishMinute() {
            int wish = applied();
            for (ZoneSlot slot : timeline.zones())
                wish = Math.max(
                        wish,
                        timeline.endOf(slot.to()) + late - now + slot.zone().processMinutes());
            return wish;
        }

        private int applied() {
            return timeline.task().processing().stream()
                    .mapToInt(zone -> zone.applyEnd() + zone.processMinutes() - now)
                    .max()
                    .orElse(0);
        }

        private void shift(int laterMinutes) {
            clock.replaceAll(minute -> minute + laterMinutes);
        }

        FloorServicePart part(int place, FloorPeople.Turn turn, ShownPlan shown, PlanQuestion question) {
            TreeSet<Integer> breaks = new TreeSet<>(borders);
            int each = minutes.size() <= FEW_MINUTES || hungry() ? 1 : CHANGE_EVERY_MINUTES;
            for (int border : borders) {
                Integer next = borders.higher(border);
                for (int at = border; at < (next == null ? minutes.size() : next); at += each) breaks.add(at);
            }
            int[] starts = clock.stream().mapToInt(Integer::intValue).toArray();
            FloorServicePart bare = new FloorServicePart(
                    place,
                    timeline,
                    minutes.stream().mapToInt(Integer::intValue).toArray(),
                    starts,
                    service(turn, List.copyOf(breaks)),
                    new Underway(
                            timeline.task().started() ? 0 : HandlingCosts.NONE, Math.max(0, applied()), latestEnd));
            bare.shownEnds(question, shown).stream().filter(end -> end > 0).forEach(breaks::add);
            return new FloorServicePart(
                    place, timeline, bare.minutes, starts, service(turn, List.copyOf(breaks)), bare.underway);
        }

        private FloorService service(FloorPeople.Turn turn, List<Integer> breaks) {
            return new FloorService(
                    timeline.task().service(), turn.stylist(), turn.chair(), clock.get(0), zones, breaks);
        }

        /** Whether the minutes between two changes need more than a bowl can be weighed for on every scale. */
        private boolean hungry() {
            for (FeedSegment feed : timeline.feeds()) {
                if (feed.refusal().isPresent()) continue;
                int most = IntStream.range(feed.from(), feed.to())
                        .map(at -> timeline.need(at, at + 1))
                        .max()
                        .orElse(0);
                if (feed.recipe().mostMilligrams() < CHANGE_EVERY_MINUTES * most) return true;
            }
            return false;
        }
    }
}
