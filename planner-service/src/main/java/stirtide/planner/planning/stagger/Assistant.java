package stirtide.planner.planning.stagger;

import java.util.List;

/**
 * A person who mixes, one mix at a time.
 *
 * @param onDuty windows in any order; a mix lies inside one of them
 */
public record Assistant(List<DutyWindow> onDuty) {
    /** Copies the windows. */
    public Assistant {
        onDuty = List.copyOf(onDuty);
    }

    /** Whether the whole of {@code [from, to)} lies inside one window. */
    public boolean onDuty(int from, int to) {
        for (DutyWindow window : onDuty) {
            if (window.covers(from, to)) {
                return true;
            }
        }
        return false;
    }
}
