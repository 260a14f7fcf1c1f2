package stirtide.planner.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.planner.formula.FormulaAnswer.Weigh;
import stirtide.planner.plan.PathSearch.Arc;

/** Feeds one service in what the bar has free, by the path search if it can, by the last resort if it must. */
final class Inserter {
    /** Paths given up because their weights turn out impossible, before the last resort is taken. */
    private static final int MOST_TRIES = 40;

    private final PlanQuestion question;
    private final Shown shown;

    Inserter(PlanQuestion question, Shown shown) {
        this.question = question;
        this.shown = shown;
    }

    /**
     * Feeds a service. Mixes of the plan on show that start before {@code keepBefore} stay, unless the client would then
     * wait longer or need more bowls.
     *
     * @param early minutes by which mixes start earlier than need be, to leave later minutes to others
     */
    Course insert(Track track, Bar bar, int keepBefore, int early) {
        if (track.minutes() == 0) return course(track, List.of(), track.noHolds());
        Course free = insertWith(track, bar, early);
        List<Shown.Mix> pins = shown.mixes(track.task(), keepBefore);
        while (!pins.isEmpty()) {
            Optional<Course> kept = byPath(track, bar, pins, early);
            if (kept.isPresent() && !worse(kept.get(), free)) return kept.get();
            pins = pins.subList(0, pins.size() - 1);
        }
        return free;
    }

    private static boolean worse(Course kept, Course free) {
        return kept.score().overMinutes() > free.score().overMinutes()
                || kept.score().waitMinutes() > free.score().waitMinutes()
                || kept.portions().size() > free.portions().size();
    }

    private Course insertWith(Track track, Bar bar, int early) {
        return byPath(track, bar, List.of(), early).orElseGet(() -> {
            LastResort.Way way = LastResort.find(track, bar);
            return course(way.track(), way.portions(), way.holds());
        });
    }

    private Optional<Course> byPath(Track track, Bar bar, List<Shown.Mix> pins, int early) {
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            Optional<List<Arc>> arcs = new PathSearch(track, bar, pins, early).find();
            if (arcs.isEmpty()) return Optional.empty();
            Optional<List<Portion>> portions = portions(track, bar, arcs.get(), pins);
            if (portions.isEmpty()) continue;
            Course course = course(track, portions.get(), track.noHolds());
            return course.firstOver() < 0 ? Optional.of(course) : Optional.empty();
        }
        return Optional.empty();
    }

    Course course(Track track, List<Portion> portions, int[] holds) {
        return Course.of(track, portions, holds, Score.moves(shown.moves(track.task(), portions)), question);
    }

    private Optional<List<Portion>> portions(Track track, Bar bar, List<Arc> arcs, List<Shown.Mix> pins) {
        List<Portion> portions = new ArrayList<>();
        boolean possible = true;
        for (Arc arc : arcs) {
            Feed feed = track.feed(arc.from());
            var answer = feed.recipe().find(track.need(arc.from(), arc.to()), arc.size(), arc.scale());
            if (!(answer instanceof Weigh weigh)) {
                feed.recipe().narrow(track.need(arc.from(), arc.to()), arc.size(), arc.scale());
                possible = false;
                continue;
            }
            int place = portions.size();
            List<Integer> wanted = place < pins.size()
                    ? List.of(pins.get(place).person())
                    : shown.mix(track.task(), place).map(Shown.Mix::person).stream()
                            .toList();
            int person = bar.personFor(arc.mix(), arc.mix() + feed.recipe().mixMinutes(), wanted);
            portions.add(new Portion(
                    feed,
                    arc.from(),
                    arc.to(),
                    arc.mix(),
                    arc.use(),
                    arc.end(),
                    person,
                    arc.scale(),
                    arc.size(),
                    weigh));
        }
        return possible ? Optional.of(portions) : Optional.empty();
    }
}
