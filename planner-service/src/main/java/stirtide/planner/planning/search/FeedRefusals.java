package stirtide.planner.planning.search;

import java.util.Optional;
import stirtide.mixing.formula.FormulaAnswer;
import stirtide.planner.planning.search.FeedSegment.Refusal;

/** Finds out beforehand whether anything may be mixed for a feed at all. */
final class FeedRefusals {
    private FeedRefusals() {}

    /**
     * Asks for the hungriest minute alone in every bowl on every scale. Weights that are enough for it are enough for
     * every other single minute, so a feed that passes can be fed minute by minute if need be.
     */
    static Optional<Refusal> of(PlanQuestion question, FeedFormula recipe, int mostInOneMinute) {
        if (mostInOneMinute == 0) return Optional.empty();
        if (question.scales().isEmpty() || question.bowlSizes().isEmpty())
            return Optional.of(new Refusal("There is no scale or no bowl at the bar.", "One of each."));
        if (question.bowlSizes().stream().allMatch(size -> size.count() < 1))
            return Optional.of(new Refusal("The bar owns no bowl.", "One bowl at least."));
        if (recipe.lifeMinutes() <= recipe.mixMinutes() + question.handOverMinutes())
            return Optional.of(new Refusal(
                    "The working life of " + recipe.lifeMinutes() + " minutes is over before the bowl is at the chair.",
                    "Directions with a longer working life, or a shorter way to the chair."));
        Optional<Refusal> refusal = Optional.empty();
        int largest = 0;
        for (int size = 0; size < question.bowlSizes().size(); size++) {
            if (question.bowlSizes().get(size).count() < 1) continue;
            for (int scale = 0; scale < question.scales().size(); scale++) {
                if (!(recipe.find(mostInOneMinute, size, scale) instanceof FormulaAnswer.Impossible impossible))
                    return Optional.empty();
                if (question.bowlSizes().get(size).usableMilligrams() <= largest) continue;
                largest = question.bowlSizes().get(size).usableMilligrams();
                refusal = Optional.of(new Refusal(impossible.reason(), impossible.whatHelps()));
            }
        }
        return refusal.or(() -> Optional.of(new Refusal("No bowl holds anything.", "A bowl with a usable fill.")));
    }
}
