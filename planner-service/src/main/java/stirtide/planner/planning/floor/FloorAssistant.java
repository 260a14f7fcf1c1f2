package stirtide.planner.planning.floor;

import java.util.List;

/**
 * Somebody who mixes, carries and, where assistants rinse, rinses; one task at a time.
 *
 * @param onDuty stretches on duty, in order and apart from each other
 */
public record FloorAssistant(List<DutySpan> onDuty) {
    /** Copies the stretches. */
    public FloorAssistant {
        onDuty = List.copyOf(onDuty);
    }
}
