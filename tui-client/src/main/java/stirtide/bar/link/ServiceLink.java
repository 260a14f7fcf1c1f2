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
import stirtide.bar.model.Inquiry;
import stirtide.events.command.DayCommand;

/** The way to the service: a thread that follows the day, a thread that sends entries, a thread that asks. */
public final class ServiceLink implements ServiceGateway, AutoCloseable {
    /** A line on which nothing was heard for so long is given up; the service is heard every five seconds. */
    public static final long SILENCE_MILLIS = 20_000;

    private static final long SECOND_MILLIS = 1000;

    private final DayClient api;
    private final SignOnSession signOns;
    private final StateFolder home;
    private final Consumer<LinkEvent> news;
    private final Thread live;
    private final ExecutorService askThread = Executors.newSingleThreadExecutor(task -> daemon("ask", task));
    // One question in flight, none kept back: the terminal asks again when the weights have changed.
    private final ExecutorService adviceThread = new ThreadPoolExecutor(
            1,
            1,
            0,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(1),
            task -> daemon("advice", task),
            new ThreadPoolExecutor.DiscardOldestPolicy());

    private ServiceLink(
            DayClient api, StateFolder home, SignOnSession signOns, Consumer<LinkEvent> news, long secondMillis) {
        this.api = api;
        this.home = home;
        this.signOns = signOns;
        this.news = news;
        long silence = SILENCE_MILLIS * secondMillis / SECOND_MILLIS;
        live = daemon("live", new LiveViewFollower(api, signOns, news, backoff(secondMillis), silence));
    }

    private static Backoff backoff(long secondMillis) {
        return new Backoff(new SplittableRandom(), secondMillis);
    }

    /**
     * Starts to follow a day.
     *
     * @param news called from the link's threads
     * @throws IOException when entries cannot be kept on disk
     */
    public static ServiceLink start(DayClient api, StateFolder home, String personId, Consumer<LinkEvent> news)
            throws IOException {
        return start(api, home, personId, news, SECOND_MILLIS);
    }

    /** The same with another length of a second, for tests of waiting. */
    static ServiceLink start(
            DayClient api, StateFolder home, String personId, Consumer<LinkEvent> news, long secondMillis)
            throws IOException {
        var signOns = new SignOnSession(api, home, personId, news, () -> backoff(secondMillis));
        var link = new ServiceLink(api, home, signOns, news, secondMillis);
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
        askThread.execute(() -> {
            try {
                Optional<LinkEvent.Clock> clock = api.setClockRate(ratePermille);
                clock.ifPresentOrElse(news, () -> news.accept(new LinkEvent.Trouble("the clock cannot be driven")));
            } catch (IOException unreachable) {
                news.accept(new LinkEvent.Trouble("the clock: " + DayClient.reason(unreachable)));
            } catch (InterruptedException leaving) {
                Thread.currentThread().interrupt();
            }
        });
    }

    /** Without an answer the terminal goes by its own check of the ratio, so nobody is told of a failure. */
    @Override
    public void askNextPour(String bowl, String poured) {
        adviceThread.execute(() -> {
            try {
                api.nextPour(bowl, poured).ifPresent(advice -> news.accept(new LinkEvent.Advised(advice, poured)));
            } catch (IOException unreachable) {
                // the header says that the way is cut
            } catch (InterruptedException leaving) {
                Thread.currentThread().interrupt();
            }
        });
    }

    @Override
    public void ask(Inquiry advice) {
        askThread.execute(() -> {
            try {
                var answer = api.advice(advice.ask());
                news.accept(new LinkEvent.Tried(new Inquiry(advice.ask(), advice.askedNanos(), Optional.of(answer))));
            } catch (InterruptedException leaving) {
                Thread.currentThread().interrupt();
            }
        });
    }

    @Override
    public void askSetup() {
        askThread.execute(() -> {
            try {
                news.accept(new LinkEvent.InForce(api.setup()));
            } catch (IOException unreachable) {
                news.accept(new LinkEvent.Trouble("the setup: " + DayClient.reason(unreachable)));
            } catch (InterruptedException leaving) {
                Thread.currentThread().interrupt();
            }
        });
    }

    @Override
    public void askPast() {
        askThread.execute(() -> {
            try {
                news.accept(new LinkEvent.Past(PastDayLoader.of(api, home, home.day())));
            } catch (IOException unreachable) {
                news.accept(new LinkEvent.Trouble("the earlier days: " + DayClient.reason(unreachable)));
            } catch (InterruptedException leaving) {
                Thread.currentThread().interrupt();
            }
        });
    }

    @Override
    public void close() {
        live.interrupt();
        askThread.shutdownNow();
        adviceThread.shutdownNow();
        signOns.close();
    }
}
