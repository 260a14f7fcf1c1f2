package stirtide.bar.controller;

import java.util.List;
import java.util.Optional;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.SetupRow;
import stirtide.bar.model.SetupRows;
import stirtide.bar.model.SetupSelection;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.setup.SetupForms;
import stirtide.bar.panels.setup.ShelfForms;
import stirtide.events.view.SetupView;

/** What the keys of the setup do. */
final class SetupActions {
    private SetupActions() {}

    /** The answer to a key, empty when it is none of the setup's own. */
    static Optional<UiEffect> act(KeyAction action, UiState state) {
        SetupSelection pick = state.pages().setup();
        Optional<SetupView> inForce = pick.inForce();
        if (inForce.isEmpty()) return Optional.empty();
        List<SetupRow> rows = SetupRows.of(inForce.get().setup());
        int at = Math.min(pick.row(), rows.size() - 1);
        SetupRow row = rows.get(at);
        return switch (action) {
            case UP -> turn(state, pick.on(at - 1));
            case DOWN -> turn(state, pick.on(Math.min(rows.size() - 1, at + 1)));
            case NEXT_PART -> turn(state, pick.on(nextHeading(rows, at)));
            case CHANGE -> Optional.of(SetupForms.change(inForce.get().setup(), row));
            case ADD -> Optional.of(SetupForms.add(inForce.get().setup(), row));
            case TAKE_OUT -> Optional.of(SetupForms.takeOut(inForce.get().setup(), row, state.nanos()));
            case COUNT -> Optional.of(ShelfForms.count(inForce.get().setup(), row));
            case FRACTION -> Optional.of(ShelfForms.fraction());
            case PIN -> Optional.of(ShelfForms.pin(inForce.get().setup(), row));
            case WRITE_FILES -> Optional.of(new UiEffect.WriteSetupFiles(inForce.get()));
            default -> Optional.empty();
        };
    }

    private static Optional<UiEffect> turn(UiState state, SetupSelection pick) {
        return Optional.of(new UiEffect.ShowView(state.pages().withSetup(pick)));
    }

    private static int nextHeading(List<SetupRow> rows, int at) {
        for (int i = 1; i < rows.size(); i++) {
            int next = (at + i) % rows.size();
            if (rows.get(next).isHeading()) return next;
        }
        return at;
    }
}
