package stirtide.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Scale.AccuracyClass;
import stirtide.events.setup.Scale.Range;
import stirtide.events.setup.Scale.Weighing;
import stirtide.events.setup.Scale;
import stirtide.mixing.formula.FormulaAnswer;
import stirtide.mixing.formula.FormulaQuestion;
import stirtide.mixing.formula.FormulaSearch;

/** Microseconds of one formula search for bowls up to 500 g on a scale of 0.1 g; questions are drawn once, by seed. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class FormulaBenchmark {
    private static final int QUESTIONS = 1024;
    private static final int DIVISION_MILLIGRAMS = 100;
    private static final int LARGEST_BOWL_MILLIGRAMS = 500_000;

    /** What makes the search hard. */
    @Param({"EXACT_STRENGTH", "BLEND_OF_TWO", "NARROW_WINDOW", "NOTHING_WEIGHABLE"})
    public Kind kind = Kind.EXACT_STRENGTH;

    private final List<FormulaQuestion> questions = new ArrayList<>();
    private int next;

    /** Kinds of questions, by the width of the ratio window in thousandths and by the shelf. */
    public enum Kind {
        EXACT_STRENGTH(1000, 1001, 600),
        BLEND_OF_TWO(1000, 1001, 900),
        NARROW_WINDOW(10, 70, 900),
        NOTHING_WEIGHABLE(0, 8, 900);

        final int leastWidth;
        final int widthEnd;
        final int middleStrength;

        Kind(int leastWidth, int widthEnd, int middleStrength) {
            this.leastWidth = leastWidth;
            this.widthEnd = widthEnd;
            this.middleStrength = middleStrength;
        }
    }

    /** Draws the questions. */
    @Setup
    public void draw() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < QUESTIONS; i++) {
            questions.add(question(random));
        }
    }

    /** One search. */
    @Benchmark
    public FormulaAnswer find() {
        next = (next + 1) % QUESTIONS;
        return FormulaSearch.find(questions.get(next));
    }

    private FormulaQuestion question(SplittableRandom random) {
        int low = random.nextInt(1000, 2000);
        int high = low + random.nextInt(kind.leastWidth, kind.widthEnd);
        List<Developer> shelf = List.of(developer(300), developer(kind.middleStrength), developer(1200));
        int needed = random.nextInt(10_000, 450_000);
        int ratio = random.nextInt(low, high + 1);
        Weighing weighing = Weighing.values()[random.nextInt(2)];
        Scale scale = scale(random.nextBoolean(), weighing);
        return new FormulaQuestion(
                directions(low, high), "foil", 600, ratio, shelf, needed, 3_000, LARGEST_BOWL_MILLIGRAMS, scale);
    }

    private static Directions directions(int lowestRatio, int highestRatio) {
        TechniqueRule foil = new TechniqueRule("foil", false, lowestRatio, highestRatio, 900, 45);
        return new Directions(
                "chalk-dust",
                "Chalk Dust",
                "powder",
                40,
                3,
                false,
                List.of(foil),
                LARGEST_BOWL_MILLIGRAMS,
                new BigDecimal("21.00"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    private static Developer developer(int strengthHundredths) {
        BigDecimal price = new BigDecimal("8.00");
        return new Developer(
                "dev-" + strengthHundredths,
                "Developer " + strengthHundredths,
                strengthHundredths,
                1_000_000,
                price,
                Optional.empty());
    }

    private static Scale scale(boolean inService, Weighing weighing) {
        Range range = new Range(6_000 * DIVISION_MILLIGRAMS, DIVISION_MILLIGRAMS, DIVISION_MILLIGRAMS);
        return new Scale("bar-1", AccuracyClass.III, inService, weighing, 0, List.of(range));
    }
}
