package stirtide.planner.day.bowl;

import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.day.state.ServiceState;

/**
 * Beginning a bowl. Only a bowl of the plan on show may be begun: its formula has been proven to stay inside the
 * directions. The working life runs from this instant.
 */
final class BowlBeginRules {
    private BowlBeginRules() {}

    static Decision begin(Day day, DayCommand.BeginBowl command, CommandContext context) {
        if (day.bowl(command.bowl()).isPresent())
            return Decision.refuse(
                    "BOWL_ALREADY_BEGUN",
                    "Bowl " + command.bowl() + " was begun already. Begin a bowl of the queue: " + queue(day) + ".");
        var planned = day.plannedBowl(command.bowl());
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
        return begin(day, planned.get(), command.personId(), context);
    }

    private static Decision begin(Day day, PlannedBowl planned, String personId, CommandContext context) {
        var wrong = BowlBeginChecks.mixerObjection(day, personId, context)
                .or(() -> BowlBeginChecks.scaleObjection(day, planned.scaleId()))
                .or(() -> BowlBeginChecks.bowlsObjection(day, planned.bowlSizeId(), 1))
                .or(() -> BowlBeginChecks.tooEarly(day, planned, context));
        return Decision.acceptUnless(
                wrong,
                () -> new DayEvent.BowlBegun(
                        planned.bowl(),
                        planned.service(),
                        planned.run(),
                        personId,
                        planned.scaleId(),
                        planned.bowlSizeId(),
                        planned.formula(),
                        context.now().plus(BowlBeginChecks.workingLife(day, planned))));
    }

    private static String queue(Day day) {
        return Refusal.listed(day.plannedBowls()
                .filter(bowl -> day.service(bowl.service())
                        .filter(service ->
                                service.standing() && service.nextBowl().equals(bowl.bowl()))
                        .isPresent())
                .map(PlannedBowl::bowl)
                .toList());
    }
}
