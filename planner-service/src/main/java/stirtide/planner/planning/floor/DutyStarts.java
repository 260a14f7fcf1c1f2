package stirtide.planner.planning.floor;

/** Minutes at which some assistant could begin a mix or a rinse if nothing else was to be done. */
final class DutyStarts {
    private final long[][] ofMix;
    private final long[] ofRinse;

    DutyStarts(FloorGrid grid) {
        this.ofMix = new long[grid.mixing.length][grid.words];
        this.ofRinse = new long[grid.words];
        long[] duty = new long[grid.words];
        long[] one = new long[grid.words];
        for (FloorAssistant assistant : grid.day.assistants()) {
            java.util.Arrays.fill(duty, 0);
            for (DutySpan span : assistant.onDuty()) {
                MinuteSet.add(duty, span.fromMinute(), span.toMinute());
            }
            for (int mix = 0; mix < ofMix.length; mix++) {
                MinuteSet.runs(duty, grid.occupied[mix], one);
                unite(ofMix[mix], one);
            }
            MinuteSet.runs(duty, grid.day.rinseMinutes(), one);
            unite(ofRinse, one);
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

    long[] ofRinse() {
        return ofRinse;
    }
}
