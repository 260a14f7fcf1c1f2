package stirtide.bar.desk;

import java.util.List;
import java.util.Optional;
import stirtide.bar.keys.Action;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.scene.SetupPick;
import stirtide.bar.setup.SetupForms;
import stirtide.bar.setup.SetupRow;
import stirtide.bar.setup.SetupRows;
import stirtide.bar.setup.ShelfForms;
import stirtide.events.view.SetupView;

/** What the keys of the setup do. */
final class SetupActions {
    private SetupActions() {}

    /** The answer to a key, empty when it is none of the setup's own. */
    static Optional<PanelAnswer> act(Action action, Scene scene) {
        SetupPick pick = scene.pages().setup();
        Optional<SetupView> told = pick.inForce();
        if (told.isEmpty()) return Optional.empty();
        List<SetupRow> rows = SetupRows.of(told.get().setup());
        int at = Math.min(pick.row(), rows.size() - 1);
        SetupRow row = rows.get(at);
        return switch (action) {
            case UP -> turn(scene, pick.on(at - 1));
            case DOWN -> turn(scene, pick.on(Math.min(rows.size() - 1, at + 1)));
            case NEXT_PART -> turn(scene, pick.on(nextHeading(rows, at)));
            case CHANGE -> Optional.of(SetupForms.change(told.get().setup(), row));
            case ADD -> Optional.of(SetupForms.add(told.get().setup(), row));
            case TAKE_OUT -> Optional.of(SetupForms.takeOut(told.get().setup(), row, scene.nanos()));
            case COUNT -> Optional.of(ShelfForms.count(told.get().setup(), row));
            case FRACTION -> Optional.of(ShelfForms.fraction());
            case PIN -> Optional.of(ShelfForms.pin(told.get().setup(), row));
            case WRITE_FILES -> Optional.of(new PanelAnswer.WriteFiles(told.get()));
            default -> Optional.empty();
        };
    }

    private static Optional<PanelAnswer> turn(Scene scene, SetupPick pick) {
        return Optional.of(new PanelAnswer.Turn(scene.pages().with(pick)));
    }

    private static int nextHeading(List<SetupRow> rows, int at) {
        for (int i = 1; i < rows.size(); i++) {
            int next = (at + i) % rows.size();
            if (rows.get(next).isHeading()) return next;
        }
        return at;
    }
}
