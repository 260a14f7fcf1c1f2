package stirtide.planner.privacy;

import java.util.List;
import stirtide.planner.day.history.ClientRecords;

/**
 * What is kept of a client, in the JSON form the client may ask to see.
 *
 * @param clientRef reference as booked
 * @param days every day that holds anything of the client
 */
public record ClientExport(String clientRef, List<ClientRecords.DayRecord> days) {}
