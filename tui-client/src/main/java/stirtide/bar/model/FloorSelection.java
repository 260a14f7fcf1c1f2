package stirtide.bar.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.view.DayView;

/**
 * What is selected on the floor.
 *
 * @param service picked service, 0 for the first that has not started
 * @param lifted whether it is lifted, so that the arrows move it
 * @param shiftMinutes minutes the lifted service is moved by, negative is earlier
 * @param scrollMinutes minutes the window is moved away from now
 * @param cellMinutes minutes a cell stands for, 0 for what suits the width
 * @param people whether the people are shown instead of the chairs
 * @param person picked person, 0 for the first
 */
@RecordBuilder
public record FloorSelection(
        int service, boolean lifted, int shiftMinutes, int scrollMinutes, int cellMinutes, boolean people, int person)
        implements FloorSelectionBuilder.With {
    /** Nothing picked or lifted, the window at now. */
    public static final FloorSelection FIRST = new FloorSelection(0, false, 0, 0, 0, false, 0);

    private static final List<Integer> CELLS = List.of(0, 3, 10);
    private static final int MOST_SHIFT = 240;
    private static final int MOST_SCROLL = 720;
    private static final String BOOKED = "BOOKED";

    /** Services as the floor goes through them: by chair, then by start. */
    public static List<DayView.ServiceCard> inOrder(DayView view) {
        return view.services().stream()
                .filter(card -> !card.state().equals("CANCELLED"))
                .sorted(Comparator.comparingInt(DayView.ServiceCard::chair)
                        .thenComparing(DayView.ServiceCard::plannedStart))
                .toList();
    }

    /** The picked service. */
    public Optional<DayView.ServiceCard> in(DayView view) {
        List<DayView.ServiceCard> all = inOrder(view);
        return all.stream()
                .filter(card -> card.service() == service)
                .findFirst()
                .or(() -> all.stream().filter(FloorSelection::mayMove).findFirst())
                .or(() -> all.stream().findFirst());
    }

    /** Whether a service is the picked one. */
    public boolean isOn(DayView.ServiceCard card, DayView view) {
        return in(view).filter(found -> found.service() == card.service()).isPresent();
    }

    /** Whether a service may still be moved. */
    public static boolean mayMove(DayView.ServiceCard card) {
        return card.state().equals(BOOKED);
    }

    /** When the service would start. */
    public Instant start(DayView.ServiceCard card) {
        return card.plannedStart().plus(Duration.ofMinutes(shiftMinutes));
    }

    /** Another service, some places further; stops at both ends. */
    public FloorSelection moved(int step, DayView view) {
        List<DayView.ServiceCard> all = inOrder(view);
        if (all.isEmpty()) return this;
        int at = in(view).map(all::indexOf).orElse(0);
        int next = Math.max(0, Math.min(all.size() - 1, at + step));
        return on(all.get(next).service());
    }

    /** A named service. */
    public FloorSelection on(int other) {
        return withService(other).withLifted(false).withShiftMinutes(0);
    }

    /** The picked service lifted. */
    public FloorSelection lift(DayView.ServiceCard card) {
        return on(card.service()).withLifted(true);
    }

    /** The lifted service where it was. */
    public FloorSelection putBack() {
        return on(service);
    }

    /** The people instead of the chairs, or the chairs again; a lifted service is put back. */
    public FloorSelection otherLanes() {
        return putBack().withPeople(!people);
    }

    /** Index of the picked person, 0 when nobody is there. */
    public int personIn(DayView view) {
        return Math.max(0, Math.min(person, view.people().size() - 1));
    }

    /** Another person, some places further; stops at both ends. */
    public FloorSelection personMoved(int step, DayView view) {
        int next = withPerson(personIn(view) + step).personIn(view);
        return withPerson(next);
    }

    /** The lifted service some minutes further, at most four hours away. */
    public FloorSelection shifted(int minutes) {
        int next = Math.max(-MOST_SHIFT, Math.min(MOST_SHIFT, shiftMinutes + minutes));
        return withShiftMinutes(next);
    }

    /** The window some minutes further, at most half a day away. */
    public FloorSelection scrolled(int minutes) {
        int next = Math.max(-MOST_SCROLL, Math.min(MOST_SCROLL, scrollMinutes + minutes));
        return withScrollMinutes(next);
    }

    /** The next scale of time. */
    public FloorSelection rescaled() {
        return withCellMinutes(CELLS.get((CELLS.indexOf(cellMinutes) + 1) % CELLS.size()));
    }
}
