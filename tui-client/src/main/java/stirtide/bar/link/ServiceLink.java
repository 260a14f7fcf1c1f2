package stirtide.bar.link;

import java.io.IOException;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import stirtide.bar.client.DayClient;
import stirtide.bar.client.ResponseText;
import stirtide.bar.model.Inquiry;
import stirtide.events.command.DayCommand;

/** The link to the service: one thread follows the live views, one sends entries, one asks questions. */
public final class ServiceLink implements ServiceGateway, AutoCloseable {
    /** A stream on which nothing was heard for so long is given up; the service sends something every five seconds. */
    public static final long SILENCE_MILLIS = 20_000;

    private static final long SECOND_MILLIS = 1000;

    private final DayClient day;
    private final SignOnSession signOns;
    private final StateFolder folder;
    private final Consumer<LinkEvent> events;
    private final Thread live;
    private final ExecutorService askThread = Executors.newSingleThreadExecutor(task -> daemon("ask", task));
    // One question in flight, the newest waiting: the terminal asks again when the weights have changed.
    private final ExecutorService pourThread = new ThreadPoolExecutor(
            1,
            1,
            0,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(1),
            task -> daemon("next-pour", task),
            new ThreadPoolExecutor.DiscardOldestPolicy());

    private ServiceLink(
            DayClient day, StateFolder folder, SignOnSession signOns, Consumer<LinkEvent> events, long secondMillis) {
        this.day = day;
        this.folder = folder;
        this.signOns = signOns;
        this.events = events;
        long silence = SILENCE_MILLIS * secondMillis / SECOND_MILLIS;
        live = daemon("live", new LiveViewFollower(day, signOns, events, backoff(secondMillis), silence));
    }

    private static Backoff backoff(long secondMillis) {
        return new Backoff(new SplittableRandom(), secondMillis);
    }

    /**
     * Starts to follow a day.
     *
     * @param events called on the link's threads
     * @throws IOException when entries cannot be kept on disk
     */
    public static ServiceLink start(DayClient day, StateFolder folder, String personId, Consumer<LinkEvent> events)
            throws IOException {
        return start(day, folder, personId, events, SECOND_MILLIS);
    }

    /** The same with another length of a second, for tests of waiting. */
    static ServiceLink start(
            DayClient day, StateFolder folder, String personId, Consumer<LinkEvent> events, long secondMillis)
            throws IOException {
        var signOns = new SignOnSession(day, folder, personId, events, () -> backoff(secondMillis));
        var link = new ServiceLink(day, folder, signOns, events, secondMillis);
        link.live.start();
        return link;
    }

    private static Thread daemon(String name, Runnable task) {
        var thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }

    @Override
    public void send(String personId, DayCommand command, String words) {
        signOns.send(personId, command, words);
    }

    @Override
    public void signOn(String personId, String code) {
        signOns.signOn(personId, code);
    }

    @Override
    public void signOff(String why) {
        signOns.signOff(why);
    }

    @Override
    public void setClockRate(int ratePermille) {
        ask("the clock", () -> {
            Optional<LinkEvent> clock = day.service().setClockRate(ratePermille).map(LinkEvent.Clock::of);
            return clock.orElseGet(() -> new LinkEvent.Trouble("the service does not let its clock be set"));
        });
    }

    /** Without an answer the terminal goes by its own check of the ratio, so a failure is not reported. */
    @Override
    public void askNextPour(String bowl, String poured) {
        pourThread.execute(() -> {
            try {
                day.nextPour(bowl, poured).ifPresent(advice -> events.accept(new LinkEvent.Advised(advice, poured)));
            } catch (IOException unreachable) {
                // The header shows that the link is down.
            } catch (InterruptedException leaving) {
                Thread.currentThread().interrupt();
            }
        });
    }

    @Override
    public void ask(Inquiry inquiry) {
        ask("the planner", () -> {
            Inquiry.Answer answer = InquiryRequests.send(day, inquiry.ask());
            return new LinkEvent.Tried(new Inquiry(inquiry.ask(), inquiry.askedNanos(), Optional.of(answer)));
        });
    }

    @Override
    public void askSetup() {
        ask("the setup", () -> new LinkEvent.InForce(day.setup()));
    }

    @Override
    public void askPast() {
        ask("the earlier days", () -> new LinkEvent.Past(PastDayLoader.load(day.service(), folder)));
    }

    /** A request whose answer is an event. */
    private interface Request {
        LinkEvent send() throws IOException, InterruptedException;
    }

    private void ask(String what, Request request) {
        askThread.execute(() -> {
            try {
                events.accept(request.send());
            } catch (IOException failed) {
                events.accept(new LinkEvent.Trouble(what + ": " + ResponseText.reason(failed)));
            } catch (InterruptedException leaving) {
                Thread.currentThread().interrupt();
            }
        });
    }

    @Override
    public void close() {
        live.interrupt();
        askThread.shutdownNow();
        pourThread.shutdownNow();
        signOns.close();
    }
}
