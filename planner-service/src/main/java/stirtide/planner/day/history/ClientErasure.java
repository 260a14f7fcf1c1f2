package stirtide.planner.day.history;

import java.util.List;
import java.util.Optional;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.SalonMemory;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/** What a day forgets of a client: the reference, and what was remembered under it. Weights and times stay. */
final class ClientErasure {
    private static final String SEALED = "sealed:";

    private ClientErasure() {}

    static Day of(Day day, String clientId) {
        Day next = day;
        for (ServiceState service : day.services())
            if (isOf(service.booking().clientRef(), clientId))
                next = next.with(service.withBooking(service.booking().withClientRef("")));
        return next.setup().isEmpty() ? next : next.inForce(nameless(next.opened(), clientId));
    }

    /** Whether a sealed reference stands for a client. */
    static boolean isOf(String clientRef, String clientId) {
        return clientRef.startsWith(SEALED + clientId + ":");
    }

    /** The id in a sealed reference; empty when it is blank or not sealed. */
    static Optional<String> clientId(String clientRef) {
        int end = clientRef.indexOf(':', SEALED.length());
        return clientRef.startsWith(SEALED) && end > 0
                ? Optional.of(clientRef.substring(SEALED.length(), end))
                : Optional.empty();
    }

    private static DaySetup nameless(DaySetup setup, String clientId) {
        UseHistory history = setup.learned();
        List<PastUse> uses = history.uses().stream()
                .map(use -> isOf(use.clientRef(), clientId) ? use.withClientRef("") : use)
                .toList();
        Optional<SalonMemory> memory = history.memory()
                .map(kept -> kept.withVisits(kept.visits().stream()
                        .filter(visit -> !isOf(visit.clientRef(), clientId))
                        .toList()));
        return setup.with(new UseHistory(uses, history.rules(), memory));
    }
}
