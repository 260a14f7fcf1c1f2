package stirtide.bar.model;

import java.util.List;
import java.util.Optional;
import stirtide.bar.keys.KeyContext;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/**
 * Which view is shown, and what is picked in the others.
 *
 * @param page one of {@link KeyContext#VIEWS}
 * @param floor pick on the floor
 * @param day pick in the day
 * @param past earlier days, oldest first
 * @param advice what the planner was asked last
 * @param setup what is in force, and what is picked in it
 * @param mark the day whose plan is compared with that on show
 * @param stays whether no key leaves the terminal
 */
public record ViewState(
        KeyContext page,
        FloorSelection floor,
        OverMixSelection day,
        List<DayOverMix> past,
        Optional<Inquiry> advice,
        SetupSelection setup,
        Optional<DayView> mark,
        boolean stays) {
    /** The bar, nothing picked elsewhere, no earlier days known. */
    public static final ViewState BAR = new ViewState(
            KeyContext.BAR,
            FloorSelection.FIRST,
            OverMixSelection.FIRST,
            List.of(),
            Optional.empty(),
            SetupSelection.FIRST,
            Optional.empty(),
            false);

    public ViewState {
        past = List.copyOf(past);
    }

    /** The same, in a terminal that no key leaves. */
    public ViewState staying() {
        return new ViewState(page, floor, day, past, advice, setup, mark, true);
    }

    /** Another view; a service that was lifted is put back. */
    public ViewState to(KeyContext other) {
        return new ViewState(other, floor.putBack(), day, past, advice, setup, mark, stays);
    }

    /** Another pick on the floor. */
    public ViewState with(FloorSelection other) {
        return new ViewState(page, other, day, past, advice, setup, mark, stays);
    }

    /** Another pick in the day. */
    public ViewState with(OverMixSelection other) {
        return new ViewState(page, floor, other, past, advice, setup, mark, stays);
    }

    /** Other earlier days. */
    public ViewState withPast(List<DayOverMix> other) {
        return new ViewState(page, floor, day, other, advice, setup, mark, stays);
    }

    /** Another question to the planner, or its answer. */
    public ViewState with(Inquiry other) {
        return new ViewState(page, floor, day, past, Optional.of(other), setup, mark, stays);
    }

    /** Another pick in what is in force, or news of it. */
    public ViewState with(SetupSelection other) {
        return new ViewState(page, floor, day, past, advice, other, mark, stays);
    }

    /** Compares with this day from now on. */
    public ViewState marked(DayView view) {
        return new ViewState(page, floor, day, past, advice, setup, Optional.of(view), stays);
    }

    /** The first day that is seen is the one to compare with. */
    public ViewState seen(DayView view) {
        return mark.isPresent() ? this : marked(view);
    }

    /** A command goes out: a lifted service is put back, and what the command will change is compared with this day. */
    public ViewState sent(DayCommand command, Optional<DayView> view) {
        boolean plans = command instanceof DayCommand.MoveService
                || command instanceof DayCommand.CancelService
                || command instanceof DayCommand.BookService
                || command instanceof DayCommand.ChangeShift
                || command instanceof DayCommand.RepeatFormula;
        ViewState put = with(floor.putBack());
        return plans && view.isPresent() ? put.marked(view.get()) : put;
    }
}
