package stirtide.planner.planning.stagger;

/**
 * What one unit of each level costs in a path search; all 0 or more.
 *
 * @param lastResort a bowl mixed by the stylist, {@link RunPathSearch#NEVER} to forbid it
 * @param delay a minute of wait
 * @param mix a unit of the second level
 * @param age a minute of age
 */
record LevelWeights(long lastResort, long delay, long mix, long age) {
    long of(StaggerScore score) {
        return (score.lastResorts() == 0 ? 0 : lastResort * score.lastResorts())
                + delay * score.waitMinutes()
                + mix * score.mixCost()
                + age * score.ageMinutes();
    }
}
