package stirtide.bar.model;

import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.events.command.DayCommand;
import stirtide.events.view.PourAdvice;

/** Something drawn over the view that gets the keys while it is open. */
public interface Panel {
    /** Which keys work in it. */
    KeyContext place();

    /** Heading. */
    String title();

    /** Columns it wants inside its frame. */
    int columns();

    /** Rows it wants inside its frame. */
    int rows();

    /** Draws the inside. */
    void draw(Pane inside, UiState scene);

    /**
     * Answers a key.
     *
     * @param machine whether the key is part of a burst faster than fingers
     */
    UiEffect press(Key key, boolean machine, UiState scene);

    /** Whether an action of this place does something now; the footer leaves out what does not. */
    default boolean offers(KeyAction action, UiState scene) {
        return true;
    }

    /** Called as time goes by. */
    default UiEffect tick(UiState scene) {
        return new UiEffect.Stay();
    }

    /** Called when the service has said what to pour next after {@code poured}. */
    default void hear(PourAdvice advice, String poured) {}

    /**
     * Called when the service has answered a command.
     *
     * @param refusal the service's sentence, empty when it was taken
     * @return what the panel wants, empty when the command was not its own
     */
    default Optional<UiEffect> answered(DayCommand command, Optional<String> refusal) {
        boolean own =
                command instanceof DayCommand.BeginBowl begin && standsOnBowl().equals(begin.bowl())
                        || command instanceof DayCommand.BeginBatch batch
                                && batch.bowls().contains(standsOnBowl())
                        || command instanceof DayCommand.WeighBatch weigh
                                && standsOnBowl().equals(weigh.batch());
        boolean lost = refusal.isPresent() && own;
        return lost ? Optional.of(new UiEffect.Close()) : Optional.empty();
    }

    /**
     * Called when the service did not sign somebody on.
     *
     * @param waitSeconds seconds before it looks at another code
     * @return what the panel wants, empty when it does not sign anybody on
     */
    default Optional<UiEffect> signOnRefused(String sentence, int waitSeconds, long nanos) {
        return Optional.empty();
    }

    /** Bowl whose mixing this panel stands on, empty text for none: it closes when that mixing or its weights are refused. */
    default String standsOnBowl() {
        return "";
    }
}
