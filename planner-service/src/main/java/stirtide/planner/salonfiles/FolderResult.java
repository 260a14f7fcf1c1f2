package stirtide.planner.salonfiles;

import java.util.ArrayList;
import java.util.List;
import stirtide.events.day.Booking;
import stirtide.events.setup.DaySetup;
import stirtide.planner.salonfiles.source.FileProblem;

/** What became of a folder: read whole, or refused whole. */
public sealed interface FolderResult {
    /**
     * Everything was accepted.
     *
     * @param setup what is in force on the day
     * @param bookings services booked on the day, sorted by start, chair and id
     * @param notes sentences about what was left out on purpose: cancelled bookings, other dates, other appointments
     */
    record Read(DaySetup setup, List<Booking> bookings, List<String> notes) implements FolderResult {
        public Read {
            bookings = List.copyOf(bookings);
            notes = List.copyOf(notes);
        }

        /** Everything was accepted and nothing left out. */
        public Read(DaySetup setup, List<Booking> bookings) {
            this(setup, bookings, List.of());
        }
    }

    /**
     * Something was not accepted, so nothing was taken over.
     *
     * @param problems at most {@value #MOST_SHOWN} problems in the order of files and lines, at least one
     * @param more how many further problems there are
     */
    record Rejected(List<FileProblem> problems, int more) implements FolderResult {
        /** More than this many problems are counted, not listed. */
        public static final int MOST_SHOWN = 20;

        public Rejected {
            problems = List.copyOf(problems);
        }

        /** A refusal with no further problems. */
        public Rejected(List<FileProblem> problems) {
            this(problems, 0);
        }

        /** The refusal as lines for people, the last of them counting what is not listed. */
        public List<String> lines() {
            List<String> lines = new ArrayList<>();
            problems.forEach(problem -> lines.add(problem.toString()));
            if (more > 0) lines.add("and " + more + " more");
            return List.copyOf(lines);
        }
    }
}
