package stirtide.bar.desk;

import java.util.Optional;
import stirtide.bar.entry.MovePanel;
import stirtide.bar.keys.Action;
import stirtide.bar.scene.Advice;
import stirtide.bar.scene.FloorPick;
import stirtide.bar.scene.Pages;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.TimeText;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/** What the keys of the floor do. */
final class FloorActions {
    private static final int STEP_MINUTES = 5;
    private static final int LOOK_MINUTES = 30;

    private FloorActions() {}

    /** Pick after a key that only looks or lifts, empty when the key is none of these. */
    static Optional<Pages> look(Action action, Scene scene) {
        Pages pages = scene.pages();
        FloorPick pick = pages.floor();
        return switch (action) {
            case UP -> scene.view().map(day -> pages.with(pick.lifted() ? pick : pick.moved(-1, day)));
            case DOWN -> scene.view().map(day -> pages.with(pick.lifted() ? pick : pick.moved(1, day)));
            case EARLIER -> Optional.of(pages.with(step(pick, -1)));
            case LATER -> Optional.of(pages.with(step(pick, 1)));
            case MINUTE_EARLIER -> Optional.of(pages.with(pick.lifted() ? pick.shifted(-1) : pick));
            case MINUTE_LATER -> Optional.of(pages.with(pick.lifted() ? pick.shifted(1) : pick));
            case SCALE -> Optional.of(pages.with(pick.rescaled()));
            case NOW -> Optional.of(pages.with(pick.atNow()));
            default -> Optional.empty();
        };
    }

    private static FloorPick step(FloorPick pick, int direction) {
        return pick.lifted() ? pick.shifted(direction * STEP_MINUTES) : pick.scrolled(direction * LOOK_MINUTES);
    }

    /** Lifts the picked service, or asks whether the lifted one is to stay where it is now. */
    static PanelAnswer lift(Scene scene) {
        Optional<DayView.ServiceCard> picked =
                scene.view().flatMap(scene.pages().floor()::in);
        if (picked.isEmpty()) return new PanelAnswer.Say("no service here to lift");
        DayView.ServiceCard card = picked.get();
        FloorPick pick = scene.pages().floor();
        if (!pick.lifted()) {
            if (!FloorPick.mayMove(card))
                return new PanelAnswer.Say("only a service that has not started can be moved");
            return scene.mayWrite()
                    ? new PanelAnswer.Turn(scene.pages().with(pick.lift(card)))
                    : new PanelAnswer.Say("this terminal only reads");
        }
        if (pick.shiftMinutes() == 0) return new PanelAnswer.Turn(scene.pages().with(pick.putBack()));
        return ask(card, pick, scene);
    }

    private static PanelAnswer ask(DayView.ServiceCard card, FloorPick pick, Scene scene) {
        if (pick.start(card).isBefore(scene.now())) {
            return new PanelAnswer.Say(
                    "that start is over: move it to " + TimeText.minute(scene.now(), scene.zone()) + " or later");
        }
        String at = TimeText.minute(pick.start(card), scene.zone());
        String words = "service " + card.service() + " moved to " + at;
        var command =
                new DayCommand.MoveService(card.service(), pick.start(card), Optional.empty(), "moved on the floor");
        String client = card.clientRef().isEmpty() ? "" : " " + card.clientRef();
        String sentence = "Move service " + card.service() + " (chair " + card.chair() + client + ", "
                + card.menuName() + ") from " + TimeText.minute(card.plannedStart(), scene.zone()) + " to " + at
                + "? Ask the client first.";
        var yes = new PanelAnswer.Send(command, words, Optional.empty());
        var tried = new Advice.Ask.Move(card.service(), pick.start(card));
        return new PanelAnswer.AskPlanner(tried, new MovePanel(tried, sentence, yes, scene.nanos()));
    }
}
