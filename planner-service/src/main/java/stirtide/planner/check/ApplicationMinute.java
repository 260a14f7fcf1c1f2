package stirtide.planner.check;

import java.util.ArrayList;
import java.util.List;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/**
 * One minute of application.
 *
 * @param zone zone that is applied
 * @param gap minutes between the minute before and this one
 * @param needMilligrams grams it uses; those of the last minute of a run include the reserve
 */
record ApplicationMinute(ZoneTask zone, int gap, int needMilligrams) {
    /** The minutes of a run in order. */
    static List<ApplicationMinute> of(RunTask run) {
        List<ApplicationMinute> minutes = new ArrayList<>();
        for (ZoneTask zone : run.zones()) {
            long before = 0;
            for (int i = 1; i <= zone.applyMinutes(); i++) {
                long upTo = (long) zone.needMilligrams() * i / zone.applyMinutes();
                minutes.add(new ApplicationMinute(zone, i == 1 ? zone.gapMinutes() : 0, (int) (upTo - before)));
                before = upTo;
            }
        }
        if (!minutes.isEmpty()) {
            ApplicationMinute last = minutes.remove(minutes.size() - 1);
            minutes.add(new ApplicationMinute(last.zone, last.gap, last.needMilligrams + run.reserveMilligrams()));
        }
        return minutes;
    }
}
