package stirtide.planner.planning.floor;

/** Minutes at which mixes and rinses can begin, kept up to date lazily. */
final class StartSets {
    private final FloorGrid grid;
    private final long[][] assistantFree;
    private final CountedUse scales;
    private final CountedUse basins;
    private final long[][] ofMix;
    private final long[] ofRinse;
    private final long[] one;
    private final long[] free;
    private boolean stale = true;

    StartSets(FloorGrid grid, long[][] assistantFree, CountedUse scales, CountedUse basins) {
        this.grid = grid;
        this.assistantFree = assistantFree;
        this.scales = scales;
        this.basins = basins;
        this.ofMix = new long[grid.mixing.length][grid.words];
        this.ofRinse = new long[grid.words];
        this.one = new long[grid.words];
        this.free = new long[grid.words];
    }

    void changed() {
        stale = true;
    }

    long[] ofMix(int mix) {
        refresh();
        return ofMix[mix];
    }

    /** For a rinse by an assistant. */
    long[] ofRinse() {
        refresh();
        return ofRinse;
    }

    /** For a rinse by somebody who is free in the given minutes. */
    long[] ofRinse(long[] personFree) {
        basinFree();
        for (int word = 0; word < free.length; word++) {
            free[word] &= personFree[word];
        }
        MinuteSet.runs(free, grid.day.rinseMinutes(), ofRinse);
        return ofRinse;
    }

    private void refresh() {
        if (!stale) {
            return;
        }
        stale = false;
        for (int mix = 0; mix < ofMix.length; mix++) {
            int same = sameAs(mix);
            if (same < mix) {
                System.arraycopy(ofMix[same], 0, ofMix[mix], 0, grid.words);
            } else {
                people(grid.occupied[mix], ofMix[mix]);
                for (int word = 0; word < free.length; word++) {
                    free[word] = ~scales.full[word];
                }
                and(ofMix[mix], grid.mixing[mix]);
            }
        }
        if (!grid.day.stylistsRinse()) {
            people(grid.day.rinseMinutes(), ofRinse);
            basinFree();
            and(ofRinse, grid.day.rinseMinutes());
        }
    }

    private int sameAs(int mix) {
        int same = 0;
        while (grid.mixing[same] != grid.mixing[mix]) {
            same++;
        }
        return same;
    }

    private void basinFree() {
        for (int word = 0; word < free.length; word++) {
            free[word] = ~basins.full[word];
        }
    }

    /** Leaves only the members at which the thing is free for so long. */
    private void and(long[] set, int minutes) {
        MinuteSet.runs(free, minutes, one);
        for (int word = 0; word < set.length; word++) {
            set[word] &= one[word];
        }
    }

    private void people(int minutes, long[] into) {
        MinuteSet.runs(assistantFree[0], minutes, into);
        for (int a = 1; a < assistantFree.length; a++) {
            MinuteSet.runs(assistantFree[a], minutes, one);
            for (int word = 0; word < into.length; word++) {
                into[word] |= one[word];
            }
        }
    }
}
