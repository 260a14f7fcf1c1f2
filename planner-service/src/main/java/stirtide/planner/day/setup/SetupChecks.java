package stirtide.planner.day.setup;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Checks that several parts of a setup share. */
final class SetupChecks {
    /** Nothing that is planned for a day takes longer than one. */
    static final int MOST_MINUTES = 24 * 60;

    private SetupChecks() {}

    /** Whether something can take so many minutes of a day. */
    static boolean isMinutes(int minutes, int least) {
        return minutes >= least && minutes <= MOST_MINUTES;
    }

    /** Whether each id is there once and none is blank. */
    static Optional<String> unique(String what, List<String> ids) {
        var seen = new HashSet<String>();
        for (var id : ids) {
            if (id.isBlank()) return Optional.of("A " + what + " has no name. Each needs its own.");
            if (!seen.add(id))
                return Optional.of("The " + what + " \"" + id + "\" stands twice. Each needs its own name.");
        }
        return Optional.empty();
    }

    /** The first thing that is wrong. */
    static Optional<String> first(Stream<Optional<String>> objections) {
        return objections.flatMap(Optional::stream).findFirst();
    }
}
