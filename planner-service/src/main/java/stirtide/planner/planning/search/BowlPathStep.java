package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A way to have fed all minutes of application before {@code minute}, as a chain of steps.
 *
 * @param delay minutes by which application is late
 * @param depth bowls mixed so far
 * @param mixEnd end of the last mix
 * @param zoneStart start of application of the zone that {@code minute} is in
 * @param cost residue first, then minutes from mixing to first use
 * @param before step before this one, null for the first
 * @param bowl bowl that leads from the step before to this one, null where none was mixed
 */
record BowlPathStep(
        int minute,
        int delay,
        int depth,
        int mixEnd,
        int zoneStart,
        long cost,
        @Nullable BowlPathStep before,
        @Nullable Bowl bowl) {
    /** A bowl on the way: minutes of application fed, start of the mix, first and last use, scale and size. */
    record Bowl(int from, int to, int mix, int use, int end, int scale, int size) {}

    /** Bowls in order of use. */
    List<Bowl> bowls() {
        List<Bowl> bowls = new ArrayList<>();
        for (BowlPathStep step = this; step != null; step = step.before())
            if (step.bowl() != null) bowls.add(step.bowl());
        Collections.reverse(bowls);
        return bowls;
    }

    /** Bowls of a size on the way that are in use until after a minute. */
    int bowlsOut(int size, int minute) {
        int out = 0;
        for (BowlPathStep step = this; step != null; step = step.before()) {
            Bowl each = step.bowl();
            if (each != null && each.size() == size && each.end() > minute) out++;
        }
        return out;
    }
}
