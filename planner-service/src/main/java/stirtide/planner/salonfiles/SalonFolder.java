package stirtide.planner.salonfiles;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/** A folder with the files of a salon. */
public final class SalonFolder {
    private SalonFolder() {}

    /**
     * Reads the folder whole or refuses it whole.
     *
     * @param folder folder with {@code salon.json}, {@code developers.json}, {@code directions/*.json},
     *     {@code menu.json} and either {@code bookings.ics} or {@code bookings.json}
     * @param date the day to read; empty means the only date the bookings have
     * @return the day's setup and bookings, or every problem with its place and what would be accepted
     */
    public static FolderResult read(Path folder, Optional<LocalDate> date) {
        return new FolderReader(folder, date).read();
    }
}
