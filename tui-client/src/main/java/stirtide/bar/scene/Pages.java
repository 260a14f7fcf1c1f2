package stirtide.bar.scene;

import java.util.List;
import stirtide.bar.keys.Place;

/**
 * Which of the three views is shown, and what is picked in the other two.
 *
 * @param page {@link Place#BAR}, {@link Place#FLOOR} or {@link Place#DAY}
 * @param floor pick on the floor
 * @param day pick in the day
 * @param past earlier days, oldest first
 */
public record Pages(Place page, FloorPick floor, DayPick day, List<PastDay> past) {
    /** The bar, nothing picked elsewhere, no earlier days known. */
    public static final Pages BAR = new Pages(Place.BAR, FloorPick.FIRST, DayPick.FIRST, List.of());

    public Pages {
        past = List.copyOf(past);
    }

    /** Another view; a service that was lifted is put back. */
    public Pages to(Place other) {
        return new Pages(other, floor.putBack(), day, past);
    }

    /** Another pick on the floor. */
    public Pages with(FloorPick other) {
        return new Pages(page, other, day, past);
    }

    /** Another pick in the day. */
    public Pages with(DayPick other) {
        return new Pages(page, floor, other, past);
    }

    /** Other earlier days. */
    public Pages withPast(List<PastDay> other) {
        return new Pages(page, floor, day, other);
    }
}
