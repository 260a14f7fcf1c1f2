package stirtide.bar;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import stirtide.bar.controller.LocalServices;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.report.DayFiles;
import stirtide.bar.report.SalonFiles;
import stirtide.bar.terminal.BarTerminal;
import stirtide.events.view.DayView;
import stirtide.events.view.SetupView;

/** Files in the folder of reports, and the clipboard of the machine the terminal runs on. */
final class FilesAndClipboard implements LocalServices {
    private final Path reports;
    private String copied = "";

    FilesAndClipboard(Path reports) {
        this.reports = reports;
    }

    @Override
    public String export(DayView view, List<DayOverMix> past) {
        return new DayFiles(reports).write(view, past);
    }

    @Override
    public String writeFiles(SetupView setup) {
        return new SalonFiles(reports).write(setup);
    }

    @Override
    public String copy(String text) {
        copied = text;
        return "copied: " + text;
    }

    /** Sends what was copied since the last call. */
    void sendCopied(BarTerminal terminal) throws IOException {
        if (!copied.isEmpty()) terminal.copy(copied);
        copied = "";
    }
}
