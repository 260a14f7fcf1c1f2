package stirtide.planner.planning.floor;

import java.util.List;

/**
 * The question: one salon day with everything that plans of it compete for. Minutes count from the opening of the day.
 *
 * @param handOverMinutes carrying a bowl, done by who mixed it, right after mixing
 * @param washMinutes time from the last use of a bowl until it can be used again
 * @param scales mixes that can be weighed at a time
 * @param basins clients who can be rinsed at a time
 * @param rinseMinutes length of a rinse
 * @param stylistsRinse whether the stylist of a service rinses it; otherwise an assistant does
 * @param marginMinutes life a bowl should have left after its last use
 * @param leastDecigrams what a bowl should feed at least
 * @param assistants who mixes
 * @param bowlSizes bowls at hand
 * @param mixes kinds of mixes
 * @param services booked services
 */
public record FloorDay(
        int handOverMinutes,
        int washMinutes,
        int scales,
        int basins,
        int rinseMinutes,
        boolean stylistsRinse,
        int marginMinutes,
        int leastDecigrams,
        List<FloorAssistant> assistants,
        List<FloorBowlSize> bowlSizes,
        List<FloorMix> mixes,
        List<FloorService> services) {
    /** The most a client may wait in all. */
    public static final int MOST_WAIT_MINUTES = 90;

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there are no services, no assistants, no scales or no basins, if a service is there twice or has a mix that is not there
     */
    public FloorDay {
        assistants = List.copyOf(assistants);
        bowlSizes = List.copyOf(bowlSizes);
        mixes = List.copyOf(mixes);
        services = List.copyOf(services);
        need(!services.isEmpty() && !assistants.isEmpty(), "a day needs services and assistants");
        need(scales > 0 && basins > 0 && rinseMinutes > 0, "a day needs scales, basins and a rinse that takes time");
        need(
                services.stream().mapToInt(FloorService::service).distinct().count() == services.size(),
                "every service has a number of its own");
        int kinds = mixes.size();
        need(
                services.stream().flatMap(one -> one.zones().stream()).allMatch(zone -> zone.mix() < kinds),
                "a zone names a mix that is not there");
    }

    private static void need(boolean condition, String otherwise) {
        if (!condition) {
            throw new IllegalArgumentException(otherwise);
        }
    }
}
