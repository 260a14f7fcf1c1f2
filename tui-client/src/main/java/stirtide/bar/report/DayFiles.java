package stirtide.bar.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import stirtide.bar.model.DayOverMix;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

/**
 * Writes a day into a folder: {@code SALON-DATE.json} is the day itself, {@code SALON-DATE-weeks.json} the days known up to
 * it, {@code SALON-DATE.html} the page.
 */
public record DayFiles(Path folder) {
    /** Writes all, over what was there; the answer says where, or why not. */
    public String write(DayView view, List<DayOverMix> past) {
        String name = view.salonId().replaceAll("[^A-Za-z0-9-]", "_") + "-" + view.date();
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve(name + ".json"), ContractJson.write(view) + "\n");
            Files.writeString(folder.resolve(name + "-weeks.json"), WeeksJson.of(view, past));
            Files.writeString(folder.resolve(name + ".html"), DayPage.of(view, past));
            return "written: " + folder.resolve(name) + ".html, .json and -weeks.json";
        } catch (IOException noPlace) {
            return "not written: " + folder + " takes no files (" + noPlace.getMessage() + ")";
        }
    }
}
