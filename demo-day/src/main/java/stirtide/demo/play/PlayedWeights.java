package stirtide.demo.play;

import java.util.List;
import java.util.Locale;

/**
 * What a played scale shows while somebody weighs a bowl: for each part the needle climbs, lies at rest long enough to be
 * taken, and goes back to zero. Somebody who misses a part finds all of them again from the first on.
 *
 * @param parts milligrams to be shown, lightener first
 */
public record PlayedWeights(List<Integer> parts) {
    /** How a scale writes its lines, as a file of the terminal's settings. */
    public static final String DIALECT =
            "stable = rest +([0-9.]+) +(g)\nmoving = moves +([0-9.]+) +(g)\nspeed = 9600\n";

    /** What it shows when nothing stands on it. */
    public static final String EMPTY = line("rest", 0);

    private static final int CLIMB_MILLIS = 2500;
    private static final int REST_MILLIS = 6000;
    private static final int BACK_MILLIS = 500;
    private static final int ZERO_MILLIS = 1500;
    private static final int TURN_MILLIS = CLIMB_MILLIS + REST_MILLIS + BACK_MILLIS + ZERO_MILLIS;

    public PlayedWeights {
        parts = List.copyOf(parts);
    }

    /** The line it writes so many milliseconds, 0 or more, after the weighing began. */
    public String at(long millis) {
        if (parts.isEmpty()) return EMPTY;
        int weight = parts.get((int) (millis / TURN_MILLIS % parts.size()));
        long into = millis % TURN_MILLIS;
        if (into < CLIMB_MILLIS) return line("moves", weight * into / CLIMB_MILLIS);
        if (into < CLIMB_MILLIS + REST_MILLIS) return line("rest", weight);
        if (into < CLIMB_MILLIS + REST_MILLIS + BACK_MILLIS) return line("moves", weight / 2);
        return EMPTY;
    }

    // A tenth of a gram, as the scales of the demo salon divide.
    private static String line(String state, long milligrams) {
        return String.format(Locale.ROOT, "%s %d.%d g", state, milligrams / 1000, milligrams % 1000 / 100);
    }
}
