package stirtide.bar.scene;

import java.util.List;
import java.util.Optional;
import stirtide.bar.keys.Place;

/**
 * Which view is shown, and what is picked in the others.
 *
 * @param page one of {@link Place#VIEWS}
 * @param floor pick on the floor
 * @param day pick in the day
 * @param past earlier days, oldest first
 * @param advice what the planner was asked last
 * @param setup what is in force, and what is picked in it
 */
public record Pages(
        Place page, FloorPick floor, DayPick day, List<PastDay> past, Optional<Advice> advice, SetupPick setup) {
    /** The bar, nothing picked elsewhere, no earlier days known. */
    public static final Pages BAR =
            new Pages(Place.BAR, FloorPick.FIRST, DayPick.FIRST, List.of(), Optional.empty(), SetupPick.FIRST);

    public Pages {
        past = List.copyOf(past);
    }

    /** Another view; a service that was lifted is put back. */
    public Pages to(Place other) {
        return new Pages(other, floor.putBack(), day, past, advice, setup);
    }

    /** Another pick on the floor. */
    public Pages with(FloorPick other) {
        return new Pages(page, other, day, past, advice, setup);
    }

    /** Another pick in the day. */
    public Pages with(DayPick other) {
        return new Pages(page, floor, other, past, advice, setup);
    }

    /** Other earlier days. */
    public Pages withPast(List<PastDay> other) {
        return new Pages(page, floor, day, other, advice, setup);
    }

    /** Another question to the planner, or its answer. */
    public Pages with(Advice other) {
        return new Pages(page, floor, day, past, Optional.of(other), setup);
    }

    /** Another pick in what is in force, or news of it. */
    public Pages with(SetupPick other) {
        return new Pages(page, floor, day, past, advice, other);
    }
}
