package stirtide.bar.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import stirtide.bar.keys.KeyContext;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/**
 * Which view is shown, and what is selected in the others.
 *
 * @param page one of {@link KeyContext#VIEWS}
 * @param floor pick on the floor
 * @param day pick in the day
 * @param past earlier days, oldest first
 * @param pastLoaded whether the earlier days were asked for and heard
 * @param advice what the planner was asked last
 * @param setup what is in force, and what is picked in it
 * @param mark the day whose plan is compared with that on show
 * @param stays whether no key leaves the terminal
 */
@RecordBuilder
public record ViewState(
        KeyContext page,
        FloorSelection floor,
        OverMixSelection day,
        List<DayOverMix> past,
        boolean pastLoaded,
        Optional<Inquiry> advice,
        SetupSelection setup,
        Optional<DayView> mark,
        boolean stays)
        implements ViewStateBuilder.With {
    /** The bar, nothing picked elsewhere, no earlier days known. */
    public static final ViewState BAR = new ViewState(
            KeyContext.BAR,
            FloorSelection.FIRST,
            OverMixSelection.FIRST,
            List.of(),
            false,
            Optional.empty(),
            SetupSelection.FIRST,
            Optional.empty(),
            false);

    public ViewState {
        past = List.copyOf(past);
    }

    /** Another view; a service that was lifted is put back. */
    public ViewState to(KeyContext other) {
        return withPage(other).withFloor(floor.putBack());
    }

    /** The earlier days as they were heard. */
    public ViewState loaded(List<DayOverMix> days) {
        return withPast(days).withPastLoaded(true);
    }

    /** Another inquiry, or its answer. */
    public ViewState with(Inquiry other) {
        return withAdvice(Optional.of(other));
    }

    /** Compares with this day from now on. */
    public ViewState marked(DayView view) {
        return withMark(Optional.of(view));
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
        ViewState put = withFloor(floor.putBack());
        return plans && view.isPresent() ? put.marked(view.get()) : put;
    }
}
