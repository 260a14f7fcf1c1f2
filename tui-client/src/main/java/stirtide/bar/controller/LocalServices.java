package stirtide.bar.controller;

import java.util.List;
import stirtide.bar.model.DayOverMix;
import stirtide.events.view.DayView;
import stirtide.events.view.SetupView;

/** What the desk asks of the machine it stands on. */
public interface LocalServices {
    /** Writes a day as JSON and as a page with charts; the answer is what to tell, also when it fails. */
    String export(DayView view, List<DayOverMix> past);

    /** Writes what is in force as the files of a salon; the answer is what to tell, also when it fails. */
    String writeFiles(SetupView setup);

    /** Hands a line of text to the terminal's clipboard; the answer is what to tell. */
    String copy(String text);
}
