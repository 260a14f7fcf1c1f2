package stirtide.planner.http;

import io.vertx.core.Future;
import io.vertx.core.Promise;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.CommandResult;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.planning.whatif.WhatIfAnswer;
import stirtide.planner.planning.whatif.WhatIfQuestion;

/** Operations on one day at revision 3 that accepts every command but those of "failure" and "never", who get no answer. */
class IdleDayOperations implements DayOperations {
    static final String DAY = "quay-house/2027-03-09";

    @Override
    public Future<CommandAnswer> command(
            String day, CommandRequest request, Optional<Long> ifMatch, Optional<String> role) {
        if (request.actor().equals("failure")) return Future.failedFuture(new IllegalStateException("secret detail"));
        if (request.actor().equals("never"))
            return Promise.<CommandAnswer>promise().future();
        if (ifMatch.isPresent() && ifMatch.get() != 3) return Future.succeededFuture(new CommandAnswer.Stale(3));
        return Future.succeededFuture(new CommandAnswer.Done(new CommandResult(request.commandId(), 4, 4, false)));
    }

    @Override
    public Optional<ShownDay> show(String day, View view) {
        return day.equals(DAY) ? Optional.of(new ShownDay(3, "{}")) : Optional.empty();
    }

    @Override
    public QueryAnswer nextPour(String day, String bowl, String poured) {
        return new QueryAnswer.UnknownDay();
    }

    @Override
    public QueryAnswer visits(String day, int service, Optional<LocalDate> first, Optional<LocalDate> second) {
        return new QueryAnswer.UnknownDay();
    }

    @Override
    public Future<Void> backup(Path file) {
        return Future.succeededFuture();
    }

    @Override
    public String shown(String text) {
        return text;
    }

    @Override
    public Future<Void> load(String day) {
        return Future.succeededFuture();
    }

    @Override
    public Future<Optional<String>> exportClient(String reference, Optional<String> salon) {
        return Future.succeededFuture(Optional.empty());
    }

    @Override
    public Future<Boolean> eraseClient(String reference) {
        return Future.succeededFuture(false);
    }

    @Override
    public SortedMap<String, Long> revisions() {
        return new TreeMap<>(java.util.Map.of(DAY, 3L));
    }

    @Override
    public Future<List<StoredEvent>> events(String day, long after, int limit) {
        return Future.succeededFuture(List.of());
    }

    @Override
    public Runnable listen(String day, Runnable listener) {
        return () -> {};
    }

    @Override
    public Future<Optional<WhatIfAnswer>> whatIf(String day, WhatIfQuestion question) {
        Refusal refusal = new Refusal("MENU_UNKNOWN", "Choose a menu entry of the salon.");
        return Future.succeededFuture(
                day.equals(DAY) ? Optional.of(new WhatIfAnswer.Refused(refusal)) : Optional.empty());
    }

    @Override
    public ClockReading clock() {
        return new ClockReading(Instant.parse("2027-03-09T08:00:00Z"), 1000, false);
    }

    @Override
    public Optional<ClockReading> setRate(int ratePermille) {
        return Optional.empty();
    }

    @Override
    public Future<Optional<ClockReading>> advance(Instant to) {
        return Future.succeededFuture(Optional.empty());
    }
}
