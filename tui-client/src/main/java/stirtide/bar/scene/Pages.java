package stirtide.bar.scene;

import java.util.List;
import java.util.Optional;
import stirtide.bar.keys.Place;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/**
 * Which view is shown, and what is picked in the others.
 *
 * @param page one of {@link Place#VIEWS}
 * @param floor pick on the floor
 * @param day pick in the day
 * @param past earlier days, oldest first
 * @param advice what the planner was asked last
 * @param setup what is in force, and what is picked in it
 * @param mark the day whose plan is compared with that on show
 * @param stays whether no key leaves the terminal
 */
public record Pages(
        Place page,
        FloorPick floor,
        DayPick day,
        List<PastDay> past,
        Optional<Advice> advice,
        SetupPick setup,
        Optional<DayView> mark,
        boolean stays) {
    /** The bar, nothing picked elsewhere, no earlier days known. */
    public static final Pages BAR = new Pages(
            Place.BAR,
            FloorPick.FIRST,
            DayPick.FIRST,
            List.of(),
            Optional.empty(),
            SetupPick.FIRST,
            Optional.empty(),
            false);

    public Pages {
        past = List.copyOf(past);
    }

    /** The same, in a terminal that no key leaves. */
    public Pages staying() {
        return new Pages(page, floor, day, past, advice, setup, mark, true);
    }

    /** Another view; a service that was lifted is put back. */
    public Pages to(Place other) {
        return new Pages(other, floor.putBack(), day, past, advice, setup, mark, stays);
    }

    /** Another pick on the floor. */
    public Pages with(FloorPick other) {
        return new Pages(page, other, day, past, advice, setup, mark, stays);
    }

    /** Another pick in the day. */
    public Pages with(DayPick other) {
        return new Pages(page, floor, other, past, advice, setup, mark, stays);
    }

    /** Other earlier days. */
    public Pages withPast(List<PastDay> other) {
        return new Pages(page, floor, day, other, advice, setup, mark, stays);
    }

    /** Another question to the planner, or its answer. */
    public Pages with(Advice other) {
        return new Pages(page, floor, day, past, Optional.of(other), setup, mark, stays);
    }

    /** Another pick in what is in force, or news of it. */
    public Pages with(SetupPick other) {
        return new Pages(page, floor, day, past, advice, other, mark, stays);
    }

    /** Compares with this day from now on. */
    public Pages marked(DayView view) {
        return new Pages(page, floor, day, past, advice, setup, Optional.of(view), stays);
    }

    /** The first day that is seen is the one to compare with. */
    public Pages seen(DayView view) {
        return mark.isPresent() ? this : marked(view);
    }

    /** A command goes out: a lifted service is put back, and what the command will change is compared with this day. */
    public Pages sent(DayCommand command, Optional<DayView> view) {
        boolean plans = command instanceof DayCommand.MoveService
                || command instanceof DayCommand.CancelService
                || command instanceof DayCommand.BookService
                || command instanceof DayCommand.ChangeShift
                || command instanceof DayCommand.RepeatFormula;
        Pages put = with(floor.putBack());
        return plans && view.isPresent() ? put.marked(view.get()) : put;
    }
}
