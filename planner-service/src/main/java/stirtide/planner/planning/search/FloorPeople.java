package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stirtide.planner.planning.floor.DutySpan;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/**
 * Stylists and chairs of a day as the floor engine counts them. Services are given in {@link #TURNS}. A service whose stylist or chair is taken by one before it, or whose stylist is off
 * duty, is worked at the earliest time at which both are there; outside the stylist's hours only if it fits into none.
 */
final class FloorPeople {
    /** The order in which services are worked: those under way, then the others as booked. */
    static final Comparator<ServiceTask> TURNS = Comparator.<ServiceTask>comparingInt(task -> task.started() ? 0 : 1)
            .thenComparingInt(ServiceTask::startMinute)
            .thenComparingInt(ServiceTask::service);

    private static final int FREE = 0;

    /** Free from so many minutes from now on, if nobody waits for a bowl; by stylist and by chair. */
    private final Map<Integer, Integer> stylistFree = new HashMap<>();

    private final Map<Integer, Integer> chairFree = new HashMap<>();
    private final Map<String, Integer> places = new HashMap<>();
    private final List<List<DutySpan>> stylistsOnDuty = new ArrayList<>();
    private final PlanQuestion question;
    private int count;

    FloorPeople(PlanQuestion question) {
        this.question = question;
    }

    /**
     * How a service has its turn.
     *
     * @param stylist place of its stylist
     * @param chair place of its chair
     * @param laterMinutes minutes by which it begins later than it could for its booking
     */
    record Turn(int stylist, int chair, int laterMinutes) {}

    /** A service that new bowls feed; minutes count from now, as if nobody waited. */
    Turn turn(ServiceTask task, int startMinute, int endMinute, int wishMinute) {
        int stylist = stylist(task);
        int chair = chair(task);
        int free = Math.max(stylistFree.getOrDefault(stylist, FREE), chairFree.getOrDefault(chair, FREE));
        int later = task.started() ? 0 : Math.max(0, free - startMinute);
        later += untilOnDuty(task, stylist, startMinute + later, endMinute + later);
        stylistFree.put(stylist, endMinute + later);
        chairFree.put(chair, Math.max(endMinute, wishMinute) + later);
        return new Turn(stylist, chair, later);
    }

    /** Minutes until a stylist is on duty for all of a service; 0 if no hours hold it, which are longer then. */
    private int untilOnDuty(ServiceTask task, int stylist, int startMinute, int endMinute) {
        Optional<List<Minutes>> hours = question.stylistHours(task);
        List<DutySpan> own = hours.stream()
                .flatMap(List::stream)
                .filter(each -> each.to() > question.nowMinute())
                .map(each ->
                        new DutySpan(Math.max(0, each.from() - question.nowMinute()), each.to() - question.nowMinute()))
                .toList();
        onDuty(stylist).addAll(own);
        int earliest = own.stream()
                .mapToInt(each -> Math.max(startMinute, each.fromMinute()))
                .filter(start -> own.stream().anyMatch(duty -> duty.holds(start, start + endMinute - startMinute)))
                .min()
                .orElse(-1);
        if (earliest >= 0) return earliest - startMinute;
        if (hours.isPresent() || task.started())
            onDuty(stylist)
                    .add(new DutySpan(
                            task.started() ? 0 : Math.max(0, startMinute),
                            Math.max(0, endMinute) + FloorDay.MOST_WAIT_MINUTES));
        return 0;
    }

    /** By place of a stylist: when the stylist may apply, empty for always. */
    List<List<DutySpan>> stylistsOnDuty() {
        return stylistsOnDuty;
    }

    private List<DutySpan> onDuty(int stylist) {
        while (stylistsOnDuty.size() <= stylist) stylistsOnDuty.add(new ArrayList<>());
        return stylistsOnDuty.get(stylist);
    }

    /** A service that no new bowl feeds: only those after it must wait for its stylist and its chair. */
    void passes(ServiceTask task, int endMinute, int wishMinute) {
        stylistFree.merge(stylist(task), endMinute, Math::max);
        chairFree.merge(chair(task), Math.max(endMinute, wishMinute), Math::max);
    }

    /** The place of its stylist; one of its own if it is not known who that is, or if that one is at another head already. */
    private int stylist(ServiceTask task) {
        String own = "service " + task.service();
        int known = place(task.stylistId().map(id -> "stylist " + id).orElse(own));
        return task.started() && stylistFree.getOrDefault(known, FREE) > 0 ? place(own) : known;
    }

    private int chair(ServiceTask task) {
        int known = place("chair " + task.chair());
        return task.started() && chairFree.getOrDefault(known, FREE) > 0
                ? place("chair of service " + task.service())
                : known;
    }

    private int place(String who) {
        return places.computeIfAbsent(who, key -> count++);
    }
}
