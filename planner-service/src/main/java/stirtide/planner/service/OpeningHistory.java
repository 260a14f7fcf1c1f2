package stirtide.planner.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.planner.day.history.CarriedDay;
import stirtide.planner.day.history.CarriedHistory;
import stirtide.planner.day.state.Day;
import stirtide.planner.eventlog.LogFailure;

/** Adds to the opening of a day what the earlier days of the salon teach it. */
record OpeningHistory(DayRegistry days) {
    /** Some months of a busy bar; more would make the opening large and teach little. */
    private static final int MOST_USES = 1000;

    /** Name of the newest day of the salon before the one to be opened. */
    Optional<String> newestBefore(OpenDay open) {
        SortedMap<String, Long> earlier = before(open, days.revisions());
        return earlier.isEmpty() ? Optional.empty() : Optional.of(earlier.lastKey());
    }

    private static <T> SortedMap<String, T> before(OpenDay open, SortedMap<String, T> days) {
        String salon = open.setup().salon().salonId() + "/";
        return days.subMap(salon, salon + open.setup().date());
    }

    /**
     * The opening with its history.
     *
     * @throws LogFailure when the newest day before it is not in memory
     */
    OpenDay withHistory(OpenDay open) {
        Optional<String> name = newestBefore(open);
        Optional<Day> newest = name.flatMap(days::opened).map(LoadedDay::day);
        if (name.isPresent() && newest.isEmpty())
            throw new LogFailure(LogFailure.Kind.UNAVAILABLE, name.get() + " cannot be read; nothing was stored");
        return new OpenDay(
                CarriedHistory.learned(open.setup(), newest, past(open), MOST_USES, open.bookings()), open.bookings());
    }

    private List<CarriedDay> past(OpenDay open) {
        List<CarriedDay> past = new ArrayList<>();
        before(open, days.evicted().all()).values().forEach(day -> past.add(day.past()));
        before(open, days.loadedByName()).values().stream()
                .filter(LoadedDay::opened)
                .forEach(day -> past.add(CarriedDay.of(day.day())));
        return past;
    }
}
