package stirtide.planner.planning.floor;

import java.util.function.LongPredicate;
import java.util.random.RandomGenerator;

/** Plans a day. */
public final class FloorEngine {
    private final RuinAndRecreate search;
    private long steps;

    public FloorEngine(FloorDay day, RandomGenerator random) {
        this.search = new RuinAndRecreate(new FloorGrid(day), random);
        search.build();
        for (int i = 0; i < 2000 || !search.complete() && i < 100000; i++) {
            search.step(2000 * (1 - i / 2000.0));
        }
    }

    public FloorPlan plan() {
        return FloorPlan.of(search.bestPaths());
    }

    public long steps() {
        return steps;
    }

    /** Improves while the predicate grants more steps. */
    public FloorPlan improve(LongPredicate more) {
        long cycle = Long.getLong("cycle", 100_000);
        while (more.test(steps)) {
            search.loadBest();
            double hot = Double.parseDouble(System.getProperty("hot","8000"));
            double cold = 3;
            long done = 0;
            while (done < cycle && more.test(steps)) {
                double t = hot * Math.pow(cold / hot, (double) done / cycle);
                for (int i = 0; i < 100; i++) {
                    search.step(t);
                }
                done += 100;
                steps += 100;
            }
            cycle = cycle * Integer.getInteger("grow", 15) / 10;
        }
        return plan();
    }
}
