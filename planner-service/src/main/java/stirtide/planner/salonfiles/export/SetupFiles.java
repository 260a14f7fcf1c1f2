package stirtide.planner.salonfiles.export;

import java.time.ZoneId;
import java.util.Collection;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.Booking;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.planner.salonfiles.json.BookingsFile;
import stirtide.planner.salonfiles.json.DevelopersFile;
import stirtide.planner.salonfiles.json.FileJson;
import stirtide.planner.salonfiles.json.HistoryFile;
import stirtide.planner.salonfiles.json.MenuFile;
import stirtide.planner.salonfiles.json.SalonFile;

/**
 * Writes a setup as the files a salon supplies. Hours are those of the one day, so shifts are written for its weekday only.
 */
public final class SetupFiles {
    private SetupFiles() {}

    /**
     * Text by file name; {@code bookings.json} only when there are bookings, {@code history.json} only when something is
     * remembered.
     */
    public static SortedMap<String, String> of(DaySetup setup, Collection<Booking> bookings) {
        SortedMap<String, String> files = new TreeMap<>();
        files.put("salon.json", FileJson.write(SalonFile.of(setup)));
        files.put("developers.json", FileJson.write(new DevelopersFile(setup.developers())));
        for (Directions each : setup.directions())
            files.put("directions/" + each.lightenerId() + ".json", FileJson.write(each));
        files.put("menu.json", FileJson.write(MenuFile.of(setup.menu())));
        if (!bookings.isEmpty()) {
            ZoneId zone = ZoneId.of(setup.salon().zone());
            files.put("bookings.json", FileJson.write(BookingsFile.of(bookings, zone)));
        }
        if (setup.learned().memory().isPresent()) files.put("history.json", FileJson.write(HistoryFile.of(setup)));
        return files;
    }
}
