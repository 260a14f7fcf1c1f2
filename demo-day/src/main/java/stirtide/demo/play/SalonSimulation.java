package stirtide.demo.play;

import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.Booking;
import stirtide.events.view.DayView;

/** Simulates the salon: reception, chairs and, unless a user works there, the color bar. */
public final class SalonSimulation {
    private final ReceptionSimulation reception;
    private final ChairSimulation chairs;
    private final Optional<BarSimulation> bar;

    /**
     * @param lookup the setup of the day
     * @param script what happens beside the calendar
     * @param booked bookings by service number
     * @param worksAtBar whether the assistants at the color bar are simulated too
     */
    public SalonSimulation(
            SetupLookup lookup, DayScript script, SortedMap<Integer, Booking> booked, boolean worksAtBar) {
        SortedMap<Integer, Booking> bookings = new TreeMap<>(booked);
        this.reception = new ReceptionSimulation(lookup, script, bookings);
        this.chairs = new ChairSimulation(lookup, script, bookings);
        this.bar = worksAtBar ? Optional.of(new BarSimulation(lookup, script)) : Optional.empty();
    }

    /** The next action, if one is due: reception first, then the chairs in order, then the bar. */
    public Optional<StaffAction> next(DayView view) {
        return reception.next(view).or(() -> chairs.next(view)).or(() -> bar.flatMap(staff -> staff.next(view)));
    }

    /** Simulates the minute that begins at {@code view.time()} at the chairs. */
    public void pass(DayView view) {
        chairs.pass(view);
    }

    /** What was counted at the chairs so far. */
    public ChairFigures figures() {
        return chairs.figures();
    }
}
