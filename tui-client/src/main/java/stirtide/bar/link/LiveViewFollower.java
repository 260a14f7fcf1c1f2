package stirtide.bar.link;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.ByteBuffer;
import java.util.List;
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
final class LiveViewFollower implements Runnable {
    private static final int OK = 200;
    private static final int UNKNOWN_SENDER = 401;
    private static final int MOST_WAITING_PIECES = 8;

    /** Views that come faster are read at this pace, the newest of them: to read one takes longer than to draw it. */
    private static final long PACE_MILLIS = 150;

    private final DayClient api;
    private final SignOnSession signOns;
    private final Consumer<LinkEvent> news;
    private final Backoff backoff;
    private final long silenceMillis;
    private String lastEventId = "";
    private boolean clockCanBeDriven;

    /** {@code silenceMillis}: a line on which nothing was heard for so long is given up. */
    LiveViewFollower(
            DayClient api, SignOnSession signOns, Consumer<LinkEvent> news, Backoff backoff, long silenceMillis) {
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
                news.accept(new LinkEvent.Cut(follow()));
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
            var pieces = new Pieces();
            CompletableFuture<HttpResponse<Void>> ended =
                    api.client().sendAsync(api.liveRequest(lastEventId), BodyHandlers.fromSubscriber(pieces));
            try {
                return read(pieces, ended);
            } finally {
                pieces.cancel();
                ended.cancel(true);
            }
        } catch (IOException broken) {
            return DayClient.reason(broken);
        }
    }

    private String read(Pieces pieces, CompletableFuture<HttpResponse<Void>> ended)
            throws IOException, InterruptedException {
        var newest = new Newest();
        var events = new EventStreamParser(newest);
        Optional<List<ByteBuffer>> piece = pieces.next(silenceMillis);
        // Ends: when the line breaks or falls silent.
        while (piece.isPresent() || newest.waits()) {
            if (piece.filter(Pieces.END::equals).isPresent()) {
                newest.tell(news);
                return why(ended);
            }
            if (piece.isPresent()) {
                backoff.succeeded();
                piece.get().forEach(events::take);
                if (!events.lastId().isEmpty()) lastEventId = events.lastId();
            }
            // While more has come already, a newer view may be in it, and only the newest is worth reading.
            if (!pieces.hasMore() && newest.restMillis() == 0) newest.tell(news);
            if (newest.takeComment()) stillThere();
            piece = pieces.next(newest.waits() ? newest.restMillis() : silenceMillis);
        }
        return "nothing heard for " + silenceMillis / 1000 + " s";
    }

    // Somebody else may have changed the speed of a driven clock, and a view comes only with an event.
    private void stillThere() throws IOException, InterruptedException {
        news.accept(new LinkEvent.Heard());
        if (clockCanBeDriven) tellClock();
    }

    private void tellClock() throws IOException, InterruptedException {
        Optional<LinkEvent.Clock> clock = api.clock();
        clockCanBeDriven = clock.isPresent() && clock.get().canBeDriven();
        clock.ifPresent(news);
    }

    private static String why(CompletableFuture<HttpResponse<Void>> ended) throws InterruptedException {
        try {
            int status = ended.get(1, TimeUnit.SECONDS).statusCode();
            if (status == OK) return "the service ended the line";
            if (status == UNKNOWN_SENDER) return "the service asks who this terminal is: start it with --token-file";
            return status == 404 ? "the service does not know this day" : "the service answered " + status;
        } catch (ExecutionException | CompletionException broken) {
            return broken.getCause() instanceof IOException failure ? DayClient.reason(failure) : "the line broke";
        } catch (TimeoutException neverMind) {
            return "the line broke";
        }
    }

    /** The newest whole view that has come, and whether the service said that it is still there. */
    private static final class Newest implements EventStreamParser.Reader {
        private byte[] view = {};
        private int length;
        private boolean comment;
        private long toldNanos = System.nanoTime() - TimeUnit.MILLISECONDS.toNanos(PACE_MILLIS);

        @Override
        public void event(byte[] bytes, int count) {
            if (view.length < count) view = new byte[count + count / 2];
            System.arraycopy(bytes, 0, view, 0, count);
            length = count;
        }

        @Override
        public void comment() {
            comment = true;
        }

        boolean waits() {
            return length > 0;
        }

        /** How long the next view is to wait, 0 when it need not. */
        long restMillis() {
            long since = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - toldNanos);
            return Math.max(0, PACE_MILLIS - since);
        }

        void tell(Consumer<LinkEvent> news) throws IOException {
            if (length == 0) return;
            toldNanos = System.nanoTime();
            news.accept(new LinkEvent.Seen(DayClient.view(view, length)));
            length = 0;
        }

        boolean takeComment() {
            boolean was = comment;
            comment = false;
            return was;
        }
    }

    /** Bytes as they come, a piece at a time so that a slow terminal slows the line down. */
    private static final class Pieces implements Flow.Subscriber<List<ByteBuffer>> {
        static final List<ByteBuffer> END = List.of();

        private final BlockingQueue<List<ByteBuffer>> waiting = new LinkedBlockingQueue<>();
        private volatile Flow.@Nullable Subscription subscription;

        @Override
        public void onSubscribe(Flow.Subscription given) {
            subscription = given;
            given.request(MOST_WAITING_PIECES);
        }

        @Override
        public void onNext(List<ByteBuffer> piece) {
            if (!piece.isEmpty()) waiting.add(piece);
        }

        @Override
        public void onError(Throwable failure) {
            waiting.add(END);
        }

        @Override
        public void onComplete() {
            waiting.add(END);
        }

        boolean hasMore() {
            return waiting.stream()
                    .findFirst()
                    .filter(piece -> !piece.isEmpty())
                    .isPresent();
        }

        Optional<List<ByteBuffer>> next(long millis) throws InterruptedException {
            List<ByteBuffer> piece = waiting.poll(millis, TimeUnit.MILLISECONDS);
            Flow.Subscription given = subscription;
            if (piece != null && given != null) given.request(1);
            return Optional.ofNullable(piece);
        }

        void cancel() {
            Flow.Subscription given = subscription;
            if (given != null) given.cancel();
        }
    }
}
