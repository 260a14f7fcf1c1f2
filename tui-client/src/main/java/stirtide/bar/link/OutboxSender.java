package stirtide.bar.link;

import java.io.IOException;
import java.nio.channels.ClosedByInterruptException;
import java.util.Optional;
import java.util.function.Consumer;
import stirtide.bar.client.CommandAnswer;
import stirtide.bar.client.DayClient;

/** Sends the entries of an outbox one after another, each again until it is answered. */
final class OutboxSender implements Runnable {
    private static final long LOOK_MILLIS = 1000;

    private final DayClient day;
    private final Outbox outbox;
    private final Consumer<LinkEvent> events;
    private final Backoff backoff;
    private boolean waited;

    OutboxSender(DayClient day, Outbox outbox, Consumer<LinkEvent> events, Backoff backoff) {
        this.day = day;
        this.outbox = outbox;
        this.events = events;
        this.backoff = backoff;
        waited = outbox.size() > 0;
    }

    @Override
    public void run() {
        try {
            // Ends: when the thread is interrupted on leaving.
            while (true) {
                Optional<Outbox.Entry> head = outbox.head(LOOK_MILLIS);
                if (head.isPresent()) deliver(head.get());
            }
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        } catch (ClosedByInterruptException leaving) {
            // The answered entry is still on disk; the service accepts it once, however often it is sent.
            Thread.currentThread().interrupt();
        } catch (IOException diskTrouble) {
            events.accept(new LinkEvent.Trouble("entries cannot be kept on disk: " + diskTrouble.getMessage()));
        }
    }

    private void deliver(Outbox.Entry entry) throws InterruptedException, IOException {
        CommandAnswer answer = day.send(entry.request());
        if (answer instanceof CommandAnswer.Undecided) {
            waited = true;
            events.accept(new LinkEvent.Waiting(outbox.size()));
            Thread.sleep(backoff.next().toMillis());
            return;
        }
        backoff.succeeded();
        outbox.removeHead();
        if (answer instanceof CommandAnswer.Rejected rejected) {
            events.accept(new LinkEvent.Refused(entry.request().command(), entry.words(), rejected.sentence()));
        } else {
            events.accept(new LinkEvent.Taken(entry.request().command(), entry.words(), waited));
        }
        if (outbox.size() == 0) waited = false;
        events.accept(new LinkEvent.Waiting(outbox.size()));
    }
}
