package stirtide.planner.planning.stagger;

/** The bowls of one run: bowl k feeds [from[k], to[k]) and is mixed from start[k], {@link #STYLIST} for the last resort. */
final class RunPath {
    static final int STYLIST = Integer.MIN_VALUE;

    final int[] from;
    final int[] to;
    final int[] start;
    final StaggerScore score;

    RunPath(RunGrid run, int[] from, int[] to, int[] start) {
        this.from = from;
        this.to = to;
        this.start = start;
        long lastResorts = 0;
        long wait = 0;
        long mix = 0;
        long age = 0;
        for (int k = 0; k < from.length; k++) {
            mix += run.bowlCost[from[k]][to[k] - from[k] - 1];
            if (start[k] == STYLIST) {
                lastResorts++;
                age += run.mix;
            } else {
                int lead = run.at[from[k]] - start[k];
                wait += Math.max(0, run.lead - lead);
                age += Math.max(run.lead, lead);
            }
        }
        this.score = new StaggerScore(lastResorts, wait, mix, age);
    }

    /** The objective of a plan of these paths. */
    static StaggerScore sum(RunPath[] paths) {
        long lastResorts = 0;
        long wait = 0;
        long mix = 0;
        long age = 0;
        for (RunPath path : paths) {
            lastResorts += path.score.lastResorts();
            wait += path.score.waitMinutes();
            mix += path.score.mixCost();
            age += path.score.ageMinutes();
        }
        return new StaggerScore(lastResorts, wait, mix, age);
    }
}
