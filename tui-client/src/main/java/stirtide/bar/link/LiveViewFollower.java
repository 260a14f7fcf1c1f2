package stirtide.bar.link;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Consumer;
import stirtide.bar.client.DayClient;
import stirtide.bar.client.LiveViewReader;
import stirtide.bar.client.ResponseText;
import stirtide.bar.client.ServiceClock;

/** Follows the live views of a day until the stream ends or falls silent, then connects again, without end. */
final class LiveViewFollower implements Runnable {
    private final DayClient day;
    private final SignOnSession signOns;
    private final Consumer<LinkEvent> events;
    private final Backoff backoff;
    private final long silenceMillis;
    private String lastEventId = "";
    private boolean clockCanBeDriven;

    /** {@code silenceMillis}: a stream on which nothing was heard for so long is given up. */
    LiveViewFollower(
            DayClient day, SignOnSession signOns, Consumer<LinkEvent> events, Backoff backoff, long silenceMillis) {
        this.day = day;
        this.signOns = signOns;
        this.events = events;
        this.backoff = backoff;
        this.silenceMillis = silenceMillis;
    }

    @Override
    public void run() {
        try {
            // Ends: when the thread is interrupted on leaving.
            while (true) {
                events.accept(new LinkEvent.Cut(follow()));
                Thread.sleep(backoff.next().toMillis());
            }
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        }
    }

    /** Follows one connection; the answer is why it ended. */
    private String follow() throws InterruptedException {
        var newest = new NewestView();
        try {
            tellClock();
            signOns.check();
            try (LiveViewReader stream = day.live(lastEventId, newest)) {
                return read(stream, newest);
            }
        } catch (IOException broken) {
            return ResponseText.reason(broken);
        }
    }

    private String read(LiveViewReader stream, NewestView newest) throws IOException, InterruptedException {
        LiveViewReader.Result result = stream.read(silenceMillis);
        // Ends: when the stream ends or falls silent.
        while (result != LiveViewReader.Result.SILENT || newest.waits()) {
            if (result == LiveViewReader.Result.ENDED) {
                tell(newest);
                return stream.endReason();
            }
            if (result == LiveViewReader.Result.RECEIVED) {
                backoff.succeeded();
                if (!stream.lastEventId().isEmpty()) lastEventId = stream.lastEventId();
            }
            // While more has come already, a newer view may be in it, and only the newest is worth parsing.
            if (!stream.hasMore() && newest.restMillis() == 0) tell(newest);
            if (newest.takeComment()) stillThere();
            result = stream.read(newest.waits() ? newest.restMillis() : silenceMillis);
        }
        return "nothing heard for " + silenceMillis / 1000 + " s";
    }

    private void tell(NewestView newest) throws IOException {
        if (newest.waits()) events.accept(new LinkEvent.Seen(newest.take()));
    }

    // Another client may have changed the speed of a driven clock, and a view comes only with an event.
    private void stillThere() throws IOException, InterruptedException {
        events.accept(new LinkEvent.Heard());
        if (clockCanBeDriven) tellClock();
    }

    private void tellClock() throws IOException, InterruptedException {
        Optional<ServiceClock> clock = day.service().clock();
        clockCanBeDriven = clock.isPresent() && clock.get().driven();
        clock.map(LinkEvent.Clock::of).ifPresent(events);
    }
}
