package stirtide.planner.planning.floor;

import java.util.List;

/**
 * When a service is worked.
 *
 * @param service its number
 * @param minutes when each minute of application begins
 * @param rinse when the rinse begins
 * @param rinseAssistant index of the assistant who rinses, -1 where stylists rinse
 */
public record ServiceTimes(int service, List<Integer> minutes, int rinse, int rinseAssistant) {
    /** Copies the list. */
    public ServiceTimes {
        minutes = List.copyOf(minutes);
    }
}
