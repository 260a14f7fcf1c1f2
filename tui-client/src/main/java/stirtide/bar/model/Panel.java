package stirtide.bar.model;

import java.util.List;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.events.command.DayCommand;
import stirtide.events.view.AlarmCard;
import stirtide.events.view.DayView;
import stirtide.events.view.PourAdvice;
import stirtide.events.view.SetupView;

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

    /** What a panel, or a key of a view, asks the controller to do. */
    sealed interface UiEffect {
        /** The panel stays; {@code reason} says why an entry was not accepted, empty text when there is nothing to say. */
        record Stay(String reason) implements UiEffect {
            /** Nothing happens. */
            public Stay() {
                this("");
            }
        }

        /** Closes the panel. */
        record Close() implements UiEffect {}

        /** Opens a panel in place of the one on show, if any. */
        record Open(Panel next) implements UiEffect {}

        /** Sends a command; {@code words} describe it in the notice. Then {@code next} opens, or none. */
        record Send(DayCommand command, String words, Optional<Panel> next) implements UiEffect {
            /** No panel follows. */
            public Send(DayCommand command, String words) {
                this(command, words, Optional.empty());
            }
        }

        /** Writes the setup in force as files. */
        record WriteSetupFiles(SetupView setup) implements UiEffect {}

        /** Closes the panel and selects a bowl. */
        record SelectBowl(String bowl) implements UiEffect {}

        /** Asks the service what to pour next into a bowl after {@code poured}. */
        record AskNextPour(String bowl, String poured) implements UiEffect {}

        /** Shows a notice. */
        record Notify(String words) implements UiEffect {}

        /** Sets the speed of the salon's clock, in thousandths of real time. */
        record SetClockRate(int ratePermille) implements UiEffect {}

        /** Shows another view, or another selection in it. */
        record ShowView(ViewState pages) implements UiEffect {}

        /** Marks alarms as seen and acknowledges them to the service. */
        record AcknowledgeAlarms(List<AlarmCard> alarms) implements UiEffect {
            public AcknowledgeAlarms {
                alarms = List.copyOf(alarms);
            }
        }

        /** Shelves alarms for some minutes of the salon's clock and closes the panel. */
        record ShelveAlarms(List<String> alarmIds, int minutes) implements UiEffect {
            public ShelveAlarms {
                alarmIds = List.copyOf(alarmIds);
            }
        }

        /** Copies a line of text to the clipboard. */
        record CopyText(String text) implements UiEffect {}

        /** Writes the day to files. */
        record ExportDay(DayView view, List<DayOverMix> past) implements UiEffect {
            public ExportDay {
                past = List.copyOf(past);
            }
        }

        /** Sends several commands, one after the other. */
        record SendAll(List<Send> sends) implements UiEffect {
            public SendAll {
                sends = List.copyOf(sends);
            }
        }

        /** Sends an inquiry to the service; {@code next} shows the answer. */
        record Ask(Inquiry.Ask ask, Panel next) implements UiEffect {}

        /** Asks the service for earlier days. */
        record LoadPastDays() implements UiEffect {}

        /** Signs a person on with a code. */
        record SignOn(String personId, String code) implements UiEffect {}

        /** Signs off the person who is signed on. */
        record SignOff() implements UiEffect {}

        /** Ends the program. */
        record Quit() implements UiEffect {}
    }
}
