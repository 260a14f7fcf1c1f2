package stirtide.planner.planning.search;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Directions;
import stirtide.mixing.formula.FormulaAnswer;
import stirtide.mixing.formula.FormulaQuestion;
import stirtide.mixing.formula.FormulaSearch;

/** What is mixed for a feed, and the weights found for it so far: asking twice costs nothing. */
final class FeedFormula {
    private static final int NARROWING_STEPS = 6;

    private final PlanQuestion question;
    private final Directions directions;
    private final String technique;
    private final int strengthHundredths;
    private final int ratioThousandths;
    private final Map<Long, FormulaAnswer> answers = new HashMap<>();
    private final Map<Integer, Refused> refused = new HashMap<>();

    private final Map<Integer, Integer> weighed = new HashMap<>();
    private final int[] refusedFrom;

    private record Refused(int needMilligrams, FormulaAnswer.Impossible answer) {}

    FeedFormula(
            PlanQuestion question,
            Directions directions,
            String technique,
            int strengthHundredths,
            int ratioThousandths) {
        this.question = question;
        this.directions = directions;
        this.technique = technique;
        this.strengthHundredths = strengthHundredths;
        this.ratioThousandths = ratioThousandths;
        this.refusedFrom =
                new int[question.bowlSizes().size() * question.scales().size()];
        Arrays.fill(refusedFrom, Integer.MAX_VALUE);
    }

    int mixMinutes() {
        return directions.mixMinutes();
    }

    int lifeMinutes() {
        return directions.workingLifeMinutes();
    }

    /** Weights for a need on a scale in a bowl; scale and size by their place in the question. */
    FormulaAnswer find(int needMilligrams, int size, int scale) {
        long key = (long) needMilligrams << 20 | place(size, scale);
        FormulaAnswer known = answers.get(key);
        if (known != null) return known;
        Refused less = refused.get(place(size, scale));
        if (less != null && less.needMilligrams <= needMilligrams) return less.answer;
        BowlSize bowl = question.bowlSizes().get(size);
        FormulaAnswer answer = FormulaSearch.find(new FormulaQuestion(
                directions,
                technique,
                strengthHundredths,
                ratioThousandths,
                question.developers(),
                needMilligrams,
                bowl.residueMilligrams(),
                bowl.usableMilligrams(),
                question.scales().get(scale)));
        answers.put(key, answer);
        if (answer instanceof FormulaAnswer.Impossible impossible)
            refuse(place(size, scale), new Refused(needMilligrams, impossible));
        else weighed.merge(place(size, scale), needMilligrams, Math::max);
        return answer;
    }

    /**
     * Whether it is known already that there are no weights; nothing is computed. What is not possible for some grams is
     * not possible for more: the mixes that are enough for more are some of those that are enough for less.
     */
    boolean knownImpossible(int needMilligrams, int size, int scale) {
        return needMilligrams >= refusedFrom[place(size, scale)];
    }

    /** Whether all that is known to be impossible on one scale is known to be so on another. */
    boolean knownImpossibleNoEarlier(int scale, int other) {
        for (int size = 0; size < question.bowlSizes().size(); size++)
            if (refusedFrom[place(size, scale)] < refusedFrom[place(size, other)]) return false;
        return true;
    }

    /** Whether there are weights; asks only where monotony does not decide it. */
    boolean possible(int needMilligrams, int size, int scale) {
        if (knownImpossible(needMilligrams, size, scale)) return false;
        if (needMilligrams <= weighed.getOrDefault(place(size, scale), 0)) return true;
        return find(needMilligrams, size, scale) instanceof FormulaAnswer.Weigh;
    }

    /** After a refusal: halves the unknown grams below it a few times, so that not every gram has to be asked for. */
    void narrow(int refusedMilligrams, int size, int scale) {
        int possible = weighed.getOrDefault(place(size, scale), 0);
        int refusedFrom = refusedMilligrams;
        for (int step = 0; step < NARROWING_STEPS && refusedFrom - possible > 1; step++) {
            int middle = (possible + refusedFrom) >>> 1;
            if (possible(middle, size, scale)) possible = middle;
            else refusedFrom = middle;
        }
    }

    private void refuse(int place, Refused answer) {
        refused.put(place, answer);
        refusedFrom[place] = answer.needMilligrams;
    }

    private int place(int size, int scale) {
        return size * question.scales().size() + scale;
    }
}
