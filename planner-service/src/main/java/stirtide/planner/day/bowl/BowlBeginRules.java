package stirtide.planner.day.bowl;

import java.time.Duration;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Person;
import stirtide.planner.day.booking.BookingRules;
import stirtide.planner.day.setup.People;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.day.state.ServiceState;

/**
 * Beginning a bowl. Only a bowl of the plan on show may be begun: its formula has been proven to stay inside the
 * directions. The working life runs from this instant.
 */
public final class BowlBeginRules {
    private BowlBeginRules() {}

    public static Decision begin(Day day, DayCommand.BeginBowl command, CommandContext facts) {
        if (day.bowl(command.bowl()).isPresent())
            return Decision.refuse(
                    "BOWL_ALREADY_BEGUN",
                    "Bowl " + command.bowl() + " was begun already. Begin a bowl of the queue: " + queue(day) + ".");
        var planned = day.plan().stream()
                .flatMap(plan -> plan.bowls().stream())
                .filter(bowl -> bowl.bowl().equals(command.bowl()))
                .findFirst();
        var service = planned.flatMap(bowl -> day.service(bowl.service())).filter(ServiceState::standing);
        if (planned.isEmpty() || service.isEmpty())
            return Decision.refuse(
                    "BOWL_NOT_PLANNED",
                    "Bowl \"" + command.bowl() + "\" is not in the plan on show. Accepted: " + queue(day) + ".");
        if (!service.get().nextBowl().equals(command.bowl()))
            return Decision.refuse(
                    "BOWL_OUT_OF_ORDER",
                    "Bowl " + service.get().nextBowl() + " of this service comes before " + command.bowl() + ". Begin "
                            + service.get().nextBowl() + " first.");
        return mixerObjection(day, command.personId(), facts)
                .or(() -> scaleObjection(day, planned.get().scaleId()))
                .or(() -> bowlsObjection(day, planned.get().bowlSizeId(), 1))
                .or(() -> tooEarly(day, planned.get(), facts))
                .<Decision>map(Decision.Refused::new)
                .orElseGet(() -> accept(day, planned.get(), command.personId(), facts));
    }

    private static Decision accept(Day day, PlannedBowl planned, String personId, CommandContext facts) {
        return Decision.accept(new DayEvent.BowlBegun(
                planned.bowl(),
                planned.service(),
                planned.run(),
                personId,
                planned.scaleId(),
                planned.bowlSizeId(),
                planned.formula(),
                facts.now().plus(workingLife(day, planned))));
    }

    public static Optional<Refusal> mixerObjection(Day day, String personId, CommandContext facts) {
        var person = day.opened().salon().people().stream()
                .filter(one -> one.personId().equals(personId))
                .findFirst();
        if (person.isEmpty())
            return refusal(
                    "PERSON_UNKNOWN",
                    "\"" + personId + "\" does not work here on this day. Accepted: "
                            + BookingRules.listed(day.opened().salon().people().stream()
                                    .map(Person::personId)
                                    .toList())
                            + ".");
        if (!People.onDuty(day, person.get(), facts.now()))
            return refusal(
                    "PERSON_OFF_DUTY",
                    person.get().name() + " is not on duty at "
                            + DayTime.of(day.opened()).clock(facts.now())
                            + ". Name somebody on duty, or change the shift first.");
        return day.liveBowls()
                .filter(bowl -> bowl.mixing() && bowl.personId().equals(personId))
                .findFirst()
                .map(bowl -> new Refusal(
                        "PERSON_MIXING",
                        person.get().name() + " is mixing bowl " + bowl.bowl()
                                + ". Weigh it in or bin it first, or name somebody else."));
    }

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
        long owned = day.opened().salon().bowls().stream()
                .filter(size -> size.bowlSizeId().equals(bowlSizeId))
                .mapToLong(size -> size.count())
                .sum();
        if (out + wanted <= owned) return Optional.empty();
        return refusal(
                "NO_BOWL_FREE",
                (wanted == 1 ? "All " + owned : "All but " + (owned - out) + " of " + owned) + " bowls of size "
                        + bowlSizeId + " are in use. Finish or bin one of them first.");
    }

    public static Optional<Refusal> tooEarly(Day day, PlannedBowl planned, CommandContext facts) {
        var life = workingLife(day, planned);
        if (facts.now().plus(life).isAfter(planned.neededFrom())) return Optional.empty();
        var time = DayTime.of(day.opened());
        return refusal(
                "BOWL_TOO_EARLY",
                "Bowl " + planned.bowl() + " would be past its life before its first use at "
                        + time.clock(planned.neededFrom()) + ". The plan begins it at "
                        + time.clock(planned.mixStart()) + ".");
    }

    public static Duration workingLife(Day day, PlannedBowl planned) {
        return day.opened().directions().stream()
                .filter(one -> one.lightenerId().equals(planned.formula().lightenerId()))
                .map(Directions::workingLifeMinutes)
                .map(Duration::ofMinutes)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "no directions for lightener " + planned.formula().lightenerId()));
    }

    private static String queue(Day day) {
        return BookingRules.listed(day.plan().stream()
                .flatMap(plan -> plan.bowls().stream())
                .filter(bowl -> day.service(bowl.service())
                        .filter(service ->
                                service.standing() && service.nextBowl().equals(bowl.bowl()))
                        .isPresent())
                .map(PlannedBowl::bowl)
                .toList());
    }

    private static Optional<Refusal> refusal(String code, String sentence) {
        return Optional.of(new Refusal(code, sentence));
    }
}
