package stirtide.planner.day.bowl;

import static stirtide.planner.day.state.EventRule.PlanRelevance.NONE;
import static stirtide.planner.day.state.EventRule.PlanRelevance.REPLAN;
import static stirtide.planner.day.state.Recheck.always;
import static stirtide.planner.day.state.Recheck.byAcceptedCommand;
import static stirtide.planner.day.state.Recheck.byCommand;
import static stirtide.planner.day.state.Recheck.whileBowl;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent.BowlBegun;
import stirtide.events.day.DayEvent.BowlBinned;
import stirtide.events.day.DayEvent.BowlDue;
import stirtide.events.day.DayEvent.BowlFinished;
import stirtide.events.day.DayEvent.BowlHandedOver;
import stirtide.events.day.DayEvent.BowlLate;
import stirtide.events.day.DayEvent.BowlWeighed;
import stirtide.events.day.DayEvent.LifeEnded;
import stirtide.events.day.DayEvent.LifeEnding;
import stirtide.planner.day.state.BowlIds;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.BowlWeights;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.EventRule;
import stirtide.planner.day.state.ServiceState.DueMark;

/** Bowls from the time they are due until they are used up or binned. */
public final class BowlEvents {
    /** A rule for each event of this folder. */
    public static final List<EventRule<?>> RULES = List.of(
            new EventRule<BowlBegun>(
                    BowlBegun.class,
                    REPLAN,
                    (day, e, stored) ->
                            day.with(day.requireService(e.service()).begun(BowlState.begun(e, stored.time()))),
                    e -> "began bowl " + e.bowl(),
                    byAcceptedCommand(e -> new DayCommand.BeginBowl(e.bowl(), e.personId()))),
            new EventRule<BowlWeighed>(
                    BowlWeighed.class,
                    REPLAN,
                    (day, e, stored) -> day.with(day.requireBowl(e.bowl())
                            .withWeighed(Optional.of(new BowlWeights(
                                    e.lightenerMilligrams(),
                                    e.developerParts(),
                                    e.ratioThousandths(),
                                    e.insideDirections(),
                                    stored.time())))),
                    e -> "weighed bowl " + e.bowl(),
                    byCommand(e -> new DayCommand.WeighBowl(e.bowl(), e.lightenerMilligrams(), e.developerParts()))),
            new EventRule<BowlHandedOver>(
                    BowlHandedOver.class,
                    REPLAN,
                    (day, e, stored) ->
                            day.with(day.requireBowl(e.bowl()).withHandedOverAt(Optional.of(stored.time()))),
                    e -> "handed over bowl " + e.bowl(),
                    byCommand(e -> new DayCommand.HandOverBowl(e.bowl()))),
            new EventRule<BowlFinished>(
                    BowlFinished.class,
                    REPLAN,
                    (day, e, stored) -> day.with(day.requireBowl(e.bowl()).finished(stored.time())),
                    e -> "finished bowl " + e.bowl(),
                    byCommand(e -> new DayCommand.FinishBowl(e.bowl()))),
            new EventRule<BowlBinned>(
                    BowlBinned.class,
                    REPLAN,
                    (day, e, stored) ->
                            day.with(day.requireBowl(e.bowl()).binned(stored.time(), e.leftMilligrams(), e.cause())),
                    e -> "binned bowl " + e.bowl(),
                    byCommand(e -> new DayCommand.BinBowl(e.bowl(), e.leftMilligrams(), e.cause()))),
            new EventRule<BowlDue>(
                    BowlDue.class,
                    NONE,
                    (day, e, stored) -> mark(day, e.bowl(), old -> new DueMark(Optional.of(e.dueAt()), old.lateAt())),
                    e -> "bowl " + e.bowl() + " was due",
                    always()),
            new EventRule<BowlLate>(
                    BowlLate.class,
                    REPLAN,
                    (day, e, stored) -> mark(day, e.bowl(), old -> new DueMark(old.dueAt(), Optional.of(e.dueAt()))),
                    e -> "bowl " + e.bowl() + " was late",
                    always()),
            new EventRule<LifeEnding>(
                    LifeEnding.class,
                    NONE,
                    (day, e, stored) -> day.with(day.requireBowl(e.bowl()).noted(true, false)),
                    e -> "the life of bowl " + e.bowl() + " is ending",
                    whileBowl(LifeEnding::bowl)),
            new EventRule<LifeEnded>(
                    LifeEnded.class,
                    REPLAN,
                    (day, e, stored) -> day.with(day.requireBowl(e.bowl()).noted(true, true)),
                    e -> "the life of bowl " + e.bowl() + " ended",
                    whileBowl(LifeEnded::bowl)));

    private BowlEvents() {}

    /** A plan may name a bowl of a service whose booking was taken back; then there is nothing to mark. */
    private static Day mark(Day day, String bowl, UnaryOperator<DueMark> change) {
        var number = BowlIds.serviceOf(bowl);
        if (number.isEmpty()) return day;
        return day.service(number.getAsInt())
                .map(service -> day.with(service.marked(bowl, change.apply(service.dueMark(bowl)))))
                .orElse(day);
    }
}
