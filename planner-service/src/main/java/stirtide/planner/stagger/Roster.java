package stirtide.planner.stagger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Gives mixes to people. Enough hands in every minute are not always enough: with several breaks a plan may need a person to
 * be two people. Mixes are given in order of their starts to the free person whose window ends first, with a bounded number
 * of steps back.
 */
final class Roster {
    private static final int STEPS_BACK = 20_000;

    private final Grid grid;
    private final List<int[]> mixes = new ArrayList<>();

    private Roster(Grid grid, Path[] paths) {
        this.grid = grid;
        for (int r = 0; r < paths.length; r++) {
            for (int k = 0; k < paths[r].start.length; k++) {
                if (paths[r].start[k] != Path.STYLIST) {
                    mixes.add(new int[] {r, k, paths[r].start[k] + grid.origin, grid.runs[r].mix});
                }
            }
        }
        mixes.sort(Comparator.comparingInt(mix -> mix[2]));
    }

    /** People by run and bowl, or null if none were found. */
    static int @Nullable [][] assign(Grid grid, Path[] paths) {
        Roster roster = new Roster(grid, paths);
        int[] people = roster.search();
        if (people == null) {
            return null;
        }
        int[][] byRun = new int[paths.length][];
        for (int r = 0; r < paths.length; r++) {
            byRun[r] = new int[paths[r].start.length];
            Arrays.fill(byRun[r], Mix.STYLIST);
        }
        for (int i = 0; i < people.length; i++) {
            byRun[roster.mixes.get(i)[0]][roster.mixes.get(i)[1]] = people[i];
        }
        return byRun;
    }

    private int @Nullable [] search() {
        int count = mixes.size();
        int people = grid.problem.assistants().size();
        int[][] choices = new int[count][];
        int[] next = new int[count];
        int[] given = new int[count];
        int[] freeFrom = new int[people];
        Arrays.fill(freeFrom, Integer.MIN_VALUE);
        int[] before = new int[count];
        int back = 0;
        int i = 0;
        while (i < count) {
            int[] mix = mixes.get(i);
            if (choices[i] == null) {
                choices[i] = eligible(mix, freeFrom);
                next[i] = 0;
            }
            if (next[i] < choices[i].length) {
                given[i] = choices[i][next[i]++];
                before[i] = freeFrom[given[i]];
                freeFrom[given[i]] = mix[2] + mix[3];
                i++;
            } else if (i == 0 || ++back > STEPS_BACK) {
                return null;
            } else {
                choices[i] = null;
                i--;
                freeFrom[given[i]] = before[i];
            }
        }
        return given;
    }

    private int[] eligible(int[] mix, int[] freeFrom) {
        List<Integer> able = new ArrayList<>();
        List<Assistant> people = grid.problem.assistants();
        for (int a = 0; a < people.size(); a++) {
            if (freeFrom[a] <= mix[2] && people.get(a).onDuty(mix[2], mix[2] + mix[3])) {
                able.add(a);
            }
        }
        able.sort(Comparator.comparingInt(a -> windowEnd(people.get(a), mix[2])));
        return able.stream().mapToInt(Integer::intValue).toArray();
    }

    private static int windowEnd(Assistant person, int minute) {
        int end = Integer.MAX_VALUE;
        for (Window window : person.onDuty()) {
            if (window.covers(minute, minute + 1)) {
                end = Math.min(end, window.toMinute());
            }
        }
        return end;
    }
}
