package stirtide.bar.model;

import java.util.Optional;
import stirtide.events.view.SetupView;

/**
 * The setup in force and the selected row of its view.
 *
 * @param inForce the setup as the service reported it last, empty before the first answer
 * @param row picked row, from 0
 */
public record SetupSelection(Optional<SetupView> inForce, int row) {
    /** No setup yet, the first row. */
    public static final SetupSelection FIRST = new SetupSelection(Optional.empty(), 0);

    /** Another picked row. */
    public SetupSelection on(int other) {
        return new SetupSelection(inForce, Math.max(0, other));
    }

    /** A newer setup. */
    public SetupSelection with(SetupView newer) {
        return new SetupSelection(Optional.of(newer), row);
    }
}
