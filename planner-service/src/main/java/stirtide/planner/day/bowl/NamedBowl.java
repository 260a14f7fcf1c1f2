package stirtide.planner.day.bowl;

import java.util.function.Function;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;

/** The bowl a command names: decides about it, or refuses what cannot be decided about. */
public final class NamedBowl {
    private NamedBowl() {}

    /** Decides about a bowl that is neither used up nor binned. */
    static Decision live(Day day, String id, Function<BowlState, Decision> rule) {
        var bowl = day.bowl(id);
        if (bowl.isEmpty())
            return Decision.refuse(
                    "BOWL_UNKNOWN",
                    "There is no bowl \"" + id + "\" in use. Accepted: "
                            + Refusal.listed(
                                    day.liveBowls().map(BowlState::bowl).toList()) + ".");
        return bowl.get().live() ? rule.apply(bowl.get()) : new Decision.Refused(closed(day, bowl.get()));
    }

    /** The refusal of a bowl that is used up or binned. */
    public static Refusal closed(Day day, BowlState bowl) {
        var end = bowl.closed().orElseThrow();
        var how = end.cause().isPresent() ? "binned" : "finished";
        return new Refusal(
                "BOWL_CLOSED",
                "Bowl " + bowl.bowl() + " was " + how + " at "
                        + DayTime.of(day.opened()).clock(end.at()) + ". Name a bowl that is in use.");
    }
}
