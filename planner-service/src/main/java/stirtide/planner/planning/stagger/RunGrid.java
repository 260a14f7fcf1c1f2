package stirtide.planner.planning.stagger;

import java.util.Arrays;

/** One run made ready for path searches: all minutes are counted from the origin of its {@link MinuteGrid}. */
final class RunGrid {
    final int index;
    final int start;
    /** When the last minute is over. */
    final int finish;
    /** Minutes of application, pauses left out. */
    final int minutes;
    /** When each minute of application begins. */
    final int[] at;
    /** When the first so many minutes of application are over; {@link #start} for none. */
    final int[] end;

    private final int[] fedBy;
    final int mix;
    final int life;
    /** Mixing and hand-over: the least age at first use of a mix that the bar makes. */
    final int lead;
    /** Farthest minute of the run that one bowl begun at minute u reaches, u itself if none. */
    final int[] reach;
    /** Second-level cost of a bowl from u to v at [u][v - u - 1], or {@link BowlRule#NO_BOWL}. */
    final int[][] bowlCost;

    RunGrid(int index, StaggerRun run, StaggerProblem problem, int origin) {
        this.index = index;
        this.start = run.startMinute() - origin;
        this.finish = run.endMinute() - origin;
        this.minutes = run.minutes();
        this.at = new int[minutes];
        this.end = new int[minutes + 1];
        this.fedBy = new int[finish - start + 1];
        times(run, origin);
        this.mix = run.mixMinutes();
        this.life = run.workingLifeMinutes();
        this.lead = mix + problem.handOverMinutes();
        this.reach = new int[minutes];
        this.bowlCost = new int[minutes][];
        for (int u = 0; u < minutes; u++) {
            fill(run.bowls(), u, Math.max(lead, problem.maxWaitMinutes()));
        }
    }

    private void times(StaggerRun run, int origin) {
        end[0] = start;
        for (int u = 0; u < minutes; u++) {
            at[u] = run.useOf(u) - origin;
            end[u + 1] = at[u] + 1;
            Arrays.fill(fedBy, at[u] + 1 - start, fedBy.length, u + 1);
        }
    }

    /** How many minutes of application are over at a time; the next one begins then or later. */
    int fedBy(int time) {
        return time <= start ? 0 : time >= finish ? minutes : fedBy[time - start];
    }

    /** A bowl that comes late reaches farther than its life from its first use. */
    private void fill(BowlRule rule, int u, int latest) {
        int last = fedBy(at[u] + life - lead + latest);
        int[] row = new int[last - u];
        reach[u] = u;
        for (int v = u + 1; v <= last; v++) {
            row[v - u - 1] = rule.cost(u, v);
            if (row[v - u - 1] >= 0) {
                reach[u] = v;
            }
        }
        bowlCost[u] = Arrays.copyOf(row, reach[u] - u);
    }
}
