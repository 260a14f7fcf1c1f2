package stirtide.planner.check;

import java.util.List;
import stirtide.events.setup.Directions;
import stirtide.planner.planning.search.PlanQuestion;

/**
 * Which minutes of a part one bowl can serve: from first to last use no longer than its life less mixing and hand-over, however
 * late it comes, since a client who waits is later with all that follows; and no more grams than the roomiest size has room for.
 */
final class BowlServing {
    private final List<Integer> useMinutes;
    private final long[] upTo;
    private final int longestMinutes;
    private final int roomMilligrams;

    private BowlServing(ProofDay.Part part, int longestMinutes, int roomMilligrams) {
        this.useMinutes = part.useMinutes();
        this.longestMinutes = longestMinutes;
        this.roomMilligrams = roomMilligrams;
        this.upTo = new long[useMinutes.size() + 1];
        for (int i = 1; i < upTo.length; i++)
            upTo[i] = upTo[i - 1] + part.needMilligrams().get(i - 1);
    }

    static BowlServing of(PlanQuestion question, ProofDay.Part part, int roomMilligrams) {
        Directions directions =
                FirstFeed.directions(question, part.run().lightenerId()).orElseThrow();
        int longest = directions.workingLifeMinutes() - directions.mixMinutes() - question.handOverMinutes();
        return new BowlServing(part, longest, roomMilligrams);
    }

    /** Whether one bowl can serve the minutes of a part from one place to before another. */
    boolean serves(int from, int to) {
        return livesThrough(from, to) && holds(from, to);
    }

    private boolean livesThrough(int from, int to) {
        return useMinutes.get(to - 1) + 1 - useMinutes.get(from) <= longestMinutes;
    }

    private boolean holds(int from, int to) {
        return upTo[to] - upTo[from] <= roomMilligrams;
    }

    /**
     * Fewest bowls for all minutes, each as long as it can be (no other choice needs fewer); 0 where a minute alone is too much.
     *
     * @param life whether the life counts
     * @param room whether the room counts
     */
    int fewest(boolean life, boolean room) {
        int bowls = 0;
        for (int from = 0; from < useMinutes.size(); bowls++) {
            int to = from;
            while (to < useMinutes.size() && (!life || livesThrough(from, to + 1)) && (!room || holds(from, to + 1)))
                to++;
            if (to == from) return 0;
            from = to;
        }
        return bowls;
    }
}
