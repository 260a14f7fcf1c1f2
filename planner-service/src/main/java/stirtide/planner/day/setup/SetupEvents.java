package stirtide.planner.day.setup;

import static stirtide.planner.day.state.EventRule.PlanRelevance.REPLAN;
import static stirtide.planner.day.state.Recheck.byCommand;

import java.util.List;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent.SetupChanged;
import stirtide.events.day.DayEvent.ShiftChanged;
import stirtide.events.day.StoredEvent;
import stirtide.events.setup.SetupPiece;
import stirtide.planner.day.allowance.LearnedAllowances;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.EventRule;

/** Hours of people and pieces of the setup that change while the day is open. */
public final class SetupEvents {
    /** A rule for each event of this folder. */
    public static final List<EventRule<?>> RULES = List.of(
            new EventRule<ShiftChanged>(
                    ShiftChanged.class,
                    REPLAN,
                    (day, e, stored) -> day.shift(e.personId(), e.onDuty()),
                    e -> "changed the shift of " + e.personId(),
                    byCommand(e -> new DayCommand.ChangeShift(e.personId(), e.onDuty()))),
            new EventRule<SetupChanged>(
                    SetupChanged.class,
                    REPLAN,
                    SetupEvents::changed,
                    e -> text(e.piece()),
                    byCommand(e -> new DayCommand.ChangeSetup(e.piece()))));

    private SetupEvents() {}

    /** A change reaches services that have not begun; what is being applied stays as planned. */
    private static Day changed(Day day, SetupChanged event, StoredEvent stored) {
        var next = day.inForce(SetupPieces.apply(day.opened(), event.piece()));
        if (event.piece() instanceof SetupPiece.OnePerson one)
            next = next.hoursOfSetup(one.person().personId());
        return LearnedAllowances.learnUnstarted(next);
    }

    private static String text(SetupPiece piece) {
        if (piece instanceof SetupPiece.OnePerson one)
            return "set up person " + one.person().personId();
        if (piece instanceof SetupPiece.OneScale one)
            return "set up scale " + one.scale().scaleId();
        if (piece instanceof SetupPiece.OneBowlSize one)
            return "set up bowl size " + one.bowlSize().bowlSizeId();
        if (piece instanceof SetupPiece.OneDeveloper one)
            return "set up developer " + one.developer().developerId();
        if (piece instanceof SetupPiece.OneLightener one)
            return "set up lightener " + one.directions().lightenerId();
        if (piece instanceof SetupPiece.OneMenuEntry one)
            return "set up menu entry " + one.entry().menuId();
        if (piece instanceof SetupPiece.HairFactors) return "set up the factors of hair";
        if (piece instanceof SetupPiece.TakenOut out) return "took out " + out.id();
        return "set up the salon";
    }
}
