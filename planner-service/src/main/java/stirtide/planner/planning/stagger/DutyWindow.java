package stirtide.planner.planning.stagger;

/**
 * A stretch on duty, half open.
 *
 * @param fromMinute first minute of the day on duty
 * @param toMinute first minute of the day off duty again
 */
public record DutyWindow(int fromMinute, int toMinute) {
    /** Refuses an empty window. */
    public DutyWindow {
        if (toMinute <= fromMinute) {
            throw new IllegalArgumentException("window must end after it begins, at " + fromMinute);
        }
    }

    /** Whether the whole of {@code [from, to)} lies inside. */
    public boolean covers(int from, int to) {
        return fromMinute <= from && to <= toMinute;
    }
}
