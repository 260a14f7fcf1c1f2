package stirtide.planner.http;

import io.vertx.core.AsyncResult;
import io.vertx.core.http.HttpServerResponse;
import java.util.List;
import stirtide.events.day.StoredEvent;

/** Every event of a day after a position. It pages from the log, so nothing is left out and nothing queues up. */
final class EventStream implements SseStream {
    /** Small, because a plan may be some tens of kilobytes and a whole page is written at once. */
    private static final int PAGE = 16;

    private final DayOperations days;
    private final String day;
    private final SseWriter line;
    private final EventTextCache texts;
    private long position;
    private boolean reading;
    private boolean changedWhileReading;

    EventStream(DayOperations days, String day, long after, EventTextCache texts, HttpServerResponse response) {
        this.texts = texts;
        this.days = days;
        this.day = day;
        this.position = after;
        this.line = new SseWriter(response);
        line.whenRoom(this::changed);
    }

    @Override
    public void changed() {
        if (reading) {
            changedWhileReading = true;
            return;
        }
        if (!line.hasRoom()) return;
        reading = true;
        changedWhileReading = false;
        days.events(day, position, PAGE).onComplete(this::arrived);
    }

    private void arrived(AsyncResult<List<StoredEvent>> page) {
        reading = false;
        if (page.failed()) {
            line.end();
            return;
        }
        for (StoredEvent event : page.result()) {
            line.send(event.revision(), event.event().getClass().getSimpleName(), texts.of(event));
            position = event.revision();
        }
        if (changedWhileReading || page.result().size() == PAGE) changed();
    }

    @Override
    public SseWriter line() {
        return line;
    }
}
