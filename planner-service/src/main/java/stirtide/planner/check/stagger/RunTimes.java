package stirtide.planner.check.stagger;

import java.util.Collections;
import stirtide.planner.planning.stagger.StaggerRun;

/** When the minutes of application of a run begin and end, pauses included. */
final class RunTimes {
    private final int[] use;

    RunTimes(StaggerRun run) {
        this.use = run.useMinutes().stream().mapToInt(Integer::intValue).toArray();
    }

    /** When a minute of application begins. */
    int use(int minute) {
        return use[minute];
    }

    /** When the first so many minutes of application are over, 1 or more. */
    int end(int minutes) {
        return use[minutes - 1] + 1;
    }

    /** How many minutes of application are over at a time; the next one begins then or later. */
    int fedBy(int time) {
        int low = 0;
        int high = use.length;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (use[middle - 1] < time) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    static int fedBy(StaggerRun run, int time) {
        return new RunTimes(run).fedBy(time);
    }

    /** The minute of application that begins at a minute of the day, below 0 if none does. */
    static int placeOf(StaggerRun run, int time) {
        return Collections.binarySearch(run.useMinutes(), time);
    }
}
