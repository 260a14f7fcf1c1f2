package stirtide.demo.play;

import java.time.Instant;
import java.util.Map;

/**
 * What was counted at the chairs.
 *
 * @param waitedMinutes minutes a client waited for a bowl, by service
 * @param lastUse end of the last minute in which each bowl was applied, by bowl
 * @param appliedMilligrams milligrams applied to hair
 */
public record ChairFigures(Map<Integer, Integer> waitedMinutes, Map<String, Instant> lastUse, long appliedMilligrams) {
    public ChairFigures {
        waitedMinutes = Map.copyOf(waitedMinutes);
        lastUse = Map.copyOf(lastUse);
    }
}
