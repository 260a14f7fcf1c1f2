package stirtide.planner.stagger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Independent judge: lists every way to feed each run, best first, and tries all combinations that could still win, with every
 * way to give the mixes to people. Shares no code with the engine.
 */
final class ExhaustiveSearch {
    private record Bowl(int run, int from, int to, int start) {}

    private record Way(List<Bowl> bowls, long[] cost) {}

    private final Problem problem;
    private final List<List<Way>> ways = new ArrayList<>();
    private long[] best;

    private ExhaustiveSearch(Problem problem) {
        this.problem = problem;
    }

    /** Best wait, bowls and age, empty if nobody can make the day work without a last resort. */
    static Optional<Score> best(Problem problem) {
        ExhaustiveSearch search = new ExhaustiveSearch(problem);
        for (int r = 0; r < problem.runs().size(); r++) {
            List<Way> own = new ArrayList<>();
            search.list(r, problem.runs().get(r).startMinute(), new ArrayList<>(), own);
            own.sort((a, b) -> compare(a.cost, b.cost));
            search.ways.add(own);
        }
        search.combine(0, new long[3], new ArrayList<>());
        return Optional.ofNullable(search.best).map(cost -> new Score(0, cost[0], cost[1], cost[2]));
    }

    private void list(int r, int from, List<Bowl> soFar, List<Way> own) {
        Run run = problem.runs().get(r);
        if (from == run.endMinute()) {
            own.add(new Way(List.copyOf(soFar), cost(soFar)));
            return;
        }
        for (int to = from + 1; to <= run.endMinute(); to++) {
            if (run.bowls().cost(from - run.startMinute(), to - run.startMinute()) < 0) {
                continue;
            }
            int last = from - run.mixMinutes() - problem.handOverMinutes() + problem.maxWaitMinutes();
            for (int start = to - run.workingLifeMinutes(); start <= last; start++) {
                if (someoneOnDuty(start, run.mixMinutes())) {
                    soFar.add(new Bowl(r, from, to, start));
                    list(r, to, soFar, own);
                    soFar.remove(soFar.size() - 1);
                }
            }
        }
    }

    private boolean someoneOnDuty(int start, int mix) {
        return problem.assistants().stream().anyMatch(a -> a.onDuty(start, start + mix));
    }

    private long[] cost(List<Bowl> bowls) {
        long[] cost = new long[3];
        for (Bowl bowl : bowls) {
            int lead = problem.runs().get(bowl.run).mixMinutes() + problem.handOverMinutes();
            cost[0] += Math.max(0, bowl.start + lead - bowl.from);
            cost[1] += 1;
            cost[2] += Math.max(lead, bowl.from - bowl.start);
        }
        return cost;
    }

    private void combine(int r, long[] cost, List<Bowl> chosen) {
        if (r == ways.size()) {
            if (best == null || compare(cost, best) < 0) {
                best = cost;
            }
            return;
        }
        for (Way way : ways.get(r)) {
            if (!mayWin(r, add(cost, way.cost))) {
                return;
            }
            List<Bowl> with = new ArrayList<>(chosen);
            with.addAll(way.bowls);
            with.sort(Comparator.comparingInt(Bowl::start));
            if (workable(with, 0, new int[problem.assistants().size()])) {
                combine(r + 1, add(cost, way.cost), with);
            }
        }
    }

    private boolean mayWin(int r, long[] cost) {
        long[] least = cost;
        for (int later = r + 1; later < ways.size(); later++) {
            if (ways.get(later).isEmpty()) {
                return false;
            }
            least = add(least, ways.get(later).get(0).cost);
        }
        return best == null || compare(least, best) < 0;
    }

    private boolean workable(List<Bowl> mixes, int i, int[] freeFrom) {
        if (i == mixes.size()) {
            return true;
        }
        Bowl mix = mixes.get(i);
        int end = mix.start + problem.runs().get(mix.run).mixMinutes();
        int busy = 0;
        for (Bowl other : mixes.subList(0, i)) {
            busy += mix.start < other.start + problem.runs().get(other.run).mixMinutes() ? 1 : 0;
        }
        for (int a = 0; a < freeFrom.length && busy < problem.mixesAtOnce(); a++) {
            int before = freeFrom[a];
            if (mix.start >= before && problem.assistants().get(a).onDuty(mix.start, end)) {
                freeFrom[a] = end;
                if (workable(mixes, i + 1, freeFrom)) {
                    freeFrom[a] = before;
                    return true;
                }
                freeFrom[a] = before;
            }
        }
        return false;
    }

    private static long[] add(long[] a, long[] b) {
        return new long[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
    }

    private static int compare(long[] a, long[] b) {
        for (int i = 0; i < a.length; i++) {
            if (a[i] != b[i]) {
                return Long.compare(a[i], b[i]);
            }
        }
        return 0;
    }
}
