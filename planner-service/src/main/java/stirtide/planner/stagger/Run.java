package stirtide.planner.stagger;

/**
 * A stretch of one client's service that is fed by one formula.
 *
 * @param id the caller's number of the run, unique in a problem
 * @param startMinute minute of the day at which the run begins
 * @param endMinute minute of the day at which it ends, after the start
 * @param mixMinutes minutes that mixing one bowl takes, at least 1
 * @param workingLifeMinutes minutes from the start of mixing to the last use of the bowl
 * @param bowls which stretches one bowl can feed
 */
public record Run(int id, int startMinute, int endMinute, int mixMinutes, int workingLifeMinutes, BowlRule bowls) {

    /** Refuses a run that cannot be read. */
    public Run {
        if (endMinute <= startMinute) {
            throw new IllegalArgumentException("run " + id + ": endMinute must be after startMinute " + startMinute);
        }
        if (mixMinutes < 1 || workingLifeMinutes <= mixMinutes) {
            throw new IllegalArgumentException(
                    "run " + id + ": mixMinutes must be 1 or more and less than workingLifeMinutes");
        }
    }

    /** Length in minutes. */
    public int minutes() {
        return endMinute - startMinute;
    }
}
