package stirtide.mixing.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Scale.Weighing;

/**
 * Times {@link FormulaSearch#find} on 3,000 seeded questions for bowls up to 500 g at 0.1 g division, after warming up. Not
 * part of the build: the figures depend on the machine. Run with {@code planner-service/trials/run time-formula}.
 */
public final class FormulaTiming {
    private static final int QUESTIONS = 3_000;

    private FormulaTiming() {}

    /** Prints the middle, the 99th percentile and the worst time of each kind of question, in microseconds. */
    public static void main(String[] arguments) {
        for (String kind : List.of("exact strength", "blend of two", "narrow window", "nothing weighable")) {
            List<FormulaQuestion> questions = questions(kind);
            long sum = 0;
            for (FormulaQuestion question : questions) sum += cost(question);
            long[] nanos = new long[QUESTIONS];
            for (int i = 0; i < QUESTIONS; i++) nanos[i] = best(questions.get(i));
            Arrays.sort(nanos);
            if (sum == QUESTIONS && !kind.startsWith("nothing"))
                throw new IllegalStateException("no question of the kind \"" + kind + "\" has an answer");
            System.out.printf(
                    "%-18s middle %7.1f us, 99 of 100 %7.1f us, worst %7.1f us (check sum %d)%n",
                    kind,
                    nanos[QUESTIONS / 2] / 1e3,
                    nanos[QUESTIONS * 99 / 100] / 1e3,
                    nanos[QUESTIONS - 1] / 1e3,
                    sum);
        }
    }

    /** Best of sixty, so that a pause of the machine is not taken for the search. */
    private static long best(FormulaQuestion question) {
        long best = Long.MAX_VALUE;
        for (int i = 0; i < 60; i++) {
            long start = System.nanoTime();
            cost(question);
            best = Math.min(best, System.nanoTime() - start);
        }
        return best;
    }

    private static long cost(FormulaQuestion question) {
        return FormulaSearch.find(question) instanceof FormulaAnswer.Weigh weigh ? weigh.surplusMilligrams() : 1;
    }

    private static List<FormulaQuestion> questions(String kind) {
        Random random = new Random(5);
        List<FormulaQuestion> questions = new ArrayList<>();
        for (int i = 0; i < QUESTIONS; i++) questions.add(question(kind, random));
        return questions;
    }

    private static FormulaQuestion question(String kind, Random random) {
        boolean narrow = kind.startsWith("narrow") || kind.startsWith("nothing");
        int low = 1000 + random.nextInt(1000);
        int high = low + (kind.startsWith("nothing") ? random.nextInt(8) : narrow ? 10 + random.nextInt(60) : 1000);
        List<Developer> shelf =
                kind.startsWith("exact") ? FormulaSamples.shelf(300, 600, 1200) : FormulaSamples.shelf(300, 900, 1200);
        int need = 10_000 + random.nextInt(440_000);
        return new FormulaQuestion(
                FormulaSamples.directions(low, high, 900, false),
                "foil",
                600,
                low + random.nextInt(high - low + 1),
                shelf,
                need,
                3_000,
                500_000,
                FormulaSamples.scale(100, random.nextBoolean(), Weighing.values()[random.nextInt(2)]));
    }
}
