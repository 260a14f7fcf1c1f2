package stirtide.planner.check.stagger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stirtide.planner.planning.stagger.MinutePrices;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/**
 * Follows all plans minute by minute and checks whether every one of them comes to cost more than is allowed. A state is how
 * far each run is fed, then the minutes at which mixers at work are free again. That the bowls of a run are mixed in the order
 * of their use leaves out nothing better: of two that are not, the starts can be exchanged.
 */
final class SweepCheck {
    /** More states in one minute are not followed: the certificate then counts as not confirmed. */
    private static final int MOST_STATES = 200_000;

    private record State(int[] values) {
        @Override
        public boolean equals(Object other) {
            return other instanceof State state && Arrays.equals(values, state.values);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(values);
        }
    }

    private final MixPrices prices;
    private final MinutePrices minutePrices;
    private final int[] mixers;
    private final int from;
    private final MixerStates workers;
    private final List<SweptRun> runs = new ArrayList<>();
    private long mostCost;
    private boolean survived;

    /**
     * @param mixers how many can mix in each minute from {@code from}
     * @param workers who may mix
     */
    SweepCheck(
            StaggerProblem problem,
            MixPrices prices,
            MinutePrices minutePrices,
            int[] mixers,
            int from,
            MixerStates workers) {
        this.prices = prices;
        this.minutePrices = minutePrices;
        this.mixers = mixers;
        this.from = from;
        this.workers = workers;
        for (StaggerRun run : problem.runs()) {
            runs.add(new SweptRun(problem, run, prices));
        }
    }

    /** Whether no plan costs as little as {@code most}. */
    boolean dies(long most) {
        mostCost = most;
        if (runs.stream().anyMatch(run -> !run.lawful())) {
            return false;
        }
        long mixersToCome = 0;
        for (int t = from; t < from + mixers.length; t++) {
            mixersToCome += (long) mixers[t - from] * minutePrices.at(t);
        }
        Map<State, Long> alive = new HashMap<>();
        alive.put(new State(workers.idle()), 0L);
        for (int t = from; t < from + mixers.length && !alive.isEmpty(); t++) {
            long price = minutePrices.at(t);
            long then = mixersToCome - mixers[t - from] * price;
            Map<State, Long> next = new HashMap<>();
            for (Map.Entry<State, Long> entry : alive.entrySet()) {
                follow(entry.getKey().values(), entry.getValue(), 0, t, mixersToCome, price, next);
            }
            if (survived || next.size() > MOST_STATES) {
                return false;
            }
            mixersToCome = then;
            alive = next;
        }
        return alive.isEmpty();
    }

    /** All that runs from the given place on may start at t. */
    private void follow(
            int[] state, long cost, int place, int t, long mixersToCome, long price, Map<State, Long> next) {
        if (!withinReach(state, cost, t, mixersToCome)) {
            return;
        }
        pass(state, cost, t, mixersToCome, price, next);
        for (int r = place; r < runs.size(); r++) {
            SweptRun run = runs.get(r);
            for (int by = 0; by < workers.choices() && state[r] < run.minutes() && run.mayStart(t); by++) {
                if (!workers.may(state, by, t, run.mixMinutes())) {
                    continue;
                }
                for (int use = run.firstUse(t, state[r]); use <= state[r]; use++) {
                    int reach = run.reach(t, use);
                    if (reach > state[r] && run.waits(t, use) <= prices.longestWait()) {
                        int[] made = workers.begin(state, by, t + run.mixMinutes());
                        made[r] = reach;
                        follow(made, cost + run.cost(t, use), r, t, mixersToCome, price, next);
                    }
                }
            }
        }
    }

    private boolean withinReach(int[] state, long cost, int t, long mixersToCome) {
        long least = cost - mixersToCome;
        boolean fed = true;
        for (int r = 0; r < runs.size(); r++) {
            long rest = runs.get(r).rest(t, state[r]);
            fed &= state[r] == runs.get(r).minutes();
            least = Math.min(RunCase.NONE, least + rest);
        }
        boolean within = least <= mostCost;
        survived |= fed && within;
        return within && !fed;
    }

    /** The state a minute later; what was paid for this minute is now known, so that it is no longer set against the mixers. */
    private void pass(int[] state, long cost, int t, long mixersToCome, long price, Map<State, Long> next) {
        int[] made = workers.pass(state, t + 1);
        long then = cost - price * workers.atWork(state, t);
        if (withinReach(made, then, t + 1, mixersToCome - mixers[t - from] * price)) {
            next.merge(new State(made), then, Math::min);
        }
    }
}
