package stirtide.demo.play;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.json.ContractJson;

/**
 * What happens on the demo day beside the calendar. Times are in the salon's zone.
 *
 * @param seed seed of all small deviations
 * @param opensAt when the day is opened and the prep sheet is made
 * @param liveFrom where the live demo starts, shortly before the first peak
 * @param late clients who come late, by booking uid
 * @param walkIns clients without a booking
 * @param notReady minutes for which a client is not ready although the bowl stands at the chair, by service number
 * @param slips bowls whose first weighing is typed wrong and corrected at once
 * @param spills bowls that are spilled at the chair
 */
public record DayScript(
        long seed,
        LocalTime opensAt,
        LocalTime liveFrom,
        Map<String, Late> late,
        List<WalkIn> walkIns,
        SortedMap<Integer, Integer> notReady,
        List<String> slips,
        List<String> spills) {
    public DayScript {
        late = Map.copyOf(late);
        walkIns = List.copyOf(walkIns);
        notReady = Collections.unmodifiableSortedMap(new TreeMap<>(notReady));
        slips = List.copyOf(slips);
        spills = List.copyOf(spills);
    }

    /** Reads a script. */
    public static DayScript read(Path file) throws IOException {
        return ContractJson.read(Files.readString(file), DayScript.class);
    }

    /**
     * A client who comes late.
     *
     * @param at when the salon learns of it
     * @param minutes how much later the client comes
     */
    public record Late(LocalTime at, int minutes) {}

    /**
     * A client without a booking.
     *
     * @param at when the client comes in
     * @param startInMinutes minutes from then to the booked start
     */
    public record WalkIn(
            LocalTime at,
            int startInMinutes,
            String bookingUid,
            String menuId,
            int chair,
            String clientRef,
            String length,
            String density,
            Optional<String> stylistId) {}
}
