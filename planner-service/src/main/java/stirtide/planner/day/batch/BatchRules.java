package stirtide.planner.day.batch;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.day.OverMixCause;
import stirtide.mixing.text.AmountText;
import stirtide.planner.day.bowl.BowlRules;
import stirtide.planner.day.bowl.BowlWeighRules;
import stirtide.planner.day.bowl.DirectionsCheck;
import stirtide.planner.day.bowl.NamedBowl;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.CommandRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;

/**
 * One mix for two bowls until it is divided: weighed as a whole, corrected as a whole, then divided by weight. Nothing of
 * it goes to a chair before; afterwards its bowls are two bowls like others.
 */
public final class BatchRules {
    /** A rule for each command of this folder. */
    public static final List<CommandRule<?>> RULES = List.of(
            CommandRule.of(DayCommand.BeginBatch.class, BatchBeginRules::begin),
            CommandRule.of(DayCommand.WeighBatch.class, BatchRules::weigh),
            CommandRule.of(DayCommand.DivideBatch.class, BatchRules::divide),
            CommandRule.of(DayCommand.BinBatch.class, BatchRules::bin));

    private BatchRules() {}

    private static Decision weigh(Day day, DayCommand.WeighBatch command) {
        var refusal = absent(day, command.batch());
        if (refusal.isPresent()) return new Decision.Refused(refusal.get());
        var bowl = day.bowl(command.batch()).orElseThrow();
        if (!bowl.undivided())
            return Decision.refuse(
                    "BATCH_DIVIDED",
                    "The mix in bowl " + bowl.bowl()
                            + " is divided and cannot be weighed in any more. Take the dividing back first, or bin the"
                            + " bowls one by one.");
        var whole = day.mixOf(bowl);
        var parts = command.developerParts();
        int lightener = command.lightenerMilligrams();
        return Decision.acceptUnless(
                BowlWeighRules.weightsObjection(day, whole, lightener, parts),
                () -> new DayEvent.BatchWeighed(
                        bowl.bowl(),
                        lightener,
                        parts,
                        BowlWeighRules.ratioThousandths(lightener, parts),
                        DirectionsCheck.complaint(day, whole, lightener, parts).isEmpty()));
    }

    /** Dividing again replaces what was said before, as long as both bowls are at the bar. */
    private static Decision divide(Day day, DayCommand.DivideBatch command, CommandContext context) {
        var refusal = absent(day, command.batch()).or(() -> away(day, command.batch()));
        if (refusal.isPresent()) return new Decision.Refused(refusal.get());
        var bowl = day.bowl(command.batch()).orElseThrow();
        var whole = bowl.whole();
        var protection = BowlRules.protection(day, whole, context.now());
        if (protection.isPresent()) return new Decision.Refused(protection.get());
        var other = day.bowl(bowl.batch().orElseThrow().pouredInto()).orElseThrow();
        long most = Math.min(BowlWeighRules.mostMilligrams(day, other), whole.mixedMilligrams() - 1L);
        if (command.pouredMilligrams() < 1 || command.pouredMilligrams() > most)
            return Decision.refuse(
                    "SHARE_OUT_OF_RANGE",
                    AmountText.grams(command.pouredMilligrams()) + " cannot have been poured into bowl " + other.bowl()
                            + " of a mix of " + AmountText.grams(whole.mixedMilligrams())
                            + ". Accepted: more than 0 g, "
                            + AmountText.grams(most) + " at most.");
        return Decision.accept(new DayEvent.BatchDivided(bowl.bowl(), command.pouredMilligrams()));
    }

    private static Decision bin(Day day, DayCommand.BinBatch command, CommandContext context) {
        var refusal = absent(day, command.batch());
        if (refusal.isPresent()) return new Decision.Refused(refusal.get());
        var bowl = day.bowl(command.batch()).orElseThrow();
        if (!bowl.undivided())
            return Decision.refuse(
                    "BATCH_DIVIDED",
                    "The mix in bowl " + bowl.bowl() + " is divided. Bin its bowls one by one: "
                            + String.join(", ", bowl.batch().orElseThrow().bowls()) + ".");
        return Decision.acceptUnless(
                causeObjection(day, bowl, command.cause(), context.now()),
                () -> new DayEvent.BatchBinned(bowl.bowl(), command.cause()));
    }

    /** One mix has one cause; that a client is gone fits as soon as one of the two is. */
    private static Optional<Refusal> causeObjection(Day day, BowlState bowl, OverMixCause cause, Instant now) {
        var own = BowlRules.causeObjection(day, bowl.whole(), cause, now);
        var other = day.bowl(bowl.batch().orElseThrow().pouredInto()).orElseThrow();
        return own.isPresent()
                        && BowlRules.causeObjection(day, other, cause, now).isPresent()
                ? own
                : Optional.empty();
    }

    /** No batch of that name is in use. */
    private static Optional<Refusal> absent(Day day, String id) {
        var bowl = day.bowl(id);
        if (bowl.filter(one -> one.batch().isPresent() && one.mixedHere()).isEmpty())
            return Optional.of(new Refusal(
                    "BATCH_UNKNOWN",
                    "No mix for two bowls was made in bowl \"" + id + "\". Accepted: "
                            + Refusal.listed(day.liveBowls()
                                    .filter(one -> one.undivided() && one.mixedHere())
                                    .map(BowlState::bowl)
                                    .toList())
                            + "."));
        return bowl.get().live() ? Optional.empty() : Optional.of(NamedBowl.closed(day, bowl.get()));
    }

    /** Why the mix cannot be divided any more: one of its bowls is closed or at its chair. */
    private static Optional<Refusal> away(Day day, String id) {
        for (var each : day.bowl(id).orElseThrow().batch().orElseThrow().bowls()) {
            var bowl = day.bowl(each).orElseThrow();
            if (!bowl.live()) return Optional.of(NamedBowl.closed(day, bowl));
            if (bowl.handedOverAt().isPresent())
                return Optional.of(new Refusal(
                        "BOWL_AT_CHAIR",
                        "Bowl " + each + " is at its chair, so the mix cannot be divided anew. Finish it or bin it."));
        }
        return Optional.empty();
    }
}
