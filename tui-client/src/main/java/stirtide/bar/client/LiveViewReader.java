package stirtide.bar.client;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Flow;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

/** One connection to the live views of a day, read a chunk at a time so that a slow reader slows the service down. */
public final class LiveViewReader implements AutoCloseable {
    private static final int OK = 200;
    private static final int UNAUTHORIZED = 401;
    private static final int NOT_FOUND = 404;
    private static final List<ByteBuffer> END = List.of();

    private final Chunks chunks = new Chunks();
    private final EventStreamParser events;
    private final CompletableFuture<HttpResponse<Void>> response;

    LiveViewReader(HttpClient http, HttpRequest request, EventStreamParser.Listener listener) {
        events = new EventStreamParser(listener);
        response = http.sendAsync(request, BodyHandlers.fromSubscriber(chunks));
        // Without a response no body is subscribed to, and nothing else would end the stream.
        response.exceptionally(failure -> {
            chunks.onError(failure);
            return null;
        });
    }

    /** What a read brought. */
    public enum Result {
        /** Bytes; the listener has been called for the events that are complete. */
        RECEIVED,
        /** Nothing within the time. */
        SILENT,
        /** The stream has ended; {@link #endReason} says why. */
        ENDED
    }

    /** Waits for the next bytes, {@code millis} at most, and calls the listener with what is in them. */
    public Result read(long millis) throws InterruptedException {
        List<ByteBuffer> chunk = chunks.next(millis);
        if (chunk == null) return Result.SILENT;
        if (chunk.isEmpty()) return Result.ENDED;
        chunk.forEach(events::take);
        return Result.RECEIVED;
    }

    /** Whether more bytes wait already. */
    public boolean hasMore() {
        return chunks.hasMore();
    }

    /** Id of the last event received, empty text before the first. */
    public String lastEventId() {
        return events.lastId();
    }

    /** Why the stream ended, for people. */
    public String endReason() throws InterruptedException {
        try {
            int status = response.get(1, TimeUnit.SECONDS).statusCode();
            if (status == OK) return "the service ended the connection";
            if (status == UNAUTHORIZED) return "the service asks who this terminal is: start it with --token-file";
            return status == NOT_FOUND ? "the service does not know this day" : "the service answered " + status;
        } catch (ExecutionException | CompletionException broken) {
            return broken.getCause() instanceof IOException failure
                    ? ResponseText.reason(failure)
                    : "the connection broke";
        } catch (TimeoutException noResponse) {
            return "the connection broke";
        }
    }

    /** A view in the first bytes of an array. */
    public static DayView view(byte[] json, int length) throws IOException {
        try {
            return ContractJson.read(json, length, DayView.class);
        } catch (IllegalArgumentException otherContract) {
            throw ResponseText.otherVersion(otherContract);
        }
    }

    @Override
    public void close() {
        chunks.cancel();
        response.cancel(true);
    }

    private static final class Chunks implements Flow.Subscriber<List<ByteBuffer>> {
        private static final int MOST_WAITING = 8;

        private final BlockingQueue<List<ByteBuffer>> waiting = new LinkedBlockingQueue<>();
        private volatile Flow.@Nullable Subscription subscription;

        @Override
        public void onSubscribe(Flow.Subscription given) {
            subscription = given;
            given.request(MOST_WAITING);
        }

        @Override
        public void onNext(List<ByteBuffer> chunk) {
            if (!chunk.isEmpty()) waiting.add(chunk);
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
            List<ByteBuffer> next = waiting.peek();
            return next != null && !next.isEmpty();
        }

        @Nullable
        List<ByteBuffer> next(long millis) throws InterruptedException {
            List<ByteBuffer> chunk = waiting.poll(millis, TimeUnit.MILLISECONDS);
            Flow.Subscription given = subscription;
            if (chunk != null && given != null) given.request(1);
            return chunk;
        }

        void cancel() {
            Flow.Subscription given = subscription;
            if (given != null) given.cancel();
        }
    }
}
