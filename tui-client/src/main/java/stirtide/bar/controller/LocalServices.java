package stirtide.bar.controller;

import java.util.List;
import stirtide.bar.model.DayOverMix;
import stirtide.events.view.DayView;
import stirtide.events.view.SetupView;

/** What the controller needs of the machine it runs on. */
public interface LocalServices {
    /** Writes a day as JSON and as a page with charts; returns the notice to show, also when it fails. */
    String export(DayView view, List<DayOverMix> past);

    /** Writes the setup in force as the files of a salon; returns the notice to show, also when it fails. */
    String writeFiles(SetupView setup);

    /** Copies a line of text to the terminal's clipboard; returns the notice to show. */
    String copy(String text);
}
