package stirtide.planner.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.planner.formula.FormulaAnswer.Weigh;

/**
 * Feeds a service bowl by bowl, whatever it takes: an assistant mixes while one can have the bowl at the chair within the
 * longest wait; else the stylist mixes at the chair's turn, as soon as a scale and a bowl are free. Always ends: bowls
 * and scales are all free some day, and every single minute can be fed alone.
 */
final class LastResort {
    private final Track track;
    private final Bar bar;
    private final PlanQuestion question;
    private final List<Portion> portions = new ArrayList<>();
    private final int[] delays;
    private int at;
    private int late;

    LastResort(Track track, Bar bar) {
        this.track = track;
        this.bar = bar;
        this.question = bar.question();
        this.delays = new int[track.minutes()];
    }

    /** Bowls in order of use. */
    List<Portion> feed() {
        while (at < track.minutes()) {
            Feed feed = track.feed(at);
            if (at == feed.from() && !feed.live().isEmpty()) {
                LiveFeeding.End end = LiveFeeding.feed(track, feed, late, delays);
                at = end.minute();
                late = end.delay();
                if (at >= feed.to()) continue;
            }
            if (feed.refusal().isPresent()) pass(feed.to());
            else if (track.need(at, at + 1) == 0) pass(at + 1);
            else serve(feed);
        }
        return portions;
    }

    private void pass(int to) {
        for (; at < to; at++) delays[at] = late;
    }

    private void serve(Feed feed) {
        Portion portion = byAssistant(feed).orElseGet(() -> byStylist(feed));
        portions.add(portion);
        late = portion.use() - track.starts()[at];
        pass(portion.to());
    }

    private Optional<Portion> byAssistant(Feed feed) {
        int mixMinutes = feed.recipe().mixMinutes();
        int ready = track.starts()[at] + late;
        int earliest = Math.max(question.nowMinute(), lastMixEnd());
        for (int use = ready; use <= ready + PathSearch.MOST_WAIT_MINUTES; use++) {
            int latest = use - mixMinutes - question.handOverMinutes();
            for (int mix = latest; mix >= Math.max(earliest, use - feed.recipe().lifeMinutes()); mix--) {
                if (use > ready && mix < latest) break;
                int person = bar.personFor(mix, mix + mixMinutes, List.of());
                if (person < 0) continue;
                Optional<Portion> portion = mixed(feed, person, mix, use);
                if (portion.isPresent()) return portion;
            }
        }
        return Optional.empty();
    }

    private Portion byStylist(Feed feed) {
        int ready = track.starts()[at] + late;
        int idle = at == 0 ? track.idleFrom() : track.endOf(at) + delays[at - 1];
        for (int mix = Math.max(question.nowMinute(), idle); ; mix++) {
            int use = Math.max(ready, mix + feed.recipe().mixMinutes() + question.handOverMinutes());
            Optional<Portion> portion = mixed(feed, Portion.STYLIST, mix, use);
            if (portion.isPresent()) return portion.get();
        }
    }

    private int lastMixEnd() {
        return portions.isEmpty() ? 0 : portions.get(portions.size() - 1).mixEnd();
    }

    /** The longest bowl that this mix can fill. */
    private Optional<Portion> mixed(Feed feed, int person, int mix, int use) {
        Optional<Portion> best = Optional.empty();
        for (int scale = 0; scale < bar.scaleCount(); scale++) {
            if (!bar.scaleFree(scale, mix, mix + feed.recipe().mixMinutes())) continue;
            for (int size : bar.sizesByResidue()) {
                Optional<Portion> portion = longest(feed, person, mix, use, scale, size);
                if (portion.isPresent()
                        && (best.isEmpty() || portion.get().to() > best.get().to())) best = portion;
            }
        }
        return best;
    }

    private Optional<Portion> longest(Feed feed, int person, int mix, int use, int scale, int size) {
        int shift = use - track.starts()[at];
        int lifeEnd = mix + feed.recipe().lifeMinutes();
        int until = bar.bowlUntil(size, own(size, mix), mix, lifeEnd + question.washMinutes()) - question.washMinutes();
        var bowl = question.bowlSizes().get(size);
        int to = at;
        while (to < feed.to()
                && track.endOf(to + 1) + shift <= Math.min(lifeEnd, until)
                && track.need(at, to + 1) + bowl.residueMilligrams() <= bowl.usableMilligrams()) to++;
        int least = at;
        for (int most = to; least < most; ) {
            int middle = (least + most + 1) >>> 1;
            if (feed.recipe().possible(track.need(at, middle), size, scale)) least = middle;
            else most = middle - 1;
        }
        if (least > at && feed.recipe().find(track.need(at, least), size, scale) instanceof Weigh weigh)
            return Optional.of(
                    new Portion(feed, at, least, mix, use, track.endOf(least) + shift, person, scale, size, weigh));
        return Optional.empty();
    }

    private int own(int size, int minute) {
        return (int) portions.stream()
                .filter(each -> each.size() == size && each.end() + question.washMinutes() > minute)
                .count();
    }
}
