package stirtide.planner.http;

import io.vertx.core.http.HttpServerResponse;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stirtide.planner.http.DayOperations.ShownDay;
import stirtide.planner.http.DayOperations.View;

/** Whole views of a day, newest only: a slow listener skips views, they never queue up for it. */
final class ViewStream implements SseStream {
    private final DayOperations days;
    private final String day;
    private final SseWriter line;
    private final UnaryOperator<String> shown;
    private boolean stale;

    ViewStream(DayOperations days, String day, HttpServerResponse response, UnaryOperator<String> shown) {
        this.shown = shown;
        this.days = days;
        this.day = day;
        this.line = new SseWriter(response);
        line.whenRoom(this::flush);
    }

    @Override
    public void changed() {
        stale = true;
        flush();
    }

    private void flush() {
        if (!stale || !line.hasRoom()) return;
        Optional<ShownDay> newest = days.show(day, View.DAY);
        stale = false;
        newest.ifPresent(view -> line.send(view.revision(), "day", shown.apply(view.json())));
    }

    @Override
    public SseWriter line() {
        return line;
    }
}
