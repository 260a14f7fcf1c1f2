package stirtide.planner.day.bowl;

import java.time.Duration;
import java.util.Optional;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Person;
import stirtide.planner.day.setup.People;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Refusal;

/** What must hold before something is mixed, whether for one bowl or for two. */
public final class BowlBeginChecks {
    private BowlBeginChecks() {}

    /** Whether a person may mix now: known, on duty, not at another bowl. */
    public static Optional<Refusal> mixerObjection(Day day, String personId, CommandContext context) {
        var person = day.opened().salon().person(personId);
        if (person.isEmpty())
            return Refusal.of(
                    "PERSON_UNKNOWN",
                    "\"" + personId + "\" does not work here on this day. Accepted: "
                            + Refusal.listed(day.opened().salon().people().stream()
                                    .map(Person::personId)
                                    .toList())
                            + ".");
        if (!People.onDuty(day, person.get(), context.now()))
            return Refusal.of(
                    "PERSON_OFF_DUTY",
                    person.get().name() + " is not on duty at "
                            + DayTime.of(day.opened()).clock(context.now())
                            + ". Name a person on duty, or change the shift first.");
        return day.liveBowls()
                .filter(bowl -> bowl.mixing() && bowl.personId().equals(personId))
                .findFirst()
                .map(bowl -> new Refusal(
                        "PERSON_MIXING",
                        person.get().name() + " is mixing bowl " + bowl.bowl()
                                + ". Weigh it in or bin it first, or name another person."));
    }

    /** Whether a scale is free. */
    public static Optional<Refusal> scaleObjection(Day day, String scaleId) {
        return day.liveBowls()
                .filter(bowl -> bowl.mixing() && bowl.scaleId().equals(scaleId))
                .findFirst()
                .map(bowl -> new Refusal(
                        "SCALE_BUSY",
                        "Scale " + scaleId + " is taken by bowl " + bowl.bowl()
                                + ". Weigh that one in or bin it first."));
    }

    /** Whether so many bowls of a size are free. */
    public static Optional<Refusal> bowlsObjection(Day day, String bowlSizeId, int wanted) {
        long out = day.liveBowls()
                .filter(bowl -> bowl.bowlSizeId().equals(bowlSizeId))
                .count();
        long owned =
                day.opened().salon().bowlSize(bowlSizeId).map(BowlSize::count).orElse(0);
        if (out + wanted <= owned) return Optional.empty();
        return Refusal.of(
                "NO_BOWL_FREE",
                (wanted == 1 ? "All " + owned : "All but " + (owned - out) + " of " + owned) + " bowls of size "
                        + bowlSizeId + " are in use. Finish or bin one of them first.");
    }

    /** Whether the bowl would be past its life before its first use. */
    public static Optional<Refusal> tooEarly(Day day, PlannedBowl planned, CommandContext context) {
        var life = workingLife(day, planned);
        if (context.now().plus(life).isAfter(planned.neededFrom())) return Optional.empty();
        var time = DayTime.of(day.opened());
        return Refusal.of(
                "BOWL_TOO_EARLY",
                "Bowl " + planned.bowl() + " would be past its life before its first use at "
                        + time.clock(planned.neededFrom()) + ". The plan begins it at "
                        + time.clock(planned.mixStart()) + ".");
    }

    /** How long a planned bowl can be used. */
    public static Duration workingLife(Day day, PlannedBowl planned) {
        return day.opened()
                .directions(planned.formula().lightenerId())
                .map(Directions::workingLifeMinutes)
                .map(Duration::ofMinutes)
                .orElseThrow(() -> new IllegalStateException(
                        "no directions for lightener " + planned.formula().lightenerId()));
    }
}
