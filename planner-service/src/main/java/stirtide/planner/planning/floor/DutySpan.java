package stirtide.planner.planning.floor;

/**
 * A half-open stretch on duty.
 *
 * @param fromMinute first minute on duty
 * @param toMinute first minute off duty again
 */
public record DutySpan(int fromMinute, int toMinute) {
    /** Refuses an empty stretch. */
    public DutySpan {
        if (fromMinute < 0 || toMinute <= fromMinute) {
            throw new IllegalArgumentException("a stretch on duty must end after it begins, at " + fromMinute);
        }
    }

    /** Whether all minutes of {@code [from, to)} lie in it. */
    public boolean holds(int from, int to) {
        return fromMinute <= from && to <= toMinute;
    }

    /** Whether two stretches have a minute in common. */
    public boolean meets(DutySpan other) {
        return fromMinute < other.toMinute && other.fromMinute < toMinute;
    }
}
