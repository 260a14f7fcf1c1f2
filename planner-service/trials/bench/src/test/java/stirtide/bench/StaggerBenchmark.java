package stirtide.bench;

import java.nio.file.Path;
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
import stirtide.planner.planning.stagger.StaggerEngine;
import stirtide.planner.planning.stagger.StaggerPlan;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.cli.DayFile;

/** Milliseconds to a first complete plan and to a plan proven best on all levels, warm. Run from the top of the checkout. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class StaggerBenchmark {
    private static final Path DAYS = Path.of("planner-service/src/test/resources/stagger-bench");

    /** Name of a day; those not given here take longer to be proven. */
    @Param({"S8A1-nat-1", "S20A1-nat-1", "S40A2-nat-1", "S80A3-nat-1", "S80A3-40-1"})
    public String day = "";

    private StaggerProblem problem = new StaggerProblem(0, 0, java.util.List.of(), java.util.List.of(), 1);

    /** Reads the day. */
    @Setup
    public void read() throws DayFile.Refused {
        problem = DayFile.read(DAYS.resolve(day + ".json")).problem();
    }

    /** From the problem to the first plan. */
    @Benchmark
    public StaggerPlan firstPlan() {
        return new StaggerEngine(problem, new SplittableRandom(1)).plan();
    }

    /** From the problem to the proof. */
    @Benchmark
    public StaggerPlan provenPlan() {
        StaggerPlan plan = new StaggerEngine(problem, new SplittableRandom(1)).improve(rounds -> rounds < 4000);
        if (plan.provenLevels() < 3) {
            throw new IllegalStateException(day + " was not proven in 4000 rounds");
        }
        return plan;
    }
}
