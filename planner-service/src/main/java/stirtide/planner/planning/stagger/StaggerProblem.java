package stirtide.planner.planning.stagger;

import java.util.List;

/**
 * A day to plan.
 *
 * @param handOverMinutes minutes from the end of mixing to the chair
 * @param maxWaitMinutes longest wait of one bowl that a plan may hold
 * @param runs the runs of the day
 * @param assistants who may mix, by place
 * @param mixesAtOnce most mixes at one time however many are on duty (scales), at least 1
 */
public record StaggerProblem(
        int handOverMinutes, int maxWaitMinutes, List<StaggerRun> runs, List<Assistant> assistants, int mixesAtOnce) {

    /** Longest wait of one bowl in the plain model. */
    public static final int PLAIN_MAX_WAIT_MINUTES = 60;

    /** Copies the lists. */
    public StaggerProblem {
        runs = List.copyOf(runs);
        assistants = List.copyOf(assistants);
        if (handOverMinutes < 0 || maxWaitMinutes < 0 || mixesAtOnce < 1) {
            throw new IllegalArgumentException(
                    "handOverMinutes and maxWaitMinutes must be 0 or more, mixesAtOnce 1 or more");
        }
    }
}
