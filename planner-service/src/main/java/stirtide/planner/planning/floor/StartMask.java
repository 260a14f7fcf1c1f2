package stirtide.planner.planning.floor;

/** Starts that an insertion may use: those of the state, without a stretch of minutes that it is asked to leave alone. */
final class StartMask {
    private final FloorState state;
    private final FloorGrid grid;
    private final long[][][] mixStarts;
    private final long[] rinseStarts;
    private int from;
    private int to;

    StartMask(FloorState state) {
        this.state = state;
        this.grid = state.grid;
        this.mixStarts =
                new long[grid.mixing.length][grid.conditions.scaleCounts().size()][grid.words];
        this.rinseStarts = new long[grid.words];
    }

    /** No mix and no rinse shall be under way in {@code [from, to)}; an empty stretch takes nothing away. */
    void hide(int fromMinute, int toMinute) {
        from = Math.max(0, fromMinute);
        to = Math.min(grid.words * 64, toMinute);
        for (int mix = 0; mix < mixStarts.length && to > from; mix++) {
            for (int scale = 0; scale < mixStarts[mix].length; scale++) {
                System.arraycopy(state.mixStarts(mix, scale), 0, mixStarts[mix][scale], 0, grid.words);
                MinuteSet.remove(mixStarts[mix][scale], Math.max(0, from - grid.occupied[mix] + 1), to);
            }
        }
    }

    void hideNothing() {
        to = from;
    }

    long[] ofMix(int mix, int scale) {
        return to > from ? mixStarts[mix][scale] : state.mixStarts(mix, scale);
    }

    long[] ofRinse(ServiceGrid service) {
        long[] starts = state.rinseStarts(service);
        if (to <= from) {
            return starts;
        }
        System.arraycopy(starts, 0, rinseStarts, 0, grid.words);
        MinuteSet.remove(rinseStarts, Math.max(0, from - grid.day.rinseMinutes() + 1), to);
        return rinseStarts;
    }
}
