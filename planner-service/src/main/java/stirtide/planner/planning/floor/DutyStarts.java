package stirtide.planner.planning.floor;

/** Minutes at which assistants could begin a mix or a rinse if nothing else was to be done: each of them, and any. */
final class DutyStarts {
    private final long[][][] ofMixBy;
    private final long[][] ofRinseBy;
    private final long[][] ofMix;
    private final long[] ofRinse;

    DutyStarts(FloorGrid grid) {
        int assistants = grid.day.assistants().size();
        this.ofMixBy = new long[assistants][grid.mixing.length][grid.words];
        this.ofRinseBy = new long[assistants][grid.words];
        this.ofMix = new long[grid.mixing.length][grid.words];
        this.ofRinse = new long[grid.words];
        for (int a = 0; a < assistants; a++) {
            long[] duty = grid.onDuty(a);
            for (int mix = 0; mix < ofMix.length; mix++) {
                MinuteSet.runs(duty, grid.occupied[mix], ofMixBy[a][mix]);
                unite(ofMix[mix], ofMixBy[a][mix]);
            }
            MinuteSet.runs(duty, grid.day.rinseMinutes(), ofRinseBy[a]);
            unite(ofRinse, ofRinseBy[a]);
        }
    }

    private static void unite(long[] to, long[] with) {
        for (int word = 0; word < to.length; word++) {
            to[word] |= with[word];
        }
    }

    long[] ofMix(int mix) {
        return ofMix[mix];
    }

    long[] ofMix(int mix, int assistant) {
        return ofMixBy[assistant][mix];
    }

    long[] ofRinse() {
        return ofRinse;
    }

    long[] ofRinse(int assistant) {
        return ofRinseBy[assistant];
    }
}
