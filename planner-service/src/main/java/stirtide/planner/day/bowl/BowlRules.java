package stirtide.planner.day.bowl;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.day.OverMixCause;
import stirtide.mixing.formula.NextPour;
import stirtide.mixing.text.AmountText;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.BowlWeights;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.CommandRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;

/**
 * What becomes of a bowl after it was weighed in. A bowl past its life, or outside the directions, is never handed over:
 * it can only be binned.
 */
public final class BowlRules {
    /** A rule for each command of this folder. */
    public static final List<CommandRule<?>> RULES = List.of(
            CommandRule.of(DayCommand.BeginBowl.class, BowlBeginRules::begin),
            CommandRule.of(DayCommand.WeighBowl.class, BowlWeighRules::weigh),
            CommandRule.of(DayCommand.HandOverBowl.class, BowlRules::handOver),
            CommandRule.of(DayCommand.FinishBowl.class, BowlRules::finish),
            CommandRule.of(DayCommand.BinBowl.class, BowlRules::bin));

    private BowlRules() {}

    private static Decision handOver(Day day, DayCommand.HandOverBowl command, CommandContext context) {
        return NamedBowl.live(day, command.bowl(), bowl -> handOverLive(day, bowl, context.now()));
    }

    private static Decision handOverLive(Day day, BowlState bowl, Instant now) {
        if (bowl.handedOverAt().isPresent())
            return Decision.refuse(
                    "BOWL_AT_CHAIR",
                    "Bowl " + bowl.bowl() + " is at its chair since "
                            + DayTime.of(day.opened()).clock(bowl.handedOverAt().get())
                            + ". Finish it or bin it.");
        if (!day.service(bowl.service()).orElseThrow().standing())
            return Decision.refuse(
                    "SERVICE_CANCELLED",
                    "Service " + bowl.service() + " is cancelled. Bin bowl " + bowl.bowl()
                            + " with the cause CLIENT_GONE; never use it for another client.");
        return Decision.acceptUnless(
                protection(day, bowl, now).or(() -> undivided(bowl)), () -> new DayEvent.BowlHandedOver(bowl.bowl()));
    }

    private static Optional<Refusal> undivided(BowlState bowl) {
        if (!bowl.undivided()) return Optional.empty();
        return Refusal.of(
                "BATCH_NOT_DIVIDED",
                "Bowls " + String.join(" and ", bowl.batch().orElseThrow().bowls())
                        + " are one mix that is not divided yet. Divide it by weight first, or bin the whole mix.");
    }

    /** Why a bowl must not go to a chair, if so. There is no way round these. */
    public static Optional<Refusal> protection(Day day, BowlState bowl, Instant now) {
        if (!now.isBefore(bowl.lifeEnds()))
            return Refusal.of(
                    "PAST_LIFE",
                    "Bowl " + bowl.bowl() + " is past its life since "
                            + DayTime.of(day.opened()).clock(bowl.lifeEnds())
                            + " and must not be applied. Bin it and begin a fresh one.");
        if (bowl.weighed().isEmpty())
            return Refusal.of(
                    "NOT_WEIGHED", "Bowl " + bowl.bowl() + " is not weighed in yet. Weigh it in, then hand it over.");
        var weighed = bowl.weighed().get();
        if (weighed.insideDirections()) return Optional.empty();
        var why = DirectionsCheck.complaint(day, bowl, weighed.lightenerMilligrams(), weighed.developerParts())
                .orElse("not permitted");
        return Refusal.of(
                "OUTSIDE_DIRECTIONS",
                "Bowl " + bowl.bowl() + " is outside the directions (" + why
                        + "). Correct the mix and weigh it in anew, or bin it with the cause WRONG_RATIO."
                        + correction(day, bowl, weighed));
    }

    private static String correction(Day day, BowlState bowl, BowlWeights weighed) {
        var next =
                NextPours.next(day, bowl, NextPours.of(bowl, weighed.lightenerMilligrams(), weighed.developerParts()));
        return next instanceof NextPour.Add || next instanceof NextPour.BinAndRestart
                ? " " + NextPours.sentence(day, next)
                : "";
    }

    /** The end of a bowl is recorded even after its life: what was applied before is a fact. */
    private static Decision finish(Day day, DayCommand.FinishBowl command) {
        return NamedBowl.live(
                day,
                command.bowl(),
                bowl -> bowl.handedOverAt().isPresent()
                        ? Decision.accept(new DayEvent.BowlFinished(bowl.bowl()))
                        : Decision.refuse(
                                "NOT_AT_CHAIR",
                                "Bowl " + bowl.bowl()
                                        + " was never at its chair, so it cannot be used up. Hand it over or bin it."));
    }

    /** A bowl that was never at its chair goes whole: all that was mixed is left. */
    private static Decision bin(Day day, DayCommand.BinBowl command, CommandContext context) {
        return NamedBowl.live(day, command.bowl(), bowl -> {
            int left = bowl.handedOverAt().isPresent() ? command.leftMilligrams() : bowl.mixedMilligrams();
            var wrong = undivided(bowl)
                    .or(() -> leftObjection(bowl, command.leftMilligrams()))
                    .or(() -> causeObjection(day, bowl, command.cause(), context.now()));
            return Decision.acceptUnless(wrong, () -> new DayEvent.BowlBinned(bowl.bowl(), left, command.cause()));
        });
    }

    private static Optional<Refusal> leftObjection(BowlState bowl, int leftMilligrams) {
        int mixed = bowl.mixedMilligrams();
        if (leftMilligrams >= 0 && leftMilligrams <= mixed) return Optional.empty();
        return Refusal.of(
                "LEFT_TOO_MUCH",
                "Bowl " + bowl.bowl() + " held " + AmountText.grams(mixed) + ". Accepted: 0 g to "
                        + AmountText.grams(mixed) + " left.");
    }

    /** Why a cause does not explain what is left of a bowl, if so. */
    public static Optional<Refusal> causeObjection(Day day, BowlState bowl, OverMixCause cause, Instant now) {
        if (cause == OverMixCause.PAST_LIFE && now.isBefore(bowl.lifeEnds()))
            return misfit(
                    bowl,
                    "its life ends at " + DayTime.of(day.opened()).clock(bowl.lifeEnds()),
                    "LEFT_OVER or SPILLED");
        boolean right = bowl.weighed().filter(BowlWeights::insideDirections).isPresent();
        if (cause == OverMixCause.WRONG_RATIO && right)
            return misfit(bowl, "its weights are inside the directions", "LEFT_OVER or SPILLED");
        var service = day.service(bowl.service()).orElseThrow();
        boolean here = service.standing() && service.startedAt().isPresent();
        if (cause == OverMixCause.CLIENT_GONE && here)
            return misfit(
                    bowl,
                    "service " + bowl.service() + " is under way",
                    "LEFT_OVER or SPILLED, or CLIENT_GONE once the service is cancelled");
        return Optional.empty();
    }

    private static Optional<Refusal> misfit(BowlState bowl, String why, String accepted) {
        return Refusal.of(
                "CAUSE_DOES_NOT_FIT",
                "That cause does not fit bowl " + bowl.bowl() + ": " + why + ". Accepted: " + accepted + ".");
    }
}
