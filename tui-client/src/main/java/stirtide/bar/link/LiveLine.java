package stirtide.bar.link;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Flow;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Follows the live views of a day until the line breaks or falls silent, then tries again, for ever. */
final class LiveLine implements Runnable {
    private static final int OK = 200;
    private static final int MOST_WAITING_LINES = 1000;

    private final ServiceApi api;
    private final SignOnLine signOns;
    private final Consumer<LinkNews> news;
    private final Backoff backoff;
    private final long silenceMillis;
    private String lastEventId = "";
    private boolean clockCanBeDriven;

    /** {@code silenceMillis}: a line on which nothing was heard for so long is given up. */
    LiveLine(ServiceApi api, SignOnLine signOns, Consumer<LinkNews> news, Backoff backoff, long silenceMillis) {
        this.api = api;
        this.signOns = signOns;
        this.news = news;
        this.backoff = backoff;
        this.silenceMillis = silenceMillis;
    }

    @Override
    public void run() {
        try {
            // Ends: when the thread is interrupted on leaving.
            while (true) {
                news.accept(new LinkNews.Cut(follow()));
                Thread.sleep(backoff.next().toMillis());
            }
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        }
    }

    /** Follows one connection; the answer is why it ended. */
    private String follow() throws InterruptedException {
        try {
            tellClock();
            signOns.look();
            var lines = new Lines();
            CompletableFuture<HttpResponse<Void>> ended =
                    api.client().sendAsync(api.liveRequest(lastEventId), BodyHandlers.fromLineSubscriber(lines));
            try {
                return read(lines, ended);
            } finally {
                lines.cancel();
                ended.cancel(true);
            }
        } catch (IOException broken) {
            return ServiceApi.reason(broken);
        }
    }

    private String read(Lines lines, CompletableFuture<HttpResponse<Void>> ended)
            throws IOException, InterruptedException {
        var events = new EventLines();
        while (true) {
            Optional<String> line = lines.next(silenceMillis);
            if (line.isEmpty()) return "nothing heard for " + silenceMillis / 1000 + " s";
            if (line.get().equals(Lines.END)) return why(ended);
            backoff.succeeded();
            Optional<String> event = events.take(line.get());
            if (!events.lastId().isEmpty()) lastEventId = events.lastId();
            if (event.isPresent()) news.accept(new LinkNews.Seen(ServiceApi.view(event.get())));
            else if (line.get().startsWith(":")) stillThere();
        }
    }

    // Somebody else may have changed the speed of a driven clock, and a view comes only with an event.
    private void stillThere() throws IOException, InterruptedException {
        news.accept(new LinkNews.Heard());
        if (clockCanBeDriven) tellClock();
    }

    private void tellClock() throws IOException, InterruptedException {
        Optional<LinkNews.Clock> clock = api.clock();
        clockCanBeDriven = clock.isPresent() && clock.get().canBeDriven();
        clock.ifPresent(news);
    }

    private static String why(CompletableFuture<HttpResponse<Void>> ended) throws InterruptedException {
        try {
            int status = ended.get(1, TimeUnit.SECONDS).statusCode();
            if (status == OK) return "the service ended the line";
            return status == 404 ? "the service does not know this day" : "the service answered " + status;
        } catch (ExecutionException | CompletionException broken) {
            return broken.getCause() instanceof IOException failure ? ServiceApi.reason(failure) : "the line broke";
        } catch (TimeoutException neverMind) {
            return "the line broke";
        }
    }

    /** Lines as they come, one at a time so that a slow terminal slows the line down. */
    private static final class Lines implements Flow.Subscriber<String> {
        // No line of the stream holds a line feed.
        static final String END = "\n";

        private final BlockingQueue<String> waiting = new LinkedBlockingQueue<>(MOST_WAITING_LINES);
        private volatile Flow.@Nullable Subscription subscription;

        @Override
        public void onSubscribe(Flow.Subscription given) {
            subscription = given;
            given.request(1);
        }

        @Override
        public void onNext(String line) {
            waiting.add(line);
        }

        @Override
        public void onError(Throwable failure) {
            waiting.add(END);
        }

        @Override
        public void onComplete() {
            waiting.add(END);
        }

        Optional<String> next(long millis) throws InterruptedException {
            String line = waiting.poll(millis, TimeUnit.MILLISECONDS);
            Flow.Subscription given = subscription;
            if (line != null && given != null) given.request(1);
            return Optional.ofNullable(line);
        }

        void cancel() {
            Flow.Subscription given = subscription;
            if (given != null) given.cancel();
        }
    }
}
