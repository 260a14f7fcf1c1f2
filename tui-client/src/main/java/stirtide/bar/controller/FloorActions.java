package stirtide.bar.controller;

import java.util.Optional;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.model.FloorSelection;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.model.ViewState;
import stirtide.bar.panels.planner.MoveServicePanel;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/** What the keys of the floor do. */
final class FloorActions {
    private static final int STEP_MINUTES = 5;
    private static final int LOOK_MINUTES = 30;

    private FloorActions() {}

    /** Pick after a key that only looks or lifts, empty when the key is none of these. */
    static Optional<ViewState> look(KeyAction action, UiState state) {
        ViewState pages = state.pages();
        FloorSelection pick = pages.floor();
        return switch (action) {
            case UP -> state.view().map(day -> pages.withFloor(row(pick, -1, day)));
            case DOWN -> state.view().map(day -> pages.withFloor(row(pick, 1, day)));
            case OTHER_LIST -> Optional.of(pages.withFloor(pick.otherLanes()));
            case EARLIER -> Optional.of(pages.withFloor(step(pick, -1)));
            case LATER -> Optional.of(pages.withFloor(step(pick, 1)));
            case MINUTE_EARLIER -> Optional.of(pages.withFloor(pick.lifted() ? pick.shifted(-1) : pick));
            case MINUTE_LATER -> Optional.of(pages.withFloor(pick.lifted() ? pick.shifted(1) : pick));
            case SCALE -> Optional.of(pages.withFloor(pick.rescaled()));
            case NOW -> Optional.of(pages.withFloor(pick.withScrollMinutes(0)));
            default -> Optional.empty();
        };
    }

    private static FloorSelection row(FloorSelection pick, int step, DayView day) {
        if (pick.people()) return pick.personMoved(step, day);
        return pick.lifted() ? pick : pick.moved(step, day);
    }

    private static FloorSelection step(FloorSelection pick, int direction) {
        return pick.lifted() ? pick.shifted(direction * STEP_MINUTES) : pick.scrolled(direction * LOOK_MINUTES);
    }

    /** Lifts the picked service, or asks whether the lifted one is to stay where it is now. */
    static UiEffect lift(UiState state) {
        if (state.pages().floor().people()) return new UiEffect.Notify("services are lifted on the chairs: Tab");
        Optional<DayView.ServiceCard> picked =
                state.view().flatMap(state.pages().floor()::in);
        if (picked.isEmpty()) return new UiEffect.Notify("no service here to lift");
        DayView.ServiceCard card = picked.get();
        FloorSelection pick = state.pages().floor();
        if (!pick.lifted()) {
            if (!FloorSelection.mayMove(card))
                return new UiEffect.Notify("only a service that has not started can be moved");
            return state.mayWrite()
                    ? new UiEffect.ShowView(state.pages().withFloor(pick.lift(card)))
                    : new UiEffect.Notify("this terminal only reads");
        }
        if (pick.shiftMinutes() == 0) return new UiEffect.ShowView(state.pages().withFloor(pick.putBack()));
        return ask(card, pick, state);
    }

    private static UiEffect ask(DayView.ServiceCard card, FloorSelection pick, UiState state) {
        if (pick.start(card).isBefore(state.now())) {
            return new UiEffect.Notify("that start is over: move it to " + state.minute(state.now()) + " or later");
        }
        String at = state.minute(pick.start(card));
        String words = "service " + card.service() + " moved to " + at;
        var command =
                new DayCommand.MoveService(card.service(), pick.start(card), Optional.empty(), "moved on the floor");
        String client = card.clientRef().isEmpty() ? "" : " " + card.clientRef();
        String sentence = "Move service " + card.service() + " (chair " + card.chair() + client + ", "
                + card.menuName() + ") from " + state.minute(card.plannedStart()) + " to " + at
                + "? Ask the client first.";
        var yes = new UiEffect.Send(command, words);
        var tried = new Inquiry.Ask.Move(card.service(), pick.start(card));
        return new UiEffect.Ask(tried, new MoveServicePanel(tried, sentence, yes, state.nanos()));
    }
}
