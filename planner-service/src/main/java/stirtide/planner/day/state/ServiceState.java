package stirtide.planner.day.state;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.Booking;

/**
 * The state of one service.
 *
 * @param service service number, from 1
 * @param booking booking in force, moves included
 * @param startedAt when the client was in the chair
 * @param cancelledAt when the service was cancelled
 * @param zonesDone zones applied, in order
 * @param bowls bowls begun for it, in order of their letters
 * @param rinsedAt sections whose rinse was recorded, and when
 * @param dueMarks what was noted about bowls still to be begun, by bowl id
 */
@RecordBuilder
public record ServiceState(
        int service,
        Booking booking,
        Optional<Instant> startedAt,
        Optional<Instant> cancelledAt,
        List<ZoneDone> zonesDone,
        List<BowlState> bowls,
        SortedMap<Integer, Instant> rinsedAt,
        SortedMap<String, DueMark> dueMarks)
        implements ServiceStateBuilder.With {

    /** A zone and when all of it was applied. */
    public record ZoneDone(String zone, Instant at) {}

    /** Start of mixing for which a bowl was last noted as due, and as late. */
    public record DueMark(Optional<Instant> dueAt, Optional<Instant> lateAt) {
        static final DueMark NONE = new DueMark(Optional.empty(), Optional.empty());
    }

    /** A service just booked. */
    public static ServiceState booked(int service, Booking booking) {
        return new ServiceState(
                service,
                booking,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Collections.emptySortedMap(),
                Collections.emptySortedMap());
    }

    /** Not cancelled. */
    public boolean standing() {
        return cancelledAt.isEmpty();
    }

    /** Id of the bowl that comes next. */
    public String nextBowl() {
        return BowlIds.of(service, bowls.size());
    }

    /** Bowls begun for a run. */
    public List<BowlState> bowlsOf(int run) {
        return bowls.stream().filter(bowl -> bowl.run() == run).toList();
    }

    /** The mark of a bowl still to be begun. */
    public DueMark dueMark(String bowl) {
        return dueMarks.getOrDefault(bowl, DueMark.NONE);
    }

    /** The same at another start and chair. */
    public ServiceState moved(Instant start, int chair) {
        return withBooking(booking.withStart(start).withChair(chair));
    }

    /** The same with one more zone applied. */
    public ServiceState zoneDone(String zone, Instant at) {
        var done = new ArrayList<>(zonesDone);
        done.add(new ZoneDone(zone, at));
        return withZonesDone(List.copyOf(done));
    }

    /** The same with a section rinsed. */
    public ServiceState rinsed(int section, Instant at) {
        var rinsed = new TreeMap<>(rinsedAt);
        rinsed.put(section, at);
        return withRinsedAt(Collections.unmodifiableSortedMap(rinsed));
    }

    /** The same with one more bowl begun. */
    public ServiceState begun(BowlState bowl) {
        var more = new ArrayList<>(bowls);
        more.add(bowl);
        var marks = new TreeMap<>(dueMarks);
        marks.remove(bowl.bowl());
        return withBowls(List.copyOf(more)).withDueMarks(Collections.unmodifiableSortedMap(marks));
    }

    /** The same with a bowl in place of the one with its id. */
    public ServiceState with(BowlState bowl) {
        var changed = new ArrayList<>(bowls);
        changed.replaceAll(old -> old.bowl().equals(bowl.bowl()) ? bowl : old);
        return withBowls(List.copyOf(changed));
    }

    /** The same with what was noted about a bowl still to be begun. */
    public ServiceState marked(String bowl, DueMark mark) {
        var marks = new TreeMap<>(dueMarks);
        marks.put(bowl, mark);
        return withDueMarks(Collections.unmodifiableSortedMap(marks));
    }
}
