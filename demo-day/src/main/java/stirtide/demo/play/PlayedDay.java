package stirtide.demo.play;

import java.util.List;
import stirtide.events.day.StoredEvent;
import stirtide.events.view.DayView;

/**
 * A day that was played to its end.
 *
 * @param view the day as a terminal showed it at the end
 * @param events everything that happened, in order
 * @param chairs what was counted at the chairs
 * @param refusals commands that were refused, with the reason
 * @param finished whether every client was served and every bowl closed
 */
public record PlayedDay(
        DayView view, List<StoredEvent> events, ChairFigures chairs, List<String> refusals, boolean finished) {
    public PlayedDay {
        events = List.copyOf(events);
        refusals = List.copyOf(refusals);
    }
}
