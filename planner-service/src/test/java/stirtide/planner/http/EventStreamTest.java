package stirtide.planner.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.vertx.core.Future;
import io.vertx.core.Promise;
import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpClient;
import io.vertx.core.http.HttpClientResponse;
import io.vertx.core.http.HttpMethod;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;

class EventStreamTest {
    private static final StoredEvent EVENT =
            new StoredEvent("e-1", IdleDayOperations.DAY, 1, Instant.EPOCH, "ann", "c-1", new DayEvent.DayClosed());

    private final Vertx vertx = Vertx.vertx();
    private final Promise<List<StoredEvent>> page = Promise.promise();
    private final List<Throwable> broken = new ArrayList<>();

    private final class ReadingDesk extends IdleDayOperations {
        @Override
        public Future<List<StoredEvent>> events(String day, long after, int limit) {
            return after == 0 ? page.future() : Future.succeededFuture(List.of());
        }
    }

    @AfterEach
    void stop() throws Exception {
        vertx.close().await(20, TimeUnit.SECONDS);
    }

    private String heard(boolean endedWhileReading) throws Exception {
        int port = vertx.createHttpServer()
                .requestHandler(request -> {
                    request.response().setChunked(true);
                    vertx.getOrCreateContext().exceptionHandler(broken::add);
                    EventStream feed = new EventStream(
                            new ReadingDesk(), IdleDayOperations.DAY, 0, new EventTextCache(), request.response());
                    feed.changed();
                    if (endedWhileReading) feed.line().end();
                    page.complete(List.of(EVENT));
                    if (!endedWhileReading) feed.line().end();
                })
                .listen(0, "127.0.0.1")
                .await(20, TimeUnit.SECONDS)
                .actualPort();
        HttpClient client = vertx.createHttpClient();
        try {
            return client.request(HttpMethod.GET, port, "127.0.0.1", "/")
                    .compose(request -> request.send().compose(HttpClientResponse::body))
                    .map(Buffer::toString)
                    .await(20, TimeUnit.SECONDS);
        } finally {
            client.close().await(20, TimeUnit.SECONDS);
        }
    }

    @Test
    void what_was_read_is_sent() throws Exception {
        assertThat(heard(false)).contains("id: 1\n", "event: DayClosed\n");
        assertThat(broken).isEmpty();
    }

    @Test
    void what_is_read_for_a_listener_who_has_gone_is_dropped() throws Exception {
        assertThat(heard(true)).isEmpty();
        assertThat(broken).isEmpty();
    }
}
