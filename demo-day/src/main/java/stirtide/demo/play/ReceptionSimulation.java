package stirtide.demo.play;

import java.time.Instant;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.view.DayView;

/** Simulates the reception: clients who come late, and clients without a booking. */
public final class ReceptionSimulation {
    private final SetupLookup lookup;
    private final DayScript script;
    private final SortedMap<Integer, Booking> bookings;
    private final Set<String> sent = new HashSet<>();

    /**
     * @param lookup the setup of the day
     * @param script what happens
     * @param bookings bookings by service number; walk-ins are added to it
     */
    public ReceptionSimulation(SetupLookup lookup, DayScript script, SortedMap<Integer, Booking> bookings) {
        this.lookup = lookup;
        this.script = script;
        this.bookings = bookings;
    }

    /** The next action of the reception, if one is due. */
    public Optional<StaffAction> next(DayView view) {
        Optional<StaffAction> late = late(view);
        return late.isPresent() ? late : walkIn(view);
    }

    private Optional<StaffAction> late(DayView view) {
        for (Map.Entry<String, DayScript.Late> late : new TreeMap<>(script.late()).entrySet()) {
            if (view.time().isBefore(lookup.at(late.getValue().at()))) continue;
            for (Map.Entry<Integer, Booking> booked : bookings.entrySet())
                if (booked.getValue().bookingUid().equals(late.getKey()) && sent.add(late.getKey()))
                    return Optional.of(move(
                            booked.getKey(), booked.getValue(), late.getValue().minutes()));
        }
        return Optional.empty();
    }

    private StaffAction move(int service, Booking booked, int minutes) {
        Instant start = booked.start().plusSeconds(60L * minutes);
        String reason = "client comes " + minutes + " minutes late";
        return new StaffAction(
                lookup.receptionist(), new DayCommand.MoveService(service, start, Optional.empty(), reason));
    }

    private Optional<StaffAction> walkIn(DayView view) {
        for (DayScript.WalkIn walkIn : script.walkIns()) {
            Instant at = lookup.at(walkIn.at());
            if (view.time().isBefore(at) || !sent.add(walkIn.bookingUid())) continue;
            Booking booking = booking(walkIn, at);
            bookings.put(bookings.lastKey() + 1, booking);
            return Optional.of(new StaffAction(lookup.receptionist(), new DayCommand.BookService(booking)));
        }
        return Optional.empty();
    }

    private static Booking booking(DayScript.WalkIn walkIn, Instant at) {
        return new Booking(
                walkIn.bookingUid(),
                walkIn.menuId(),
                walkIn.chair(),
                at.plusSeconds(60L * walkIn.startInMinutes()),
                walkIn.clientRef(),
                walkIn.length(),
                walkIn.density(),
                walkIn.stylistId(),
                0,
                0,
                Optional.empty(),
                Optional.empty());
    }
}
