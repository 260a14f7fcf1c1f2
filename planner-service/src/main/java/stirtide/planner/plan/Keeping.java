package stirtide.planner.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.formula.FormulaAnswer.Weigh;

/** Takes a service over from the plan on show as it is, when nothing that matters to it has changed. */
final class Keeping {
    private final Track track;
    private final Bar bar;
    private final PlanQuestion question;
    private final Shown shown;
    private final List<Portion> portions = new ArrayList<>();
    private final int[] delays;
    private int at;
    private int late;

    private Keeping(Track track, Bar bar, Shown shown) {
        this.track = track;
        this.bar = bar;
        this.question = bar.question();
        this.shown = shown;
        this.delays = new int[track.minutes()];
    }

    /** The service as shown, or empty when a bowl of it cannot be mixed, carried and used exactly so any more. */
    static Optional<Course> of(Track track, Bar bar, Shown shown) {
        Keeping keeping = new Keeping(track, bar, shown);
        if (!keeping.feed()) return Optional.empty();
        Course course = Course.of(track, keeping.portions, track.noHolds(), Score.moves(0), bar.question());
        return course.score().overMinutes() == 0 ? Optional.of(course) : Optional.empty();
    }

    private boolean feed() {
        int[] noHolds = track.noHolds();
        while (at < track.minutes()) {
            Feed feed = track.feed(at);
            if (at == feed.from() && !feed.live().isEmpty()) {
                LiveFeeding.End end = LiveFeeding.feed(track, feed, late, noHolds, delays);
                at = end.minute();
                late = end.delay();
                if (at >= feed.to()) continue;
            }
            if (feed.refusal().isPresent()) at = feed.to();
            else if (track.need(at, at + 1) == 0) at++;
            else {
                Optional<Portion> portion =
                        shown.bowl(Shown.idOf(track.task(), portions.size())).flatMap(bowl -> portion(feed, bowl));
                if (portion.isEmpty()) return false;
                portions.add(portion.get());
                at = portion.get().to();
            }
        }
        return true;
    }

    private Optional<Portion> portion(Feed feed, PlannedBowl bowl) {
        Optional<Shown.Mix> known = shown.mixOf(bowl);
        int size = shown.sizeOf(bowl);
        if (known.isEmpty() || size < 0 || bowl.run() != feed.run()) return Optional.empty();
        Shown.Mix mix = known.get();
        int mixMinutes = feed.recipe().mixMinutes();
        int use = Math.max(track.starts()[at] + late, mix.start() + mixMinutes + question.handOverMinutes());
        int end = shown.minute(bowl.neededTo());
        int to = at + 1;
        int shift = use - track.starts()[at];
        while (to < feed.to() && track.endOf(to) + shift < end) to++;
        boolean same = use == shown.minute(bowl.neededFrom())
                && end == track.endOf(to) + shift
                && end <= mix.start() + feed.recipe().lifeMinutes()
                && track.need(at, to) == bowl.neededMilligrams();
        if (!same || !free(mix, mixMinutes, size, end)) return Optional.empty();
        if (!(feed.recipe().find(track.need(at, to), size, mix.scale()) instanceof Weigh weigh))
            return Optional.empty();
        late = shift;
        return Optional.of(new Portion(feed, at, to, mix.start(), use, end, mix.person(), mix.scale(), size, weigh));
    }

    private boolean free(Shown.Mix mix, int mixMinutes, int size, int end) {
        int before = portions.isEmpty()
                ? question.nowMinute()
                : portions.get(portions.size() - 1).mixEnd();
        int own = 0;
        for (Portion each : portions)
            if (each.size() == size && each.end() + question.washMinutes() > mix.start()) own++;
        int clean = end + question.washMinutes();
        return mix.start() >= Math.max(before, question.nowMinute())
                && bar.personFree(mix.person(), mix.start(), mix.start() + mixMinutes)
                && bar.scaleFree(mix.scale(), mix.start(), mix.start() + mixMinutes)
                && bar.bowlUntil(size, own, mix.start(), clean) >= clean;
    }
}
