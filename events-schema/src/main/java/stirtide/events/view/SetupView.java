package stirtide.events.view;

import java.util.List;
import java.util.SortedMap;
import stirtide.events.setup.DaySetup;

/**
 * What is in force on a day, as it stands after all changes.
 *
 * @param revision newest event the view knows
 * @param setup what is in force, with the hours of the day as they are now and without what earlier days teach
 * @param missing what must be added before a service can be booked, in sentences; empty when the setup is complete
 * @param files the same as the files of a salon, text by name, bookings that stand included
 */
public record SetupView(long revision, DaySetup setup, List<String> missing, SortedMap<String, String> files) {
    public SetupView {
        missing = List.copyOf(missing);
    }
}
