package stirtide.planner.planning.stagger;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A stretch of one client's service that is fed by one formula: minutes of application, mostly one after the other. In a
 * pause between two of them nothing is used, and a bowl that begins after it need not be there before.
 *
 * @param id the caller's number of the run, unique in a problem
 * @param useMinutes minute of the day at which each minute of application begins, ascending, at least one
 * @param mixMinutes minutes that mixing one bowl takes, at least 1
 * @param workingLifeMinutes minutes from the start of mixing to the last use of the bowl
 * @param bowls which stretches one bowl can feed
 */
public record StaggerRun(int id, List<Integer> useMinutes, int mixMinutes, int workingLifeMinutes, BowlRule bowls) {

    /** Refuses a run that cannot be read. */
    public StaggerRun {
        useMinutes = List.copyOf(useMinutes);
        if (useMinutes.isEmpty()) {
            throw new IllegalArgumentException("run " + id + ": at least one minute of application is needed");
        }
        for (int i = 1; i < useMinutes.size(); i++) {
            if (useMinutes.get(i) <= useMinutes.get(i - 1)) {
                throw new IllegalArgumentException("run " + id + ": useMinutes must ascend, at place " + i);
            }
        }
        if (mixMinutes < 1 || workingLifeMinutes <= mixMinutes) {
            throw new IllegalArgumentException(
                    "run " + id + ": mixMinutes must be 1 or more and less than workingLifeMinutes");
        }
    }

    /**
     * A run without a pause.
     *
     * @param startMinute minute of the day at which the run begins
     * @param endMinute minute of the day at which it ends, after the start
     */
    public StaggerRun(int id, int startMinute, int endMinute, int mixMinutes, int workingLifeMinutes, BowlRule bowls) {
        this(id, IntStream.range(startMinute, endMinute).boxed().toList(), mixMinutes, workingLifeMinutes, bowls);
    }

    /** Minutes of application, pauses left out. */
    public int minutes() {
        return useMinutes.size();
    }

    /** Minute of the day at which the run begins. */
    public int startMinute() {
        return useMinutes.get(0);
    }

    /** Minute of the day at which it ends. */
    public int endMinute() {
        return endOf(minutes());
    }

    /** Minute of the day at which a minute of application begins, counted from 0. */
    public int useOf(int minute) {
        return useMinutes.get(minute);
    }

    /** Minute of the day at which the first {@code minutes} minutes of application are over, 1 or more of them. */
    public int endOf(int minutes) {
        return useMinutes.get(minutes - 1) + 1;
    }
}
