package stirtide.bar.model;

import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;
import stirtide.events.view.SetupView;

/** What a panel wants after a key. */
public sealed interface UiEffect {
    /** It stays. */
    record Stay() implements UiEffect {}

    /** It is done. */
    record Close() implements UiEffect {}

    /** Another panel takes its place. */
    record Open(Panel next) implements UiEffect {}

    /** A command is to be sent; {@code words} say what it is, then another panel or none follows. */
    record Send(DayCommand command, String words, Optional<Panel> next) implements UiEffect {}

    /** What is in force is to be written as files. */
    record WriteFiles(SetupView setup) implements UiEffect {}

    /** A bowl is to be picked. */
    record Pick(String bowl) implements UiEffect {}

    /** The service is to be asked what to pour next into a bowl after {@code poured}; everything stays. */
    record AskNextPour(String bowl, String poured) implements UiEffect {}

    /** A line for the person; everything else stays. */
    record Say(String words) implements UiEffect {}

    /** The salon's clock is to run at another speed, in thousandths of real time. */
    record Rate(int ratePermille) implements UiEffect {}

    /** Another view, or another pick in it. */
    record Turn(ViewState pages) implements UiEffect {}

    /** Alarms were seen. */
    record Seen(List<DayView.AlarmCard> alarms) implements UiEffect {
        public Seen {
            alarms = List.copyOf(alarms);
        }
    }

    /** Alarms are to be put away for some minutes of the salon's clock. */
    record Shelve(List<String> alarmIds, int minutes) implements UiEffect {
        public Shelve {
            alarmIds = List.copyOf(alarmIds);
        }
    }

    /** A line of text is to be copied for other programs. */
    record Copy(String text) implements UiEffect {}

    /** The day is to be written to files. */
    record Export(DayView view, List<DayOverMix> past) implements UiEffect {
        public Export {
            past = List.copyOf(past);
        }
    }

    /** Several commands, one after the other. */
    record Together(List<Send> sends) implements UiEffect {
        public Together {
            sends = List.copyOf(sends);
        }
    }

    /** The planner is to try something; a panel shows what it answers. */
    record AskPlanner(Inquiry.Ask ask, Panel next) implements UiEffect {}

    /** Earlier days are to be asked for. */
    record AskPast() implements UiEffect {}

    /** A person is to sign on with a code. */
    record SignOn(String personId, String code) implements UiEffect {}

    /** Who is signed on is to be signed off. */
    record SignOff() implements UiEffect {}

    /** The program is to end. */
    record Leave() implements UiEffect {}
}
