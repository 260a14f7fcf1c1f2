package stirtide.planner.stagger;

/** One run made ready for path searches: all minutes are counted from the origin of its {@link Grid}. */
final class RunGrid {
    final int index;
    final int start;
    final int minutes;
    final int mix;
    final int life;
    /** Mixing and hand-over: the least age at first use of a mix that the bar makes. */
    final int lead;
    /** Farthest minute of the run that one bowl begun at minute u reaches, u itself if none. */
    final int[] reach;
    /** Second-level cost of a bowl from u to v at [u][v - u - 1], or {@link BowlRule#NO_BOWL}. */
    final int[][] bowlCost;

    RunGrid(int index, Run run, Problem problem, int origin) {
        this.index = index;
        this.start = run.startMinute() - origin;
        this.minutes = run.minutes();
        this.mix = run.mixMinutes();
        this.life = run.workingLifeMinutes();
        this.lead = mix + problem.handOverMinutes();
        this.reach = new int[minutes];
        this.bowlCost = new int[minutes][];
        for (int u = 0; u < minutes; u++) {
            fill(run.bowls(), u, Math.max(lead, problem.maxWaitMinutes()));
        }
    }

    /** A bowl that comes late reaches farther than its life from its first use. */
    private void fill(BowlRule rule, int u, int latest) {
        int last = Math.min(minutes, u + life - lead + latest);
        int[] row = new int[last - u];
        reach[u] = u;
        for (int v = u + 1; v <= last; v++) {
            row[v - u - 1] = rule.cost(u, v);
            if (row[v - u - 1] >= 0) {
                reach[u] = v;
            }
        }
        bowlCost[u] = java.util.Arrays.copyOf(row, reach[u] - u);
    }
}
