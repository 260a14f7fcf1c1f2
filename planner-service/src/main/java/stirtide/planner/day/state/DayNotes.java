package stirtide.planner.day.state;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.SwatchTest;

/**
 * What people wrote down on a day that changes no plan. Immutable.
 *
 * @param levels levels of hair by {@link #key service and zone}
 * @param swatches test swatches, in order
 * @param strips pH strips, in order
 */
public record DayNotes(SortedMap<String, Levels> levels, List<SwatchTest> swatches, List<MixStrip> strips) {
    static final DayNotes EMPTY = new DayNotes(Collections.emptySortedMap(), List.of(), List.of());

    /** Level of the hair in a zone before and after, in tenths, as far as recorded. */
    public record Levels(Optional<Integer> beforeTenths, Optional<Integer> afterTenths) {
        static final Levels NONE = new Levels(Optional.empty(), Optional.empty());
    }

    /** Key of a zone of a service. */
    public static String key(int service, String zone) {
        return service + "/" + zone;
    }

    /** Levels recorded for a zone of a service. */
    public Levels levels(int service, String zone) {
        return levels.getOrDefault(key(service, zone), Levels.NONE);
    }

    /** The same with levels of a zone; one that is left out stays as it was. */
    public DayNotes leveled(int service, String zone, Optional<Integer> before, Optional<Integer> after) {
        var changed = new TreeMap<>(levels);
        var old = levels(service, zone);
        changed.put(key(service, zone), new Levels(before.or(old::beforeTenths), after.or(old::afterTenths)));
        return new DayNotes(Collections.unmodifiableSortedMap(changed), swatches, strips);
    }

    /** The same with one more swatch. */
    public DayNotes plus(SwatchTest swatch) {
        var more = new ArrayList<>(swatches);
        more.add(swatch);
        return new DayNotes(levels, List.copyOf(more), strips);
    }

    /** The same with one more strip. */
    public DayNotes plus(MixStrip strip) {
        var more = new ArrayList<>(strips);
        more.add(strip);
        return new DayNotes(levels, swatches, List.copyOf(more));
    }
}
