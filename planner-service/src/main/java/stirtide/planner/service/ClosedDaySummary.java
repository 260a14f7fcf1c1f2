package stirtide.planner.service;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import stirtide.events.json.ContractJson;
import stirtide.planner.day.history.CarriedDay;
import stirtide.planner.day.history.ClientRecords;
import stirtide.planner.day.state.Day;

/**
 * What the service keeps of a day that is over. The content stays JSON, which takes little memory, and is parsed for each
 * use: a salon opens one day a day.
 *
 * @param revision newest event of the day
 * @param time time of that event
 * @param erased ids of clients whose erasure the day records
 * @param content JSON in UTF-8: what later days learn from the day, and the ids of the clients it holds anything of
 */
record ClosedDaySummary(long revision, Instant time, List<String> erased, byte[] content) {
    private record Content(CarriedDay past, List<String> clients) {}

    static ClosedDaySummary of(Day day) {
        Content content = new Content(CarriedDay.of(day), ClientRecords.idsOn(day));
        byte[] json = ContractJson.write(content).getBytes(StandardCharsets.UTF_8);
        return new ClosedDaySummary(day.revision(), day.time(), ClientRecords.erasedOn(day), json);
    }

    /** What later days learn from the day. */
    CarriedDay past() {
        return parsed().past();
    }

    /** Whether the day holds anything of a client. */
    boolean knows(String clientId) {
        // Parsing is the slow part, and nearly all days do not even hold the id.
        return text().contains(clientId) && parsed().clients().contains(clientId);
    }

    /** Ids of the clients the day holds anything of. */
    List<String> clients() {
        return parsed().clients();
    }

    private Content parsed() {
        return ContractJson.read(text(), Content.class);
    }

    private String text() {
        return new String(content, StandardCharsets.UTF_8);
    }
}
