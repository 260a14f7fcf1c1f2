package stirtide.demo.play;

import java.time.Instant;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.Booking;
import stirtide.events.view.DayView;

/** Everybody of the demo day together: desk, chairs, and the bar unless somebody else works there. */
public final class SalonSimulation {
    private final ReceptionSimulation desk;
    private final ChairSimulation floor;
    private final Optional<BarSimulation> bar;

    /**
     * @param knowledge what everybody knows
     * @param script what happens beside the calendar
     * @param booked bookings by service number
     * @param worksAtBar whether the cast weighs and carries too
     */
    public SalonSimulation(
            SetupLookup knowledge, DayScript script, SortedMap<Integer, Booking> booked, boolean worksAtBar) {
        SortedMap<Integer, Booking> bookings = new TreeMap<>(booked);
        this.desk = new ReceptionSimulation(knowledge, script, bookings);
        this.floor = new ChairSimulation(knowledge, script, bookings);
        this.bar = worksAtBar ? Optional.of(new BarSimulation(knowledge, script)) : Optional.empty();
    }

    /** What somebody does now, if anything: desk first, then the chairs in order, then the bar. */
    public Optional<StaffAction> next(DayView view) {
        return desk.next(view).or(() -> floor.next(view)).or(() -> bar.flatMap(people -> people.next(view)));
    }

    /** Lets the minute that begins at {@code view.time()} pass at the chairs. */
    public void pass(DayView view) {
        floor.pass(view);
    }

    /** Minutes that clients really waited for a bowl, by service. */
    public SortedMap<Integer, Integer> waitedMinutes() {
        return floor.waitedMinutes();
    }

    /** End of the last minute in which each bowl was applied, by bowl. */
    public SortedMap<String, Instant> lastUse() {
        return floor.lastUse();
    }

    /** What went on hair by the chairs' own count. */
    public long appliedMilligrams() {
        return floor.appliedMilligrams();
    }
}
