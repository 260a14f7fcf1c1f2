package stirtide.bar.model;

import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.events.command.DayCommand;
import stirtide.events.view.PourAdvice;

/** Something drawn over the view that receives the keys while it is open. */
public interface Panel {
    /**
     * What surrounds the inside of a panel.
     *
     * @param context which keys work in it
     * @param title heading
     * @param columns columns it wants inside its frame
     * @param rows rows it wants inside its frame
     */
    record Frame(KeyContext context, String title, int columns, int rows) {}

    /** What surrounds it. */
    Frame frame();

    /** What is drawn of it for a state. */
    default Overlay overlay(UiState state) {
        Frame frame = frame();
        return new Overlay(
                frame.context(),
                frame.title(),
                frame.columns(),
                frame.rows(),
                action -> offers(action, state),
                inside -> draw(inside, state));
    }

    /** Draws the inside. */
    void draw(Pane inside, UiState state);

    /**
     * Answers a key.
     *
     * @param machine whether the key is part of a burst faster than fingers
     */
    UiEffect press(Key key, boolean machine, UiState state);

    /** Whether an action of its context does something now; the footer leaves out what does not. */
    default boolean offers(KeyAction action, UiState state) {
        return true;
    }

    /** Called as time goes by. */
    default UiEffect tick(UiState state) {
        return new UiEffect.Stay();
    }

    /** Called when the service has said what to pour next after {@code poured}. */
    default void hear(PourAdvice advice, String poured) {}

    /**
     * Called when the service has answered a command.
     *
     * @param refusal the service's sentence, empty when the command was accepted
     * @return what the panel wants, empty when the command was not its own
     */
    default Optional<UiEffect> answered(DayCommand command, Optional<String> refusal) {
        return Optional.empty();
    }

    /**
     * Called when the service rejected a sign-on.
     *
     * @param waitSeconds seconds before it checks another code
     * @return what the panel wants, empty when it does not sign anybody on
     */
    default Optional<UiEffect> signOnRefused(String sentence, int waitSeconds, long nanos) {
        return Optional.empty();
    }
}
