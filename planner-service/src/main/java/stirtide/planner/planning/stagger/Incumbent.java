package stirtide.planner.planning.stagger;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The best plan so far that real people can carry out. */
final class Incumbent {
    private final MinuteGrid grid;
    private RunPath @Nullable [] paths;
    private int[][] people = new int[0][];
    private @Nullable StaggerScore score;

    Incumbent(MinuteGrid grid) {
        this.grid = grid;
    }

    @Nullable
    StaggerScore score() {
        return score;
    }

    RunPath @Nullable [] paths() {
        return paths == null ? null : paths.clone();
    }

    /** Keeps the paths if they beat the best so far and people can be found for them. */
    boolean offer(RunPath[] offered) {
        StaggerScore offeredScore = RunPath.sum(offered);
        if (score != null && offeredScore.compareTo(score) >= 0) {
            return false;
        }
        int[][] found = fits(offered) ? Roster.assign(grid, offered) : null;
        if (found == null) {
            return false;
        }
        paths = offered.clone();
        people = found;
        score = offeredScore;
        return true;
    }

    private boolean fits(RunPath[] offered) {
        int[] use = new int[grid.horizon];
        boolean fits = true;
        for (RunGrid run : grid.runs) {
            for (int s : offered[run.index].start) {
                for (int t = s; s != RunPath.STYLIST && t < s + run.mix; t++) {
                    fits &= ++use[t] <= grid.capacity[t];
                }
            }
        }
        return fits;
    }

    List<StaggerMix> mixes() {
        List<StaggerMix> mixes = new ArrayList<>();
        for (int r = 0; paths != null && r < paths.length; r++) {
            RunGrid run = grid.runs[r];
            RunPath path = paths[r];
            for (int k = 0; k < path.start.length; k++) {
                int from = run.at[path.from[k]] + grid.origin;
                int mixStart = path.start[k] == RunPath.STYLIST ? from - run.mix : path.start[k] + grid.origin;
                mixes.add(new StaggerMix(r, from, run.end[path.to[k]] + grid.origin, mixStart, people[r][k]));
            }
        }
        return mixes;
    }
}
