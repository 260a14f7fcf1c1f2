package stirtide.bar.link;

import java.io.IOException;
import java.util.function.Consumer;
import stirtide.bar.client.DayClient;
import stirtide.events.command.CommandRequest;

/** Delivers the entries of one person: the outbox on disk and the thread that sends from it. */
final class OutboxDelivery implements AutoCloseable {
    private static final long LEAVING_MILLIS = 500;

    private final String personId;
    private final Outbox outbox;
    private final Thread thread;

    private OutboxDelivery(String personId, Outbox outbox, Thread thread) {
        this.personId = personId;
        this.outbox = outbox;
        this.thread = thread;
    }

    /** Opens the person's outbox; nothing is sent before {@link #start}. */
    static OutboxDelivery of(
            String personId, StateFolder folder, DayClient day, Consumer<LinkEvent> events, Backoff backoff)
            throws IOException {
        Outbox outbox = folder.outbox(personId);
        var thread = new Thread(new OutboxSender(day, outbox, events, backoff), "sender");
        thread.setDaemon(true);
        if (outbox.size() > 0) events.accept(new LinkEvent.Waiting(outbox.size()));
        return new OutboxDelivery(personId, outbox, thread);
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
}
