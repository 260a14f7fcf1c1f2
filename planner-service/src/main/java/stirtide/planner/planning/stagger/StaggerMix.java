package stirtide.planner.planning.stagger;

/**
 * One planned bowl.
 *
 * @param runIndex place of its run in the problem
 * @param fromMinute minute of the day from which it feeds the run
 * @param toMinute minute of the day up to which it feeds the run
 * @param mixStartMinute minute of the day at which mixing starts
 * @param assistant place of the assistant who mixes, or {@link #STYLIST}
 */
public record StaggerMix(int runIndex, int fromMinute, int toMinute, int mixStartMinute, int assistant) {
    /** Last resort: no assistant is free, the stylist mixes at the chair's turn. */
    public static final int STYLIST = -1;
}
