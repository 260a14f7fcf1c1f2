package stirtide.demo.play;

import java.util.List;
import java.util.Locale;

/**
 * Readings of a simulated scale while a bowl is weighed: for each part the weight rises, is stable long enough to be taken,
 * and goes back to zero. After the last part the sequence begins again.
 *
 * @param parts milligrams to be shown, lightener first
 */
public record PlayedWeights(List<Integer> parts) {
    /** Line format of the scale, as a settings file of the terminal. */
    public static final String DIALECT =
            "stable = rest +([0-9.]+) +(g)\nmoving = moves +([0-9.]+) +(g)\nspeed = 9600\n";

    /** Line of the empty scale. */
    public static final String EMPTY = line("rest", 0);

    private static final int CLIMB_MILLIS = 2500;
    private static final int REST_MILLIS = 6000;
    private static final int BACK_MILLIS = 500;
    private static final int ZERO_MILLIS = 1500;
    private static final int TURN_MILLIS = CLIMB_MILLIS + REST_MILLIS + BACK_MILLIS + ZERO_MILLIS;

    public PlayedWeights {
        parts = List.copyOf(parts);
    }

    /** The line that many milliseconds, 0 or more, after the weighing began. */
    public String at(long millis) {
        if (parts.isEmpty()) return EMPTY;
        int weight = parts.get((int) (millis / TURN_MILLIS % parts.size()));
        long into = millis % TURN_MILLIS;
        if (into < CLIMB_MILLIS) return line("moves", weight * into / CLIMB_MILLIS);
        if (into < CLIMB_MILLIS + REST_MILLIS) return line("rest", weight);
        if (into < CLIMB_MILLIS + REST_MILLIS + BACK_MILLIS) return line("moves", weight / 2);
        return EMPTY;
    }

    // A tenth of a gram, the division of the scales of the demo salon.
    private static String line(String state, long milligrams) {
        return String.format(Locale.ROOT, "%s %d.%d g", state, milligrams / 1000, milligrams % 1000 / 100);
    }
}
