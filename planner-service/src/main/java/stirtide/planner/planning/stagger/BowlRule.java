package stirtide.planner.planning.stagger;

/**
 * Says for one run which stretches a single bowl can feed and what mixing that bowl costs on the second level of the
 * objective (bowls in the plain model, milligrams over-mixed in a richer one).
 */
public interface BowlRule {
    /** Answer for a stretch that no single bowl can feed. */
    int NO_BOWL = -1;

    /**
     * Returns the second-level cost of one bowl that feeds {@code [fromMinute, toMinute)}.
     *
     * @param fromMinute minutes after the start of the run, 0 or more
     * @param toMinute minutes after the start of the run, more than {@code fromMinute}
     * @return 0 or more, or {@link #NO_BOWL}
     */
    int cost(int fromMinute, int toMinute);
}
