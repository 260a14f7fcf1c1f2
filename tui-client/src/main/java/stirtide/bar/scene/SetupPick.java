package stirtide.bar.scene;

import java.util.Optional;
import stirtide.events.view.SetupView;

/**
 * The view of what is in force.
 *
 * @param inForce what the service told last, empty before the first answer
 * @param row picked row, from 0
 */
public record SetupPick(Optional<SetupView> inForce, int row) {
    /** Nothing told, the first row. */
    public static final SetupPick FIRST = new SetupPick(Optional.empty(), 0);

    /** Another picked row. */
    public SetupPick on(int other) {
        return new SetupPick(inForce, Math.max(0, other));
    }

    /** What the service tells now. */
    public SetupPick with(SetupView told) {
        return new SetupPick(Optional.of(told), row);
    }
}
