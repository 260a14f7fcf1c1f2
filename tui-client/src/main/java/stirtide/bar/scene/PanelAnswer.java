package stirtide.bar.scene;

import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;
import stirtide.events.view.SetupView;

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

    /** What is in force is to be written as files. */
    record WriteFiles(SetupView setup) implements PanelAnswer {}

    /** A bowl is to be picked. */
    record Pick(String bowl) implements PanelAnswer {}

    /** The service is to be asked what to pour next into a bowl after {@code poured}; everything stays. */
    record AskNextPour(String bowl, String poured) implements PanelAnswer {}

    /** A line for the person; everything else stays. */
    record Say(String words) implements PanelAnswer {}

    /** The salon's clock is to run at another speed, in thousandths of real time. */
    record Rate(int ratePermille) implements PanelAnswer {}

    /** Another view, or another pick in it. */
    record Turn(Pages pages) implements PanelAnswer {}

    /** Alarms were seen. */
    record Seen(List<DayView.AlarmCard> alarms) implements PanelAnswer {
        public Seen {
            alarms = List.copyOf(alarms);
        }
    }

    /** Alarms are to be put away for some minutes of the salon's clock. */
    record Shelve(List<String> alarmIds, int minutes) implements PanelAnswer {
        public Shelve {
            alarmIds = List.copyOf(alarmIds);
        }
    }

    /** A line of text is to be copied for other programs. */
    record Copy(String text) implements PanelAnswer {}

    /** The day is to be written to files. */
    record Export(DayView view, List<PastDay> past) implements PanelAnswer {
        public Export {
            past = List.copyOf(past);
        }
    }

    /** Several commands, one after the other. */
    record Together(List<Send> sends) implements PanelAnswer {
        public Together {
            sends = List.copyOf(sends);
        }
    }

    /** The planner is to try something; a panel shows what it answers. */
    record AskPlanner(Advice.Ask ask, Panel next) implements PanelAnswer {}

    /** Earlier days are to be asked for. */
    record AskPast() implements PanelAnswer {}

    /** A person is to sign on with a code. */
    record SignOn(String personId, String code) implements PanelAnswer {}

    /** Who is signed on is to be signed off. */
    record SignOff() implements PanelAnswer {}

    /** The program is to end. */
    record Leave() implements PanelAnswer {}
}
