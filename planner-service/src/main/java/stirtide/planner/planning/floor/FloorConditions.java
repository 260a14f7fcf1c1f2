package stirtide.planner.planning.floor;

import java.util.Collections;
import java.util.List;

/**
 * What a day in progress adds to a {@link FloorDay}: things that are in use already, scales of several kinds, bowls that not every
 * scale can weigh, services that are under way. Scales, sizes and services go by their place in the day.
 *
 * @param rinsesPlanned whether rinses take a basin and a person; if not, a client leaves the chair when the rinse is wished for, and
 *     the longest time of a zone ends with its application
 * @param carriedByMixer whether who mixed a bowl is busy until it is at the chair
 * @param stylistsOnDuty by stylist: stretches in which the stylist applies, none if there is no limit
 * @param scaleCounts how many scales there are of each kind
 * @param scalesTaken by kind of scale: stretches in which one of them is in use
 * @param sizesTaken by size of bowl: stretches in which one of them is in use or being washed
 * @param underway what is under way of each service
 * @param weighing which bowls can be weighed
 */
public record FloorConditions(
        boolean rinsesPlanned,
        boolean carriedByMixer,
        List<List<DutySpan>> stylistsOnDuty,
        List<Integer> scaleCounts,
        List<List<DutySpan>> scalesTaken,
        List<List<DutySpan>> sizesTaken,
        List<Underway> underway,
        BowlWeighing weighing) {
    /** Copies the lists. */
    public FloorConditions {
        stylistsOnDuty = List.copyOf(stylistsOnDuty);
        scaleCounts = List.copyOf(scaleCounts);
        scalesTaken = List.copyOf(scalesTaken);
        sizesTaken = List.copyOf(sizesTaken);
        underway = List.copyOf(underway);
    }

    /**
     * What is under way of a service.
     *
     * @param stylistFromMinute its stylist is taken from then on, if that is before its first minute
     * @param wishMinute zones applied already wish for the rinse then, 0 if there are none
     * @param latestEndMinute the zone that is being applied must be applied by then, {@link HandlingCosts#NONE} if none is
     */
    public record Underway(int stylistFromMinute, int wishMinute, int latestEndMinute) {
        /** A service that has not begun. */
        public static final Underway NOTHING = new Underway(HandlingCosts.NONE, 0, HandlingCosts.NONE);
    }

    /** Says which bowls can be weighed. */
    @FunctionalInterface
    public interface BowlWeighing {
        /** The last {@code to} for which a bowl that feeds the minutes of application {@code [from, to)} of a service can be weighed on a scale of a kind. */
        int furthest(int service, int from, int size, int scale);
    }

    /** The day by itself: nothing is under way, all scales weigh everything. */
    static FloorConditions none(FloorDay day) {
        return new FloorConditions(
                true,
                true,
                List.of(),
                List.of(day.scales()),
                List.of(List.of()),
                Collections.nCopies(day.bowlSizes().size(), List.of()),
                Collections.nCopies(day.services().size(), Underway.NOTHING),
                (service, from, size, scale) -> HandlingCosts.NONE);
    }
}
