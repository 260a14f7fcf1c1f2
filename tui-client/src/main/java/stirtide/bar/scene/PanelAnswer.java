package stirtide.bar.scene;

import java.util.Optional;
import stirtide.events.command.DayCommand;

/** What a panel wants after a key. */
public sealed interface PanelAnswer {
    /** It stays. */
    record Stay() implements PanelAnswer {}

    /** It is done. */
    record Close() implements PanelAnswer {}

    /** Another panel takes its place. */
    record Open(Panel next) implements PanelAnswer {}

    /** A command is to be sent; {@code words} say what it is, then another panel or none follows. */
    record Send(DayCommand command, String words, Optional<Panel> next) implements PanelAnswer {}

    /** A bowl is to be picked. */
    record Pick(String bowl) implements PanelAnswer {}

    /** A line for the person; everything else stays. */
    record Say(String words) implements PanelAnswer {}

    /** The salon's clock is to run at another speed, in thousandths of real time. */
    record Rate(int ratePermille) implements PanelAnswer {}

    /** The program is to end. */
    record Leave() implements PanelAnswer {}
}
