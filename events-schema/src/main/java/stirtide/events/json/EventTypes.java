package stirtide.events.json;

import java.util.List;
import java.util.Optional;
import stirtide.events.day.DayEvent;

/**
 * Wire names and versions of the events, written out by hand: a renamed class must not rename what is on disk. A
 * published version never changes but for new optional fields; anything else is a new version and a step in
 * {@link Upcasters}.
 */
public final class EventTypes {
    private static final String PREFIX = "stirtide.";

    /**
     * One kind of event.
     *
     * @param name name without prefix and version, such as {@code "BowlBegun"}
     * @param version newest version, the one that is written
     * @param record record it is read into
     */
    public record EventType(String name, int version, Class<? extends DayEvent> record) {
        /** Type attribute of the envelope: {@code "stirtide.BowlBegun.v1"}. */
        public String wireType() {
            return PREFIX + name + ".v" + version;
        }

        /** Name of the JSON Schema of the data. */
        public String dataSchema() {
            return "urn:stirtide:schema:events:" + name + ".v" + version;
        }
    }

    private static final List<EventType> ALL = List.of(
            new EventType("DayOpened", 1, DayEvent.DayOpened.class),
            new EventType("ServiceBooked", 1, DayEvent.ServiceBooked.class),
            new EventType("ServiceMoved", 1, DayEvent.ServiceMoved.class),
            new EventType("ServiceCancelled", 1, DayEvent.ServiceCancelled.class),
            new EventType("ServiceStarted", 1, DayEvent.ServiceStarted.class),
            new EventType("ZoneFinished", 1, DayEvent.ZoneFinished.class),
            new EventType("SectionRinsed", 1, DayEvent.SectionRinsed.class),
            new EventType("BowlBegun", 1, DayEvent.BowlBegun.class),
            new EventType("BowlWeighed", 1, DayEvent.BowlWeighed.class),
            new EventType("BowlHandedOver", 1, DayEvent.BowlHandedOver.class),
            new EventType("BowlFinished", 1, DayEvent.BowlFinished.class),
            new EventType("BowlBinned", 1, DayEvent.BowlBinned.class),
            new EventType("BatchBegun", 1, DayEvent.BatchBegun.class),
            new EventType("BatchWeighed", 1, DayEvent.BatchWeighed.class),
            new EventType("BatchDivided", 1, DayEvent.BatchDivided.class),
            new EventType("BatchBinned", 1, DayEvent.BatchBinned.class),
            new EventType("ShiftChanged", 1, DayEvent.ShiftChanged.class),
            new EventType("SetupChanged", 1, DayEvent.SetupChanged.class),
            new EventType("AllowancePinned", 1, DayEvent.AllowancePinned.class),
            new EventType("AllowanceReset", 1, DayEvent.AllowanceReset.class),
            new EventType("StockCounted", 1, DayEvent.StockCounted.class),
            new EventType("GoodsReceived", 1, DayEvent.GoodsReceived.class),
            new EventType("TestRecorded", 1, DayEvent.TestRecorded.class),
            new EventType("FormulaRepeated", 1, DayEvent.FormulaRepeated.class),
            new EventType("LevelsRecorded", 1, DayEvent.LevelsRecorded.class),
            new EventType("SwatchRecorded", 1, DayEvent.SwatchRecorded.class),
            new EventType("StripRecorded", 1, DayEvent.StripRecorded.class),
            new EventType("AllowanceFractionSet", 1, DayEvent.AllowanceFractionSet.class),
            new EventType("ActionTakenBack", 1, DayEvent.ActionTakenBack.class),
            new EventType("ClientErased", 1, DayEvent.ClientErased.class),
            new EventType("AlarmAcknowledged", 1, DayEvent.AlarmAcknowledged.class),
            new EventType("DayClosed", 1, DayEvent.DayClosed.class),
            new EventType("PlanDrawn", 1, DayEvent.PlanDrawn.class),
            new EventType("PlanKept", 1, DayEvent.PlanKept.class),
            new EventType("BowlDue", 1, DayEvent.BowlDue.class),
            new EventType("BowlLate", 1, DayEvent.BowlLate.class),
            new EventType("LifeEnding", 1, DayEvent.LifeEnding.class),
            new EventType("LifeEnded", 1, DayEvent.LifeEnded.class));

    private EventTypes() {}

    /** All kinds of events. */
    public static List<EventType> all() {
        return ALL;
    }

    /** The kind of an event. */
    public static EventType of(DayEvent event) {
        return ALL.stream()
                .filter(type -> type.record().equals(event.getClass()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no wire name for " + event.getClass()));
    }

    /** The kind with a name, empty when this release does not know it. */
    public static Optional<EventType> named(String name) {
        return ALL.stream().filter(type -> type.name().equals(name)).findFirst();
    }
}
