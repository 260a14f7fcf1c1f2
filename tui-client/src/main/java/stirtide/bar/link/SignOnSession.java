package stirtide.bar.link;

import java.io.IOException;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import stirtide.bar.client.DayClient;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;

/** Who is signed on at this terminal, and the delivery of that person's entries. */
final class SignOnSession implements AutoCloseable {
    /** How long a sign-off waits for entries that are not answered yet. */
    private static final long SETTLE_MILLIS = 2000;

    private final DayClient day;
    private final SignOnRequests requests;
    private final StateFolder folder;
    private final Consumer<LinkEvent> events;
    private final Supplier<Backoff> backoffs;
    private final ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
        var made = new Thread(task, "sign-on");
        made.setDaemon(true);
        return made;
    });
    private @Nullable OutboxDelivery sending;
    private boolean signedOn;

    /**
     * Opens the queue of the person the terminal was started for.
     *
     * @param personId that person, empty text for no person
     * @throws IOException when entries cannot be kept on disk
     */
    SignOnSession(
            DayClient day, StateFolder folder, String personId, Consumer<LinkEvent> events, Supplier<Backoff> backoffs)
            throws IOException {
        this.day = day;
        this.folder = folder;
        this.events = events;
        this.backoffs = backoffs;
        requests = new SignOnRequests(day.service());
        sending = new OutboxDelivery(personId, folder, day, events, backoffs.get());
        // With a token it is asked first whether anything may be sent under that name.
        if (!day.service().tokens().hasOwn()) sending.start();
    }

    /**
     * Asks the service who is signed on, once per connection.
     *
     * @throws IOException when the service cannot be reached or does not know the terminal, with a sentence
     */
    void check() throws IOException, InterruptedException {
        if (!day.service().tokens().hasOwn()) return;
        if (isSignedOn()) requests.checkStillValid();
        else if (requests.needed()) requireSignOn();
        else startSending();
    }

    private synchronized boolean isSignedOn() {
        return signedOn;
    }

    private synchronized void startSending() {
        if (sending != null) sending.start();
    }

    private synchronized void requireSignOn() throws IOException {
        if (signedOn) return;
        closeSending();
        events.accept(new LinkEvent.SignOn.Needed());
        events.accept(new LinkEvent.Waiting(folder.waitingEntries()));
    }

    /** Signs a person on; the answer comes as events. */
    void signOn(String personId, String code) {
        thread.execute(() -> {
            try {
                SignOnRequests.Answer answer = requests.signOn(personId, code);
                if (answer.token().isPresent() && answer.event() instanceof LinkEvent.SignOn.Begun begun)
                    begin(answer.token().get(), begun);
                else events.accept(answer.event());
            } catch (InterruptedException leaving) {
                Thread.currentThread().interrupt();
            }
        });
    }

    private synchronized void begin(String token, LinkEvent.SignOn.Begun begun) {
        try {
            closeSending();
            events.accept(new LinkEvent.Waiting(0));
            OutboxDelivery opened = new OutboxDelivery(begun.personId(), folder, day, events, backoffs.get());
            day.service().tokens().actFor(token, this::ended);
            sending = opened;
            signedOn = true;
            events.accept(begun.with(folder.waitingEntries() - opened.size()));
            opened.start();
        } catch (IOException diskTrouble) {
            events.accept(
                    new LinkEvent.SignOn.Refused("entries cannot be kept on disk: " + diskTrouble.getMessage(), 0));
        }
    }

    /** Signs off; entries under way are waited for a moment. */
    void signOff(String why) {
        thread.execute(() -> {
            try {
                OutboxDelivery leaving = current();
                if (leaving != null) leaving.settle(SETTLE_MILLIS);
                if (!isSignedOn()) return;
                requests.signOff();
                ended(why);
            } catch (InterruptedException leaving) {
                Thread.currentThread().interrupt();
            }
        });
    }

    private synchronized @Nullable OutboxDelivery current() {
        return sending;
    }

    private synchronized void ended(String why) {
        if (!signedOn) return;
        signedOn = false;
        day.service().tokens().actAsTerminal();
        int waiting = sending == null ? 0 : sending.size();
        closeSending();
        events.accept(new LinkEvent.SignOn.Ended(why, waiting));
        events.accept(new LinkEvent.Waiting(waiting));
    }

    private synchronized void closeSending() {
        if (sending == null) return;
        try {
            sending.close();
        } catch (IOException neverMind) {
            // What is not answered is on disk already.
        }
        sending = null;
    }

    /** Stores an entry on disk and sends it, only ever in the name of the person who made it. */
    synchronized void send(String personId, DayCommand command, String words) {
        if (sending == null) {
            events.accept(new LinkEvent.Refused(command, words, "no person is signed on here"));
            return;
        }
        // Signing on takes seconds at times, and the screen shows who works here a little later than it is so.
        if (!sending.personId().equals(personId)) {
            String sentence = "it was entered by " + personId + ", and " + sending.personId() + " has signed on since";
            events.accept(new LinkEvent.Refused(command, words, sentence));
            return;
        }
        var request = new CommandRequest(UUID.randomUUID().toString(), sending.personId(), command);
        try {
            sending.add(request, words);
        } catch (IOException diskTrouble) {
            events.accept(
                    new LinkEvent.Refused(command, words, "it cannot be kept on disk: " + diskTrouble.getMessage()));
        }
    }

    @Override
    public void close() {
        thread.shutdownNow();
        closeSending();
    }
}
