package stirtide.planner.check;

import java.util.List;
import stirtide.events.setup.Directions;
import stirtide.planner.planning.search.PlanQuestion;

/**
 * Which minutes of a part one bowl can serve: from first to last use no longer than its life less mixing and hand-over, however
 * late it comes, since a client who waits is later with all that follows; and no more grams than the largest size holds.
 */
final class BowlServing {
    private final List<Integer> useMinutes;
    private final long[] upTo;
    private final int longestMinutes;
    private final int capacityMilligrams;

    BowlServing(PlanQuestion question, ProofDay.Part part, int capacityMilligrams) {
        Directions directions =
                FirstFeed.directions(question, part.run().lightenerId()).orElseThrow();
        this.useMinutes = part.useMinutes();
        this.longestMinutes = directions.workingLifeMinutes() - directions.mixMinutes() - question.handOverMinutes();
        this.capacityMilligrams = capacityMilligrams;
        this.upTo = new long[useMinutes.size() + 1];
        for (int i = 1; i < upTo.length; i++)
            upTo[i] = upTo[i - 1] + part.needMilligrams().get(i - 1);
    }

    /** Whether one bowl can serve the minutes of a part from one place to before another. */
    boolean serves(int from, int to) {
        return livesThrough(from, to) && holds(from, to);
    }

    private boolean livesThrough(int from, int to) {
        return useMinutes.get(to - 1) + 1 - useMinutes.get(from) <= longestMinutes;
    }

    private boolean holds(int from, int to) {
        return upTo[to] - upTo[from] <= capacityMilligrams;
    }

    /**
     * Fewest bowls for all minutes, each as long as it can be (no other choice needs fewer); 0 where a minute alone is too much.
     *
     * @param life whether the life counts
     * @param capacity whether the capacity counts
     */
    int fewest(boolean life, boolean capacity) {
        int bowls = 0;
        for (int from = 0; from < useMinutes.size(); bowls++) {
            int to = from;
            while (to < useMinutes.size()
                    && (!life || livesThrough(from, to + 1))
                    && (!capacity || holds(from, to + 1))) to++;
            if (to == from) return 0;
            from = to;
        }
        return bowls;
    }
}
