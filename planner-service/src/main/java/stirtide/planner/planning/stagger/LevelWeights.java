package stirtide.planner.planning.stagger;

/**
 * What one unit of each level costs in a path search; all 0 or more.
 *
 * @param lastResort a bowl mixed by the stylist, {@link CostModel#NEVER} to forbid it
 * @param delay a minute of wait
 * @param mix a unit of the second level
 * @param age a minute of age
 */
record LevelWeights(long lastResort, long delay, long mix, long age) {
    /** Parts of one minute of age in the searches; ties are broken within them. */
    static final long AGE = 64;

    /** Weights that keep the levels apart on any day. */
    static LevelWeights strict() {
        return new LevelWeights(1L << 52, 1L << 38, 1L << 22, AGE);
    }

    long of(StaggerScore score) {
        return (score.lastResorts() == 0 ? 0 : lastResort * score.lastResorts())
                + delay * score.waitMinutes()
                + mix * score.mixCost()
                + age * score.ageMinutes();
    }
}
