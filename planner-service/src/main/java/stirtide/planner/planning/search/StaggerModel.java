package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import stirtide.planner.planning.stagger.BowlRule;
import stirtide.planner.planning.stagger.DutyWindow;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/**
 * Services as runs of the stagger model. What live bowls feed is left out, what needs nothing is a pause, and the minutes in
 * which a person is at a mix already are no minutes on duty.
 */
final class StaggerModel {
    /** Residue counts in tenths of a gram, so that the levels of the engine stay apart. */
    private static final int MILLIGRAMS_PER_UNIT = 100;

    private final PlanQuestion question;
    private final ResourceCalendar bar;
    private final List<Stretch> stretches = new ArrayList<>();

    /**
     * A run and where it comes from.
     *
     * @param timeline place of the service among the timelines
     * @param minutes minutes of application of the timeline that it feeds, in order
     */
    record Stretch(int place, FeedSegment feed, int[] minutes, StaggerRun run) {
        /** The minute of application of the timeline that begins at a minute of the day. */
        int from(int minuteOfDay) {
            return minutes[run.useMinutes().indexOf(minuteOfDay)];
        }

        /** The minute of application of the timeline after the one that ends at a minute of the day. */
        int to(int minuteOfDay) {
            return minutes[run.useMinutes().indexOf(minuteOfDay - 1)] + 1;
        }
    }

    StaggerModel(PlanQuestion question, ResourceCalendar bar) {
        this.question = question;
        this.bar = bar;
    }

    /** Adds a service. */
    void add(int place, ServiceTimeline timeline) {
        int[] delays = new int[timeline.minutes()];
        int late = 0;
        for (FeedSegment feed : timeline.feeds()) {
            LiveFeeding.End end = LiveFeeding.feed(timeline, feed, late, timeline.noHolds(), delays);
            if (end.minute() > feed.from()) late = end.delay();
            if (feed.refusal().isEmpty()) stretch(place, timeline, feed, end.minute(), late);
        }
    }

    private void stretch(int place, ServiceTimeline timeline, FeedSegment feed, int from, int late) {
        List<Integer> use = new ArrayList<>();
        int[] minutes = new int[feed.to() - from];
        for (int at = from; at < feed.to(); at++) {
            if (timeline.need(at, at + 1) == 0) continue;
            minutes[use.size()] = at;
            use.add(timeline.starts()[at] + late);
        }
        if (use.isEmpty()) return;
        FeedFormula recipe = feed.recipe();
        BowlRule rule = (a, b) -> residue(timeline, recipe, minutes[a], minutes[b - 1] + 1);
        stretches.add(new Stretch(
                place,
                feed,
                minutes,
                new StaggerRun(stretches.size(), use, recipe.mixMinutes(), recipe.lifeMinutes(), rule)));
    }

    /** Residue of the bowl that wastes least among those that can hold the grams and be weighed on some scale. */
    private int residue(ServiceTimeline timeline, FeedFormula recipe, int from, int to) {
        int need = timeline.need(from, to);
        for (int size : bar.sizesByResidue()) {
            var bowl = question.bowlSizes().get(size);
            if (bowl.count() < 1 || need + bowl.residueMilligrams() > bowl.usableMilligrams()) continue;
            for (int scale = 0; scale < bar.scaleCount(); scale++)
                if (recipe.possible(need, size, scale)) return 1 + bowl.residueMilligrams() / MILLIGRAMS_PER_UNIT;
        }
        return BowlRule.NO_BOWL;
    }

    List<Stretch> stretches() {
        return stretches;
    }

    StaggerProblem problem() {
        List<stirtide.planner.planning.stagger.Assistant> people = new ArrayList<>();
        for (int person = 0; person < question.assistants().size(); person++)
            people.add(new stirtide.planner.planning.stagger.Assistant(windows(person)));
        return new StaggerProblem(
                question.handOverMinutes(),
                BowlPathSearch.MOST_WAIT_MINUTES,
                stretches.stream().map(Stretch::run).toList(),
                people,
                Math.max(1, bar.scaleCount()));
    }

    private List<DutyWindow> windows(int person) {
        List<DutyWindow> windows = new ArrayList<>();
        for (PlanQuestion.Minutes duty : question.assistants().get(person).onDuty()) {
            int from = Math.max(duty.from(), question.nowMinute());
            for (int minute = from; minute < duty.to(); minute++) {
                if (bar.personFree(person, minute, minute + 1)) continue;
                if (from < minute) windows.add(new DutyWindow(from, minute));
                from = minute + 1;
            }
            if (from < duty.to()) windows.add(new DutyWindow(from, duty.to()));
        }
        return windows;
    }
}
