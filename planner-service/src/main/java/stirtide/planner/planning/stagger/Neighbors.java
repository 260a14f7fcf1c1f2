package stirtide.planner.planning.stagger;

import java.util.Arrays;

/** Which runs meet which in time, and what each run would cost if it had the bar to itself. */
final class Neighbors {
    private static final int CLOSE_MINUTES = 10;

    private final StaggerScore[] alone;
    private final int[][] near;
    private final int[][] wide;

    Neighbors(MinuteGrid grid) {
        this.near = new int[grid.runs.length][];
        this.wide = new int[grid.runs.length][];
        this.alone = new StaggerScore[grid.runs.length];
        Occupancy occupancy = new Occupancy(grid, LevelWeights.strict());
        for (RunGrid run : grid.runs) {
            near[run.index] = meeting(grid, run, CLOSE_MINUTES, 0);
            wide[run.index] = meeting(grid, run, grid.longestLife, grid.problem.maxWaitMinutes());
            alone[run.index] =
                    occupancy.insert(run.index, 0) ? occupancy.remove(run.index).score : new StaggerScore(0, 0, 0, 0);
        }
    }

    private static int[] meeting(MinuteGrid grid, RunGrid a, int ahead, int behind) {
        int[] row = new int[grid.runs.length];
        int count = 0;
        for (RunGrid b : grid.runs) {
            boolean meet = a.start - ahead < b.finish + behind && b.start - ahead < a.finish + behind;
            if (a != b && meet) {
                row[count++] = b.index;
            }
        }
        return Arrays.copyOf(row, count);
    }

    /** Runs that are on at about the same time. */
    int[] of(int run) {
        return near[run];
    }

    /** Runs whose mixes may share a minute with this one's. */
    int[] wide(int run) {
        return wide[run];
    }

    long aloneCost(int run, LevelWeights weights) {
        return weights.of(alone[run]);
    }
}
