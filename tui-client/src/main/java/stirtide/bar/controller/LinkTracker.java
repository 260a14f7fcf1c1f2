package stirtide.bar.controller;

import java.util.concurrent.TimeUnit;
import stirtide.bar.model.LinkStatus;

/** When the service was heard last, and how many entries wait for it. */
final class LinkTracker {

    private boolean everHeard;
    private boolean cut;
    private String why = "";
    private long heardNanos;
    private int waitingEntries;

    LinkTracker(long startNanos) {
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

    LinkStatus line(long nanos) {
        long age = TimeUnit.NANOSECONDS.toSeconds(Math.max(0, nanos - heardNanos));
        return new LinkStatus(LinkStatus.state(everHeard, cut, age), age, waitingEntries, why);
    }
}
