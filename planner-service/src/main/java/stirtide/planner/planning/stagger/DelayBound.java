package stirtide.planner.planning.stagger;

import java.util.List;

/**
 * A bound on how late services become, where a late bowl makes all that follows in its service later: of the bowls of a
 * service only the longest wait counts, and the others may be as late for nothing. Prices on minutes of mixing as in
 * {@link PriceBound}; for each service the cheapest of "so late, and the cheapest bowls that are no later", less the price of
 * all mixers.
 */
public final class DelayBound {
    /** Price units of one minute of delay. */
    public static final int MINUTE = (int) PriceBound.SCALE;

    private static final int PARTS = 256;
    private static final int PATIENCE = 6;
    private static final long LARGEST_STEP = 1000;
    private static final long SMALLEST_STEP = 4;
    private static final LevelWeights NO_WEIGHTS = new LevelWeights(CostModel.NEVER, 0, 0, 0);

    private final MinuteGrid grid;
    private final List<List<Integer>> services;
    private final CostModel costs;
    private final RunPathSearch search;
    private final long[] price;
    private final int[] use;
    private final long[] direction;
    private long[] bestPrice;
    private long best = Long.MIN_VALUE;

    private DelayBound(StaggerProblem problem, List<List<Integer>> services) {
        this.grid = new MinuteGrid(problem);
        this.services = services;
        this.costs = new CostModel(grid, NO_WEIGHTS, 0);
        this.search = new RunPathSearch(grid);
        this.price = new long[grid.horizon];
        this.bestPrice = price.clone();
        this.direction = new long[grid.horizon];
        this.use = new int[grid.horizon];
    }

    /**
     * Looks for prices that prove delays.
     *
     * @param services places of the runs of each service
     * @param planned minutes of delay of a known plan; prices that prove as much end the search
     * @param rounds rounds of work, none for what the services need one by one
     */
    public static MinutePrices prices(
            StaggerProblem problem, List<List<Integer>> services, int planned, SearchRounds rounds) {
        if (rounds.granted() == 0) {
            return MinutePrices.of(0);
        }
        DelayBound bound = new DelayBound(problem, services);
        long target = (long) (planned - 1) * MINUTE + 1;
        long step = LARGEST_STEP;
        int failures = 0;
        for (int round = 0; rounds.another(round - 1) && bound.best < target && step > SMALLEST_STEP; round++) {
            long value = bound.evaluate();
            if (value > bound.best) {
                bound.best = value;
                bound.bestPrice = bound.price.clone();
                failures = 0;
            } else if (++failures >= PATIENCE) {
                step = step * 7 / 10;
                failures = 0;
            }
            bound.move((target + MINUTE / 4 - value) * step / LARGEST_STEP);
        }
        int[] prices = new int[bound.bestPrice.length];
        for (int t = 0; t < prices.length; t++) {
            prices[t] = (int) bound.bestPrice[t];
        }
        return MinutePrices.of(bound.grid.origin, prices);
    }

    private long evaluate() {
        costs.load(price);
        java.util.Arrays.fill(use, 0);
        long value = 0;
        for (List<Integer> service : services) {
            value += cheapest(service);
        }
        for (int t = 0; t < grid.horizon; t++) {
            value -= price[t] * grid.capacity[t];
        }
        return value;
    }

    /** Least price of a service over all delays; counts the mixes of the cheapest. */
    private long cheapest(List<Integer> service) {
        long least = CostModel.NEVER;
        RunPath[] paths = new RunPath[service.size()];
        for (int delay = 0; delay <= grid.problem.maxWaitMinutes() && (long) delay * MINUTE < least; delay++) {
            costs.maxWait = delay;
            RunPath[] tried = new RunPath[service.size()];
            long cost = (long) delay * MINUTE;
            for (int i = 0; i < tried.length && cost < least; i++) {
                RunGrid run = grid.runs[service.get(i)];
                long own = search.cost(run, costs, null);
                cost = own >= CostModel.NEVER ? CostModel.NEVER : cost + own;
                if (own < CostModel.NEVER) {
                    tried[i] = search.path(run);
                }
            }
            if (cost < least) {
                least = cost;
                paths = tried;
            }
        }
        for (int i = 0; i < paths.length && least < CostModel.NEVER; i++) {
            count(grid.runs[service.get(i)], paths[i]);
        }
        return least;
    }

    private void count(RunGrid run, RunPath path) {
        for (int s : path.start) {
            for (int t = s; t < s + run.mix; t++) {
                use[t]++;
            }
        }
    }

    /** Steps toward the overfull minutes, half the way of the step before kept. */
    private void move(long length) {
        long norm = 0;
        for (int t = 0; t < use.length; t++) {
            long over = over(t);
            direction[t] = PARTS * over + direction[t] / 2;
            norm += over * over;
        }
        for (int t = 0; t < use.length && norm > 0; t++) {
            long by = direction[t] * length / norm / PARTS;
            price[t] = Math.min(Integer.MAX_VALUE / 4, Math.max(0, price[t] + by));
        }
    }

    private long over(int t) {
        long over = (long) use[t] - grid.capacity[t];
        return over < 0 && price[t] == 0 ? 0 : over;
    }
}
