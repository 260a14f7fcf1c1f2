package stirtide.planner.day.batch;

import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.BatchShare;
import stirtide.events.day.DayEvent;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBatch.Share;
import stirtide.planner.day.bowl.BowlBeginChecks;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.day.state.ServiceState;

/**
 * Beginning one mix for two bowls. Only a pair of the plan on show may be begun so: it has been proven that the weights
 * stay inside the directions of both clients, and that both bowls live until their last use.
 */
final class BatchBeginRules {
    private BatchBeginRules() {}

    static Decision begin(Day day, DayCommand.BeginBatch command, CommandContext context) {
        for (var id : command.bowls())
            if (day.bowl(id).isPresent())
                return Decision.refuse(
                        "BOWL_ALREADY_BEGUN",
                        "Bowl " + id + " was begun already. Begin a bowl of the queue, or a pair of the plan on show: "
                                + pairs(day) + ".");
        var planned = day.plan().stream()
                .flatMap(plan -> plan.batches().stream())
                .filter(batch -> batch.bowlIds().equals(command.bowls()))
                .filter(batch -> batch.bowlIds().stream().allMatch(id -> standing(day, id)))
                .findFirst();
        if (planned.isEmpty())
            return Decision.refuse(
                    "BATCH_NOT_PLANNED",
                    "Bowls " + String.join(" and ", command.bowls())
                            + " are no pair of the plan on show: only such a pair may be one mix. Accepted: "
                            + pairs(day) + "; else begin each bowl alone.");
        return Decision.acceptUnless(
                objection(day, planned.get(), command, context),
                () -> begun(day, planned.get(), command.personId(), context));
    }

    private static boolean standing(Day day, String id) {
        return day.plannedBowl(id)
                .flatMap(one -> day.service(one.service()))
                .filter(ServiceState::standing)
                .isPresent();
    }

    private static Optional<Refusal> objection(
            Day day, PlannedBatch batch, DayCommand.BeginBatch command, CommandContext context) {
        return outOfOrder(day, batch)
                .or(() -> BowlBeginChecks.mixerObjection(day, command.personId(), context))
                .or(() -> BowlBeginChecks.scaleObjection(day, batch.scaleId()))
                .or(() -> bowlsObjection(day, batch))
                .or(() -> batch.bowlIds().stream()
                        .flatMap(id -> day.plannedBowl(id).stream())
                        .flatMap(one -> BowlBeginChecks.tooEarly(day, one, context).stream())
                        .findFirst());
    }

    private static Optional<Refusal> outOfOrder(Day day, PlannedBatch batch) {
        return batch.bowlIds().stream()
                .map(id ->
                        day.service(day.plannedBowl(id).orElseThrow().service()).orElseThrow())
                .filter(service -> !batch.bowlIds().contains(service.nextBowl()))
                .findFirst()
                .map(service -> new Refusal(
                        "BOWL_OUT_OF_ORDER",
                        "Bowl " + service.nextBowl() + " of service " + service.service()
                                + " comes before this mix. Begin " + service.nextBowl() + " first."));
    }

    private static Optional<Refusal> bowlsObjection(Day day, PlannedBatch batch) {
        return batch.shares().stream()
                .map(Share::bowlSizeId)
                .flatMap(size -> BowlBeginChecks.bowlsObjection(day, size, (int) batch.shares().stream()
                                .filter(share -> share.bowlSizeId().equals(size))
                                .count())
                        .stream())
                .findFirst();
    }

    private static DayEvent begun(Day day, PlannedBatch batch, String personId, CommandContext context) {
        var shares = batch.shares().stream().map(share -> share(day, share)).toList();
        var first = day.plannedBowl(batch.bowlIds().get(0)).orElseThrow();
        return new DayEvent.BatchBegun(
                shares,
                personId,
                batch.scaleId(),
                batch.formula(),
                context.now().plus(BowlBeginChecks.workingLife(day, first)));
    }

    private static BatchShare share(Day day, Share share) {
        var planned = day.plannedBowl(share.bowl()).orElseThrow();
        return new BatchShare(share.bowl(), planned.service(), planned.run(), share.bowlSizeId(), share.milligrams());
    }

    private static String pairs(Day day) {
        return Refusal.listed(day.plan().stream()
                .flatMap(plan -> plan.batches().stream())
                .map(batch -> String.join(" with ", batch.bowlIds()))
                .toList());
    }
}
