package stirtide.planner.planning.stagger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which paths the runs took over some rounds of prices; where they disagree a proof is best split. */
final class PathTally {
    /** Where to split: a run, a minute of it, the largest start of the first case, and whether the first case is likelier. */
    record Choice(int run, int minute, int start, boolean atMostFirst, long spread) {}

    private static final int KEPT = 24;

    private final MinuteGrid grid;
    private final List<List<RunPath>> seen = new ArrayList<>();

    PathTally(MinuteGrid grid) {
        this.grid = grid;
        for (int r = 0; r < grid.runs.length; r++) {
            seen.add(new ArrayList<>());
        }
    }

    void clear() {
        seen.forEach(List::clear);
    }

    void note(RunPath[] paths) {
        for (int r = 0; r < paths.length; r++) {
            List<RunPath> row = seen.get(r);
            if (row.size() == KEPT) {
                row.remove(0);
            }
            row.add(paths[r]);
        }
    }

    /** For each run whose noted paths disagree, the split on which they disagree most. */
    List<Choice> splits() {
        List<Choice> choices = new ArrayList<>();
        for (RunGrid run : grid.runs) {
            List<RunPath> paths = seen.get(run.index);
            Choice choice = allSame(paths) ? null : split(run, paths);
            if (choice != null) {
                choices.add(choice);
            }
        }
        choices.sort(Comparator.comparingLong(choice -> -choice.spread));
        return choices;
    }

    private static @Nullable Choice split(RunGrid run, List<RunPath> paths) {
        int[][] starts = covers(run, paths);
        Choice best = null;
        long most = 0;
        for (int t = 0; t < run.minutes; t++) {
            long spread = spread(starts[t]);
            if (spread > most) {
                most = spread;
                best = choice(run.index, t, starts[t], spread);
            }
        }
        return best;
    }

    private static boolean allSame(List<RunPath> paths) {
        for (RunPath path : paths) {
            if (path != paths.get(0) && !Arrays.equals(path.start, paths.get(0).start)) {
                return false;
            }
        }
        return true;
    }

    /** Starts of the bowls that feed each minute: [minute][noted path]. */
    private static int[][] covers(RunGrid run, List<RunPath> paths) {
        int[][] starts = new int[run.minutes][paths.size()];
        for (int i = 0; i < paths.size(); i++) {
            RunPath path = paths.get(i);
            for (int k = 0; k < path.start.length; k++) {
                for (int t = path.from[k]; t < path.to[k]; t++) {
                    starts[t][i] = path.start[k];
                }
            }
        }
        return starts;
    }

    /** Sum of distances from the mean, times the number of paths, a whole number. */
    private static long spread(int[] starts) {
        long sum = 0;
        for (int s : starts) {
            sum += s;
        }
        long spread = 0;
        for (int s : starts) {
            spread += Math.min(8L * starts.length, Math.abs((long) s * starts.length - sum));
        }
        return spread;
    }

    private static Choice choice(int run, int minute, int[] starts, long spread) {
        long sum = 0;
        int largest = Integer.MIN_VALUE;
        for (int s : starts) {
            sum += s;
            largest = Math.max(largest, s);
        }
        int cut = (int) Math.min(largest - 1, Math.floorDiv(sum, starts.length));
        int below = 0;
        for (int s : starts) {
            below += s <= cut ? 1 : 0;
        }
        return new Choice(run, minute, cut, 2 * below >= starts.length, spread);
    }
}
