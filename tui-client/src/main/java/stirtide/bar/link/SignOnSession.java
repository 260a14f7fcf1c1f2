package stirtide.bar.link;

import java.io.IOException;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;

/** Who works at this terminal as the service knows it, and the entries of that person. */
final class SignOnSession implements AutoCloseable {
    /** How long entries may still be under way while somebody signs off. */
    private static final long SETTLE_MILLIS = 2000;

    private final DayClient api;
    private final SignOnRequests requests;
    private final StateFolder home;
    private final Consumer<LinkEvent> news;
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
     * @param personId that person, empty text for nobody
     * @throws IOException when entries cannot be kept on disk
     */
    SignOnSession(
            DayClient api, StateFolder home, String personId, Consumer<LinkEvent> news, Supplier<Backoff> backoffs)
            throws IOException {
        this.api = api;
        this.home = home;
        this.news = news;
        this.backoffs = backoffs;
        requests = new SignOnRequests(api);
        sending = OutboxDelivery.of(personId, home, api, news, backoffs.get());
        // With a token it is asked first whether anything may be sent under that name.
        if (!api.badge().hasOwn()) sending.start();
    }

    /**
     * Asks who the terminal is, once a connection.
     *
     * @throws IOException when the service cannot be reached or does not know the terminal, with a sentence
     */
    void look() throws IOException, InterruptedException {
        if (!api.badge().hasOwn()) return;
        if (isSignedOn()) requests.askWhetherItStands();
        else if (requests.needed()) nobody();
        else startSending();
    }

    private synchronized boolean isSignedOn() {
        return signedOn;
    }

    private synchronized void startSending() {
        if (sending != null) sending.start();
    }

    private synchronized void nobody() throws IOException {
        if (signedOn) return;
        closeSending();
        news.accept(new LinkEvent.SignOn.Needed());
        news.accept(new LinkEvent.Waiting(home.waitingEntries()));
    }

    /** Signs a person on; the answer comes as news. */
    void signOn(String personId, String code) {
        thread.execute(() -> {
            try {
                SignOnRequests.Answer answer = requests.signOn(personId, code);
                if (answer.token().isPresent() && answer.news() instanceof LinkEvent.SignOn.Begun begun)
                    begin(answer.token().get(), begun);
                else news.accept(answer.news());
            } catch (InterruptedException leaving) {
                Thread.currentThread().interrupt();
            }
        });
    }

    private synchronized void begin(String token, LinkEvent.SignOn.Begun begun) {
        try {
            closeSending();
            news.accept(new LinkEvent.Waiting(0));
            OutboxDelivery opened = OutboxDelivery.of(begun.personId(), home, api, news, backoffs.get());
            api.badge().actFor(token, this::ended);
            sending = opened;
            signedOn = true;
            news.accept(begun.with(home.waitingEntries() - opened.size()));
            opened.start();
        } catch (IOException diskTrouble) {
            news.accept(new LinkEvent.SignOn.Refused("entries cannot be kept on disk: " + diskTrouble.getMessage(), 0));
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
        api.badge().actForNobody();
        int waiting = sending == null ? 0 : sending.size();
        closeSending();
        news.accept(new LinkEvent.SignOn.Ended(why, waiting));
        news.accept(new LinkEvent.Waiting(waiting));
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

    /** Keeps an entry on disk and sends it, under nobody's name but that of who made it. */
    synchronized void send(String personId, DayCommand command, String words) {
        if (sending == null) {
            news.accept(new LinkEvent.Refused(command, words, "nobody is signed on here"));
            return;
        }
        // Signing on takes seconds at times, and the screen shows who works here a little later than it is so.
        if (!sending.personId().equals(personId)) {
            String sentence = "it was entered by " + personId + ", and " + sending.personId() + " has signed on since";
            news.accept(new LinkEvent.Refused(command, words, sentence));
            return;
        }
        var request = new CommandRequest(UUID.randomUUID().toString(), sending.personId(), command);
        try {
            sending.add(request, words);
        } catch (IOException diskTrouble) {
            news.accept(
                    new LinkEvent.Refused(command, words, "it cannot be kept on disk: " + diskTrouble.getMessage()));
        }
    }

    @Override
    public void close() {
        thread.shutdownNow();
        closeSending();
    }
}
