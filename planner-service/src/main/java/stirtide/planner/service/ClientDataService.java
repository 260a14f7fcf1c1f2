package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.events.command.CommandRequest;
import stirtide.events.day.DayEvent;
import stirtide.events.json.ContractJson;
import stirtide.planner.day.history.ClientRecords;
import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.privacy.ClientExport;
import stirtide.planner.privacy.ClientKeys;

/** Seals client references before they reach a day; exports and erases what is kept of a client. */
final class ClientDataService {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.clients");

    private final Vertx vertx;
    private final ClientKeys keys;
    private final DayRegistry days;
    private Future<Void> written = Future.succeededFuture();

    ClientDataService(Vertx vertx, ClientKeys keys, DayRegistry days) {
        this.vertx = vertx;
        this.keys = keys;
        this.days = days;
    }

    /** The request with every reference sealed; new keys are drafts until {@link #keep}. */
    ClientKeys.Sealed seal(CommandRequest request) {
        return keys.seal(request);
    }

    /** The request as it was sealed before, if all its clients are still known. */
    CommandRequest sealKnown(CommandRequest request) {
        return keys.sealKnown(request);
    }

    /** Keeps the new keys of a request that is accepted; completes once every key it needs is on the disk. */
    Future<Void> keep(ClientKeys.Sealed sealed) {
        keys.keep(sealed.fresh());
        return sealed.fresh().isEmpty() && !written.failed() ? written : write();
    }

    /** At start: no id that any day has ever named is given to another client, whatever keys were restored. */
    void giveFreshIds() {
        Collection<String> named = days.clientIds();
        named.forEach(keys::giveAbove);
        long lost = named.stream().filter(id -> !keys.knows(id)).count();
        if (lost > 0)
            LOG.error(
                    "clients.keys holds no key of {} clients whom days name and nobody erased; they show as erased until a"
                            + " copy of the file is restored",
                    lost);
    }

    /** One write after the other, each with the newest state; a failed one is tried again by the next. */
    private Future<Void> write() {
        written = written.transform(before -> {
            ClientKeys.Snapshot snapshot = keys.snapshot();
            return vertx.<Void>executeBlocking(() -> {
                        keys.write(snapshot);
                        return null;
                    })
                    .recover(ClientDataService::notWritten);
        });
        return written;
    }

    private static Future<Void> notWritten(Throwable failed) {
        return Future.failedFuture(
                failed instanceof IOException
                        ? new LogFailure(
                                LogFailure.Kind.FULL,
                                "the keys of clients cannot be written; make room on the disk and try again")
                        : failed);
    }

    String shown(String text) {
        return keys.shown(text);
    }

    /** What is kept of a client on all days. Days that are over are read one after the other. */
    Future<Optional<String>> export(String reference, Optional<String> salon) {
        Optional<String> id = keys.find(reference);
        if (id.isEmpty()) return Future.succeededFuture(Optional.empty());
        List<ClientRecords.DayRecord> kept = new ArrayList<>();
        List<String> names = days.knowing(id.get()).stream()
                .filter(name -> salon.isEmpty() || name.startsWith(salon.get() + "/"))
                .toList();
        return eachDay(names, actor -> {
                    ClientRecords.record(actor.name(), actor.day(), id.get()).ifPresent(kept::add);
                    return Future.succeededFuture();
                })
                // A caller who sees one salon does not learn that another one knows the client.
                .map(read -> kept.isEmpty() && salon.isPresent()
                        ? Optional.empty()
                        : Optional.of(keys.shown(ContractJson.write(new ClientExport(reference, kept)))));
    }

    private Future<Void> eachDay(List<String> names, Function<DayActor, Future<Void>> work) {
        Future<Void> done = Future.succeededFuture();
        for (String name : names)
            done = done.compose(before -> days.load(name))
                    .compose(read -> days.opened(name)
                            .map(day -> work.apply(day.actor()))
                            .orElse(Future.succeededFuture()));
        return done;
    }

    /** Key first, events after: a service that dies between the two notes the events at its next start. */
    Future<Boolean> erase(String reference, Instant now) {
        Optional<String> id = keys.find(reference);
        if (id.isEmpty()) return Future.succeededFuture(false);
        keys.forget(id.get());
        return write().compose(gone -> note(id.get(), now)).map(true);
    }

    private Future<Void> note(String clientId, Instant now) {
        return eachDay(
                days.knowing(clientId),
                actor -> actor.step(() -> ClientRecords.known(actor.day(), clientId)
                        ? actor.append(List.of(new DayEvent.ClientErased(clientId)), now)
                                .mapEmpty()
                        : Future.succeededFuture()));
    }

    /** At start: keys that an old copy brought back are destroyed again, and missing events are noted. */
    Future<Void> eraseAgain() {
        List<String> erased = keys.erased();
        Future<Void> done = Future.succeededFuture();
        for (String id : days.erased()) if (!erased.contains(id)) keys.forget(id);
        if (!keys.erased().equals(erased)) done = write();
        Instant newest = days.newestTime().orElse(Instant.EPOCH);
        for (String id : keys.erased()) done = done.compose(before -> note(id, newest));
        return done;
    }
}
