package stirtide.planner.planning.floor;

import java.util.Arrays;

/** Minutes at which mixes and rinses can begin, worked out when they are asked for after a change. */
final class StartSets {
    private final FloorGrid grid;
    private final long[][] assistantFree;
    private final CountedUse[] scales;
    private final CountedUse basins;
    /** By mixing minutes: kinds of mixes that take as long share their sets. */
    private final int[] sameAs;

    private final long[][][] ofMix;
    private final boolean[] known;
    private final long[] ofRinse;
    private boolean rinseKnown;
    private final long[] people;
    private final long[] one;
    private final long[] free;

    StartSets(FloorGrid grid, long[][] assistantFree, CountedUse[] scales, CountedUse basins) {
        this.grid = grid;
        this.assistantFree = assistantFree;
        this.scales = scales;
        this.basins = basins;
        this.sameAs = new int[grid.mixing.length];
        Arrays.setAll(sameAs, this::sameAs);
        this.ofMix = new long[grid.mixing.length][scales.length][grid.words];
        this.known = new boolean[grid.mixing.length];
        this.ofRinse = new long[grid.words];
        this.people = new long[grid.words];
        this.one = new long[grid.words];
        this.free = new long[grid.words];
    }

    private int sameAs(int mix) {
        int same = 0;
        while (grid.mixing[same] != grid.mixing[mix]) {
            same++;
        }
        return same;
    }

    void changed() {
        Arrays.fill(known, false);
        rinseKnown = false;
    }

    long[] ofMix(int mix, int scale) {
        int same = sameAs[mix];
        if (!known[same]) {
            known[same] = true;
            people(grid.occupied[same]);
            for (int kind = 0; kind < scales.length; kind++) {
                free(scales[kind]);
                startsTogether(grid.mixing[same], ofMix[same][kind]);
            }
        }
        return ofMix[same][scale];
    }

    /** For a rinse by an assistant. */
    long[] ofRinse() {
        if (!rinseKnown) {
            rinseKnown = true;
            people(grid.day.rinseMinutes());
            free(basins);
            startsTogether(grid.day.rinseMinutes(), ofRinse);
        }
        return ofRinse;
    }

    /** For a rinse by somebody who is free in the given minutes. */
    long[] ofRinse(long[] personFree) {
        free(basins);
        for (int word = 0; word < free.length; word++) {
            free[word] &= personFree[word];
        }
        MinuteSet.runs(free, grid.day.rinseMinutes(), ofRinse);
        return ofRinse;
    }

    private void free(CountedUse things) {
        for (int word = 0; word < free.length; word++) {
            free[word] = ~things.full[word];
        }
    }

    /** The starts for people at which the thing is free for so long as well. */
    private void startsTogether(int minutes, long[] into) {
        MinuteSet.runs(free, minutes, into);
        for (int word = 0; word < into.length; word++) {
            into[word] &= people[word];
        }
    }

    private void people(int minutes) {
        MinuteSet.runs(assistantFree[0], minutes, people);
        for (int a = 1; a < assistantFree.length; a++) {
            MinuteSet.runs(assistantFree[a], minutes, one);
            for (int word = 0; word < people.length; word++) {
                people[word] |= one[word];
            }
        }
    }
}
