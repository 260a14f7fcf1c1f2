package stirtide.bar.link;

import java.io.IOException;
import java.nio.channels.ClosedByInterruptException;
import java.util.Optional;
import java.util.function.Consumer;
import stirtide.bar.client.CommandAnswer;
import stirtide.bar.client.DayClient;
import stirtide.events.command.CommandRequest;

/** Delivers the entries of one person, one after another, each again until it is answered: the outbox on disk and its thread. */
final class OutboxDelivery implements AutoCloseable {
    private static final long LEAVING_MILLIS = 500;
    private static final long LOOK_MILLIS = 1000;

    private final String personId;
    private final Outbox outbox;
    private final DayClient day;
    private final Consumer<LinkEvent> events;
    private final Backoff backoff;
    private final Thread thread = new Thread(this::run, "sender");
    private boolean waited;

    /** Opens the person's outbox; nothing is sent before {@link #start}. */
    OutboxDelivery(String personId, StateFolder folder, DayClient day, Consumer<LinkEvent> events, Backoff backoff)
            throws IOException {
        this.personId = personId;
        this.day = day;
        this.events = events;
        this.backoff = backoff;
        outbox = folder.outbox(personId);
        waited = outbox.size() > 0;
        thread.setDaemon(true);
        if (waited) events.accept(new LinkEvent.Waiting(outbox.size()));
    }

    /** Begins to send; a second call changes nothing. */
    void start() {
        if (thread.getState() == Thread.State.NEW) thread.start();
    }

    String personId() {
        return personId;
    }

    /** Entries that are not answered yet. */
    int size() {
        return outbox.size();
    }

    void add(CommandRequest request, String words) throws IOException {
        outbox.add(new Outbox.Entry(request, words));
    }

    /** Waits until every entry is answered, {@code millis} at most; how many are not. */
    int settle(long millis) throws InterruptedException {
        return outbox.awaitEmpty(millis);
    }

    /** Ends the thread; what is not answered stays on disk. */
    @Override
    public void close() throws IOException {
        thread.interrupt();
        try {
            // The thread may be the one that closes: it has just heard that its sign-on is over.
            if (Thread.currentThread() != thread) thread.join(LEAVING_MILLIS);
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        }
        outbox.close();
    }

    private void run() {
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
