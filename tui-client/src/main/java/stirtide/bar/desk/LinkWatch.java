package stirtide.bar.desk;

import stirtide.bar.scene.LinkLine;

/** When the service was heard last, and how many entries wait for it. */
final class LinkWatch {
    private static final int NANOS_TO_SECONDS = 1_000_000_000;

    private boolean everHeard;
    private boolean cut;
    private String why = "";
    private long heardNanos;
    private int waitingEntries;

    LinkWatch(long startNanos) {
        heardNanos = startNanos;
    }

    void heard(long nanos) {
        everHeard = true;
        cut = false;
        why = "";
        heardNanos = nanos;
    }

    void cut(String reason) {
        cut = true;
        why = reason;
    }

    void waiting(int entries) {
        waitingEntries = entries;
    }

    boolean everHeard() {
        return everHeard;
    }

    int waitingEntries() {
        return waitingEntries;
    }

    LinkLine line(long nanos) {
        long age = Math.max(0, nanos - heardNanos) / NANOS_TO_SECONDS;
        return new LinkLine(LinkLine.state(everHeard, cut, age), age, waitingEntries, why);
    }
}
