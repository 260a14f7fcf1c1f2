package stirtide.bar;

import java.io.IOException;
import java.util.function.Consumer;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.link.StateFolder;

/** Passes events of the link on and stores a view for the next start, every ten seconds at most. */
final class ViewKeeper implements Consumer<LinkEvent> {
    private static final long PAUSE_NANOS = 10_000_000_000L;

    private final StateFolder folder;
    private final Consumer<LinkEvent> next;
    private long storedNanos = System.nanoTime() - PAUSE_NANOS;

    ViewKeeper(StateFolder folder, Consumer<LinkEvent> next) {
        this.folder = folder;
        this.next = next;
    }

    @Override
    public void accept(LinkEvent event) {
        next.accept(event);
        if (!(event instanceof LinkEvent.Seen seen) || System.nanoTime() - storedNanos < PAUSE_NANOS) return;
        storedNanos = System.nanoTime();
        try {
            folder.remember(seen.view());
        } catch (IOException diskTrouble) {
            System.err.println("the view cannot be stored: " + diskTrouble);
        }
    }
}
