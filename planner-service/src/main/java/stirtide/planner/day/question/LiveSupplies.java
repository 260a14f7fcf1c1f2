package stirtide.planner.day.question;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stirtide.planner.day.bowl.BowlBalance;
import stirtide.planner.day.bowl.MixTime;
import stirtide.planner.day.chair.ServiceProgress;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.BowlWeights;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;

/**
 * What bowls that were begun can still give.
 *
 * @param day the day
 * @param time its times
 * @param nowMinute first minute in which something new may start
 */
record LiveSupplies(Day day, DayTime time, int nowMinute) {

    /** Minute in which the mixing of a bowl ends; a bowl that is not weighed takes another minute at least. */
    int mixEndMinute(BowlState bowl) {
        int planned = time.minuteUp(bowl.begunAt().plus(Duration.ofMinutes(MixTime.minutes(day, bowl))));
        return bowl.mixing() ? Math.max(planned, nowMinute + 1) : planned;
    }

    private int atChairMinute(BowlState bowl) {
        if (bowl.handedOverAt().isPresent())
            return time.minuteUp(bowl.handedOverAt().get());
        return Math.max(mixEndMinute(bowl) + day.opened().salon().handOverMinutes(), nowMinute);
    }

    /** Bowls that can still feed a run, in order of use. What a bowl cannot have given is taken from the next. */
    List<LiveSupply> of(ServiceState service, int run, ServiceProgress progress) {
        var bowls = service.bowls().stream()
                .filter(bowl -> bowl.live() && bowl.run() == run)
                .filter(bowl ->
                        bowl.weighed().map(BowlWeights::insideDirections).orElse(true))
                .sorted(Comparator.comparing(this::atChairMinute).thenComparing(BowlState::begunAt))
                .toList();
        var supplies = new ArrayList<LiveSupply>();
        int beyond = 0;
        for (var bowl : bowls) {
            int holds = Math.max(0, bowl.mixedMilligrams() - BowlBalance.residueMilligrams(day, bowl));
            int used = progress.usedMilligrams().getOrDefault(bowl.bowl(), 0) + beyond;
            beyond = Math.max(0, used - holds);
            int lifeEnd = time.minuteDown(bowl.lifeEnds());
            if (lifeEnd > nowMinute)
                supplies.add(new LiveSupply(bowl.bowl(), atChairMinute(bowl), lifeEnd, Math.max(0, holds - used)));
        }
        return supplies;
    }
}
