package stirtide.planner.day.history;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/** What a day holds of one client, by the id in sealed references. */
public final class ClientRecords {
    private ClientRecords() {}

    /**
     * What one day holds of a client.
     *
     * @param day salon id and date
     * @param bookings bookings of the day with tests and wishes, cancelled ones too
     * @param visits earlier visits the day remembers
     * @param uses grams of earlier visits the day learned from
     */
    public record DayRecord(String day, List<Booking> bookings, List<PastVisit> visits, List<PastUse> uses) {}

    /** What a day holds of a client; empty when nothing. */
    public static Optional<DayRecord> record(String name, Day day, String clientId) {
        if (day.setup().isEmpty() || !known(day, clientId)) return Optional.empty();
        List<Booking> bookings = day.services().stream()
                .map(ServiceState::booking)
                .filter(booking -> ClientErasure.isOf(booking.clientRef(), clientId))
                .toList();
        return Optional.of(new DayRecord(name, bookings, visits(day, clientId), uses(day, clientId)));
    }

    private static List<PastVisit> visits(Day day, String clientId) {
        return day.opened().learned().remembered().visits().stream()
                .filter(visit -> ClientErasure.isOf(visit.clientRef(), clientId))
                .toList();
    }

    private static List<PastUse> uses(Day day, String clientId) {
        return day.opened().learned().uses().stream()
                .filter(use -> ClientErasure.isOf(use.clientRef(), clientId))
                .toList();
    }

    /** Whether a day holds anything of a client. */
    public static boolean known(Day day, String clientId) {
        return day.services().stream()
                        .anyMatch(
                                service -> ClientErasure.isOf(service.booking().clientRef(), clientId))
                || (day.setup().isPresent()
                        && !(visits(day, clientId).isEmpty()
                                && uses(day, clientId).isEmpty()));
    }

    /** Ids of all clients a day holds anything of, each once. */
    public static List<String> idsOn(Day day) {
        if (day.setup().isEmpty()) return List.of();
        var learned = day.opened().learned();
        return Stream.of(
                        day.services().stream().map(service -> service.booking().clientRef()),
                        learned.remembered().visits().stream().map(PastVisit::clientRef),
                        learned.uses().stream().map(PastUse::clientRef))
                .flatMap(references -> references)
                .flatMap(reference -> ClientErasure.clientId(reference).stream())
                .distinct()
                .toList();
    }

    /** Ids of clients who were erased on a day. */
    public static List<String> erasedOn(Day day) {
        return day.history().events().stream()
                .filter(event -> event.event() instanceof DayEvent.ClientErased)
                .map(event -> ((DayEvent.ClientErased) event.event()).clientId())
                .toList();
    }
}
