package stirtide.planner.day.batch;

import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.BatchShare;
import stirtide.events.day.DayEvent;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBatch.Share;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.day.booking.BookingRules;
import stirtide.planner.day.bowl.BowlBeginRules;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.day.state.ServiceState;

/**
 * Beginning one mix for two bowls. Only a pair of the plan on show may be begun so: it has been proven that the weights
 * stay inside the directions of both clients, and that both bowls live until their last use.
 */
public final class BatchBeginRules {
    private BatchBeginRules() {}

    public static Decision begin(Day day, DayCommand.BeginBatch command, CommandContext facts) {
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
        return objection(day, planned.get(), command, facts)
                .<Decision>map(Decision.Refused::new)
                .orElseGet(() -> accept(day, planned.get(), command.personId(), facts));
    }

    private static boolean standing(Day day, String id) {
        return bowl(day, id)
                .flatMap(one -> day.service(one.service()))
                .filter(ServiceState::standing)
                .isPresent();
    }

    private static Optional<PlannedBowl> bowl(Day day, String id) {
        return day.plan().stream()
                .flatMap(plan -> plan.bowls().stream())
                .filter(one -> one.bowl().equals(id))
                .findFirst();
    }

    private static Optional<Refusal> objection(
            Day day, PlannedBatch batch, DayCommand.BeginBatch command, CommandContext facts) {
        return outOfOrder(day, batch)
                .or(() -> BowlBeginRules.mixerObjection(day, command.personId(), facts))
                .or(() -> BowlBeginRules.scaleObjection(day, batch.scaleId()))
                .or(() -> bowlsObjection(day, batch))
                .or(() -> batch.bowlIds().stream()
                        .flatMap(id -> bowl(day, id).stream())
                        .flatMap(one -> BowlBeginRules.tooEarly(day, one, facts).stream())
                        .findFirst());
    }

    private static Optional<Refusal> outOfOrder(Day day, PlannedBatch batch) {
        return batch.bowlIds().stream()
                .map(id -> day.service(bowl(day, id).orElseThrow().service()).orElseThrow())
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
                .flatMap(size -> BowlBeginRules.bowlsObjection(day, size, (int) batch.shares().stream()
                                .filter(share -> share.bowlSizeId().equals(size))
                                .count())
                        .stream())
                .findFirst();
    }

    private static Decision accept(Day day, PlannedBatch batch, String personId, CommandContext facts) {
        var shares = batch.shares().stream().map(share -> share(day, share)).toList();
        var first = bowl(day, batch.bowlIds().get(0)).orElseThrow();
        return Decision.accept(new DayEvent.BatchBegun(
                shares,
                personId,
                batch.scaleId(),
                batch.formula(),
                facts.now().plus(BowlBeginRules.workingLife(day, first))));
    }

    private static BatchShare share(Day day, Share share) {
        var planned = bowl(day, share.bowl()).orElseThrow();
        return new BatchShare(share.bowl(), planned.service(), planned.run(), share.bowlSizeId(), share.milligrams());
    }

    private static String pairs(Day day) {
        return BookingRules.listed(day.plan().stream()
                .flatMap(plan -> plan.batches().stream())
                .map(batch -> String.join(" with ", batch.bowlIds()))
                .toList());
    }
}
