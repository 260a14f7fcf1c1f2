package stirtide.bar.model;

import java.util.Optional;
import stirtide.events.view.SetupView;

/**
 * The view of what is in force.
 *
 * @param inForce what the service told last, empty before the first answer
 * @param row picked row, from 0
 */
public record SetupSelection(Optional<SetupView> inForce, int row) {
    /** Nothing told, the first row. */
    public static final SetupSelection FIRST = new SetupSelection(Optional.empty(), 0);

    /** Another picked row. */
    public SetupSelection on(int other) {
        return new SetupSelection(inForce, Math.max(0, other));
    }

    /** What the service tells now. */
    public SetupSelection with(SetupView told) {
        return new SetupSelection(Optional.of(told), row);
    }
}
