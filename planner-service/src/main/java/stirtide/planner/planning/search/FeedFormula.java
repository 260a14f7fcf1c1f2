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
    private static final int UNKNOWN = -1;

    private final PlanQuestion question;
    private final Directions directions;
    private final String technique;
    private final int strengthHundredths;
    private final int ratioThousandths;
    private final Map<Long, FormulaAnswer> answers = new HashMap<>();
    private final int[] most;

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
        this.most = new int[question.bowlSizes().size() * question.scales().size()];
        Arrays.fill(most, UNKNOWN);
    }

    int mixMinutes() {
        return directions.mixMinutes();
    }

    int lifeMinutes() {
        return directions.workingLifeMinutes();
    }

    /** Weights for a need on a scale in a bowl; scale and size by their place in the question. */
    FormulaAnswer find(int needMilligrams, int size, int scale) {
        return answers.computeIfAbsent((long) needMilligrams << 20 | place(size, scale), key -> {
            BowlSize bowl = question.bowlSizes().get(size);
            return FormulaSearch.find(new FormulaQuestion(
                    directions,
                    technique,
                    strengthHundredths,
                    ratioThousandths,
                    question.developers(),
                    needMilligrams,
                    bowl.residueMilligrams(),
                    bowl.usableMilligrams(),
                    question.scales().get(scale)));
        });
    }

    /**
     * Most milligrams for which there are weights in a bowl of a size on a scale; 0 when there are none. What is not possible for some
     * grams is not possible for more: the mixes that are enough for more are some of those that are enough for less.
     */
    int mostMilligrams(int size, int scale) {
        int place = place(size, scale);
        if (most[place] == UNKNOWN) most[place] = search(size, scale);
        return most[place];
    }

    private int search(int size, int scale) {
        BowlSize bowl = question.bowlSizes().get(size);
        if (bowl.count() < 1) return 0;
        int least = 0;
        int refused = Math.max(0, bowl.usableMilligrams() - bowl.residueMilligrams()) + 1;
        if (refused > 1 && find(refused - 1, size, scale) instanceof FormulaAnswer.Weigh) return refused - 1;
        while (refused - least > 1) {
            int middle = (least + refused) >>> 1;
            if (find(middle, size, scale) instanceof FormulaAnswer.Weigh) least = middle;
            else refused = middle;
        }
        return least;
    }

    /** Most milligrams for which there are weights in some bowl on some scale. */
    int mostMilligrams() {
        int most = 0;
        for (int size = 0; size < question.bowlSizes().size(); size++)
            for (int scale = 0; scale < question.scales().size(); scale++)
                most = Math.max(most, mostMilligrams(size, scale));
        return most;
    }

    private int place(int size, int scale) {
        return size * question.scales().size() + scale;
    }
}
