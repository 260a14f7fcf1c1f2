package stirtide.demo.play;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import stirtide.events.day.StoredEvent;
import stirtide.events.view.DayView;

/**
 * A day that was played to its end.
 *
 * @param view the day as a terminal showed it at the end
 * @param events everything that happened, in order
 * @param waitedMinutes minutes that clients really waited for a bowl, by service
 * @param lastUse end of the last minute in which each bowl was applied
 * @param appliedMilligrams what went on hair by the chairs' own count
 * @param refusals commands that were refused, with the reason
 * @param finished whether every client was served and every bowl closed
 */
public record PlayedDay(
        DayView view,
        List<StoredEvent> events,
        SortedMap<Integer, Integer> waitedMinutes,
        Map<String, Instant> lastUse,
        long appliedMilligrams,
        List<String> refusals,
        boolean finished) {
    public PlayedDay {
        events = List.copyOf(events);
        refusals = List.copyOf(refusals);
    }
}
