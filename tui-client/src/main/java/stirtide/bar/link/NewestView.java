package stirtide.bar.link;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import stirtide.bar.client.EventStreamParser;
import stirtide.bar.client.LiveViewReader;
import stirtide.events.view.DayView;

/** The newest view received, as bytes, and whether the service has shown that it is still there. */
final class NewestView implements EventStreamParser.Listener {
    /** Views are parsed no more often than this: to parse one takes longer than to draw it. */
    private static final long PACE_MILLIS = 150;

    private byte[] view = {};
    private int length;
    private boolean comment;
    private long takenNanos = System.nanoTime() - TimeUnit.MILLISECONDS.toNanos(PACE_MILLIS);

    @Override
    public void event(byte[] bytes, int count) {
        if (view.length < count) view = new byte[count + count / 2];
        System.arraycopy(bytes, 0, view, 0, count);
        length = count;
    }

    @Override
    public void comment() {
        comment = true;
    }

    /** Whether a view has been received since the last {@link #take}. */
    boolean waits() {
        return length > 0;
    }

    /** Milliseconds the next view has to wait, 0 when it need not. */
    long restMillis() {
        long since = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - takenNanos);
        return Math.max(0, PACE_MILLIS - since);
    }

    /** Parses the view that waits. */
    DayView take() throws IOException {
        takenNanos = System.nanoTime();
        DayView parsed = LiveViewReader.view(view, length);
        length = 0;
        return parsed;
    }

    /** Whether a comment has been received since the last call. */
    boolean takeComment() {
        boolean was = comment;
        comment = false;
        return was;
    }
}
