package stirtide.bar.views;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.bar.model.UiState;
import stirtide.bar.text.BatchText;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.view.DayView;

/** How many bowls the bar mixes at one time, cell by cell, and where the plan says that it is too many. */
final class BarLoad {
    private BarLoad() {}

    /** Bowls being mixed at the bar in each cell; those a stylist mixes at the chair do not count. */
    static int[] count(TimeAxis axis, DayView view) {
        var load = new int[axis.cells()];
        for (DayView.QueuedBowl queued : view.queue()) {
            PlannedBowl bowl = queued.bowl();
            if (bowl.personId().isPresent() && isOwnMix(queued.batch(), bowl.bowl()))
                add(load, axis, bowl.mixStart(), bowl.mixEnd());
        }
        for (DayView.LiveBowl bowl : view.live()) {
            boolean mixing = bowl.stage().equals("MIXING") && isOwnMix(bowl.batch(), bowl.bowl());
            if (mixing) add(load, axis, bowl.mixStart(), view.time().plusSeconds(1));
        }
        return load;
    }

    /** Two bowls of one mix are one mix at the bar. */
    private static boolean isOwnMix(Optional<DayView.BatchCard> batch, String bowl) {
        return batch.filter(mix -> !BatchText.isMixedIn(mix, bowl)).isEmpty();
    }

    private static void add(int[] load, TimeAxis axis, Instant start, Instant end) {
        int first = Math.max(0, axis.cell(start));
        int last = Math.min(load.length - 1, Math.max(axis.cell(start), axis.cell(end.minusSeconds(1))));
        for (int cell = first; cell <= last; cell++) load[cell]++;
    }

    /** Reasons of the plan whose stretch has not passed, soonest first. */
    static List<Plan.WaitReason> ahead(DayView view, UiState scene) {
        return view.waits().stream()
                .filter(wait -> wait.to().isAfter(scene.now()))
                .sorted(Comparator.comparing(Plan.WaitReason::from))
                .toList();
    }

    /** Bowls of a service that are still to be mixed. */
    static List<DayView.QueuedBowl> bowls(DayView view, int service) {
        return view.queue().stream()
                .filter(bowl -> bowl.bowl().service() == service)
                .toList();
    }

    /** Bowls of other services whose mixing would overlap with those of a service moved by some minutes. */
    static List<String> meets(DayView view, int service, int shiftMinutes) {
        var met = new ArrayList<String>();
        for (DayView.QueuedBowl moved : bowls(view, service)) {
            Instant start = moved.bowl().mixStart().plusSeconds(shiftMinutes * 60L);
            Instant end = moved.bowl().mixEnd().plusSeconds(shiftMinutes * 60L);
            for (DayView.QueuedBowl other : view.queue()) {
                boolean apart = !other.bowl().mixStart().isBefore(end)
                        || !start.isBefore(other.bowl().mixEnd());
                boolean sameClient = other.bowl().service() == service;
                if (!apart && !sameClient && !met.contains(other.bowl().bowl())) {
                    met.add(other.bowl().bowl());
                }
            }
        }
        return met;
    }
}
