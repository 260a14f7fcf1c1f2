package stirtide.planner.planning.stagger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Moves all mixes of a plan at once without changing who mixes what in which order: the latest starts that the difference
 * constraints between them allow (longest paths, Bellman 1958), then the earliest changes of bowls that fit those starts.
 * Late starts and early changes both mean younger bowls; a single run could not move there alone.
 */
final class Retiming {
    private final MinuteGrid grid;
    private final RunPath[] paths;
    private final int[][] start;
    private final int[][] change;
    /** Mixes that follow one another mixed by one person: {run, bowl, next run, next bowl}. */
    private final List<int[]> pairs = new ArrayList<>();

    private Retiming(MinuteGrid grid, RunPath[] paths) {
        this.grid = grid;
        this.paths = paths;
        this.start = new int[paths.length][];
        this.change = new int[paths.length][];
    }

    /** The re-timed plan, or the plan itself where clients wait, mixers are lacking or nothing moves. */
    static RunPath[] latest(MinuteGrid grid, RunPath[] paths) {
        StaggerScore score = RunPath.sum(paths);
        int[][] people = score.lastResorts() + score.waitMinutes() > 0 ? null : Roster.assign(grid, paths);
        if (people == null) {
            return paths;
        }
        Retiming retiming = new Retiming(grid, paths);
        retiming.begin(people);
        boolean moving = true;
        while (moving) {
            moving = retiming.tighten();
        }
        return retiming.result();
    }

    private void begin(int[][] people) {
        List<int[]> mixes = new ArrayList<>();
        for (RunGrid run : grid.runs) {
            RunPath path = paths[run.index];
            start[run.index] = new int[path.start.length];
            change[run.index] = new int[path.start.length];
            Arrays.fill(change[run.index], run.minutes - 1);
            change[run.index][0] = 0;
            for (int k = 0; k < path.start.length; k++) {
                start[run.index][k] = lastInWindow(run, path.start[k], people[run.index][k]);
                mixes.add(new int[] {run.index, k, people[run.index][k]});
            }
        }
        mixes.sort(Comparator.comparingInt((int[] mix) -> mix[2]).thenComparingInt(mix -> paths[mix[0]].start[mix[1]]));
        for (int i = mixes.size() - 1; i > 0; i--) {
            int[] before = mixes.get(i - 1);
            int[] after = mixes.get(i);
            if (before[2] == after[2]) {
                pairs.add(new int[] {before[0], before[1], after[0], after[1]});
            }
        }
    }

    private int lastInWindow(RunGrid run, int s, int person) {
        int last = s;
        for (DutyWindow window : grid.problem.assistants().get(person).onDuty()) {
            int from = s + grid.origin;
            if (window.covers(from, from + run.mix)) {
                last = Math.max(last, window.toMinute() - run.mix - grid.origin);
            }
        }
        return last;
    }

    /** Lowers the upper bounds of starts and changes by every constraint once; true if one moved. */
    private boolean tighten() {
        boolean moved = false;
        for (RunGrid run : grid.runs) {
            int[] s = start[run.index];
            int[] b = change[run.index];
            for (int k = 0; k < s.length; k++) {
                if (k > 0) {
                    int most = Math.min(run.fedBy(s[k - 1] + run.life), run.reach[b[k - 1]]);
                    moved |= b[k] > most;
                    b[k] = Math.min(b[k], most);
                }
                int onTime = run.at[b[k]] - run.lead;
                moved |= s[k] > onTime;
                s[k] = Math.min(s[k], onTime);
            }
        }
        for (int[] pair : pairs) {
            int most = start[pair[2]][pair[3]] - grid.runs[pair[0]].mix;
            moved |= start[pair[0]][pair[1]] > most;
            start[pair[0]][pair[1]] = Math.min(start[pair[0]][pair[1]], most);
        }
        return moved;
    }

    private RunPath[] result() {
        RunPath[] made = new RunPath[paths.length];
        for (RunGrid run : grid.runs) {
            int[] s = start[run.index];
            int[] to = new int[s.length];
            int[] from = new int[s.length];
            to[s.length - 1] = run.minutes;
            for (int k = s.length - 1; k > 0; k--) {
                int b = Math.max(run.fedBy(s[k] + run.lead), 1);
                while (run.reach[b] < to[k]) {
                    b++;
                }
                from[k] = b;
                to[k - 1] = b;
            }
            if (!fed(run, from, to, s)) {
                return paths;
            }
            made[run.index] = new RunPath(run, from, to, s);
        }
        return made;
    }

    /** Holds the outcome against the run once more: a rule need not let a bowl stop short of where it reaches. */
    private static boolean fed(RunGrid run, int[] from, int[] to, int[] s) {
        for (int k = 0; k < s.length; k++) {
            boolean fits = from[k] < to[k]
                    && to[k] <= run.reach[from[k]]
                    && run.bowlCost[from[k]][to[k] - from[k] - 1] >= 0
                    && run.end[to[k]] - s[k] <= run.life
                    && s[k] + run.lead <= run.at[from[k]];
            if (!fits) {
                return false;
            }
        }
        return true;
    }
}
