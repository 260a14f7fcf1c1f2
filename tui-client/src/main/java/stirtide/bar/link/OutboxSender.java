package stirtide.bar.link;

import java.io.IOException;
import java.nio.channels.ClosedByInterruptException;
import java.util.Optional;
import java.util.function.Consumer;

/** Sends the entries of an outbox one after the other, each until it is answered. */
final class OutboxSender implements Runnable {
    private static final long LOOK_MILLIS = 1000;

    private final DayClient api;
    private final Outbox outbox;
    private final Consumer<LinkEvent> news;
    private final Backoff backoff;
    private boolean waited;

    OutboxSender(DayClient api, Outbox outbox, Consumer<LinkEvent> news, Backoff backoff) {
        this.api = api;
        this.outbox = outbox;
        this.news = news;
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
            // The answered entry is still on disk; sent again it is taken once.
            Thread.currentThread().interrupt();
        } catch (IOException diskTrouble) {
            news.accept(new LinkEvent.Trouble("entries cannot be kept on disk: " + diskTrouble.getMessage()));
        }
    }

    private void deliver(Outbox.Entry entry) throws InterruptedException, IOException {
        DayClient.Answer answer = api.command(entry.request());
        if (answer instanceof DayClient.Answer.Later) {
            waited = true;
            news.accept(new LinkEvent.Waiting(outbox.size()));
            Thread.sleep(backoff.next().toMillis());
            return;
        }
        backoff.succeeded();
        outbox.removeHead();
        if (answer instanceof DayClient.Answer.Refused refused) {
            news.accept(new LinkEvent.Refused(entry.request().command(), entry.words(), refused.sentence()));
        } else {
            news.accept(new LinkEvent.Taken(entry.request().command(), entry.words(), waited));
        }
        if (outbox.size() == 0) waited = false;
        news.accept(new LinkEvent.Waiting(outbox.size()));
    }
}
