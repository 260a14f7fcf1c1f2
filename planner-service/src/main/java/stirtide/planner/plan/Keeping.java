package stirtide.planner.plan;

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

    private Keeping(Track track, Bar bar, Shown shown) {
        this.track = track;
        this.bar = bar;
        this.question = bar.question();
        this.shown = shown;
    }

    /** The service as shown, or empty when a bowl of it cannot be mixed, carried and used exactly so any more. */
    static Optional<Course> of(Track track, Bar bar, Shown shown) {
        Keeping keeping = new Keeping(track, bar, shown);
        return Walk.through(track, keeping::bowl)
                .map(portions -> Course.of(track, portions, track.noHolds(), Score.moves(0), bar.question()))
                .filter(course -> course.score().overMinutes() == 0);
    }

    private Optional<Portion> bowl(Feed feed, int at, int late, List<Portion> before) {
        return shown.bowl(Shown.idOf(track.task(), before.size()))
                .flatMap(bowl -> portion(feed, bowl, at, late, before));
    }

    private Optional<Portion> portion(Feed feed, PlannedBowl bowl, int at, int late, List<Portion> before) {
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
        if (!same || !free(mix, mixMinutes, size, end, before)) return Optional.empty();
        if (!(feed.recipe().find(track.need(at, to), size, mix.scale()) instanceof Weigh weigh))
            return Optional.empty();
        return Optional.of(new Portion(feed, at, to, mix.start(), use, end, mix.person(), mix.scale(), size, weigh));
    }

    private boolean free(Shown.Mix mix, int mixMinutes, int size, int end, List<Portion> before) {
        int earliest = before.isEmpty()
                ? question.nowMinute()
                : before.get(before.size() - 1).mixEnd();
        int clean = end + question.washMinutes();
        return mix.start() >= Math.max(earliest, question.nowMinute())
                && bar.personFree(mix.person(), mix.start(), mix.start() + mixMinutes)
                && bar.scaleFree(mix.scale(), mix.start(), mix.start() + mixMinutes)
                && bar.bowlUntil(size, bar.stillOut(before, size, mix.start()), mix.start(), clean) >= clean;
    }
}
