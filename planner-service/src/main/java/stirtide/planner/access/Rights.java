package stirtide.planner.access;

import static stirtide.planner.access.Role.ASSISTANT;
import static stirtide.planner.access.Role.COLORIST;
import static stirtide.planner.access.Role.MANAGER;
import static stirtide.planner.access.Role.SERVICE;
import static stirtide.planner.access.Role.TERMINAL;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The table of rights: roles by operation of the contract and by command. What stands in neither is allowed to nobody;
 * docs/access.md shows the same table to people.
 */
public final class Rights {
    private static final Set<Role> EVERYBODY = EnumSet.allOf(Role.class);
    private static final Set<Role> PEOPLE = EnumSet.of(ASSISTANT, COLORIST, MANAGER);
    private static final Set<Role> SIGNED_ON = EnumSet.of(ASSISTANT, COLORIST, MANAGER, SERVICE);
    private static final Set<Role> LEADERS = EnumSet.of(COLORIST, MANAGER);
    private static final Set<Role> LEADERS_AND_SERVICE = EnumSet.of(COLORIST, MANAGER, SERVICE);
    private static final Set<Role> MANAGER_AND_SERVICE = EnumSet.of(MANAGER, SERVICE);
    private static final Set<Role> MANAGER_ONLY = EnumSet.of(MANAGER);

    private static final Map<String, Set<Role>> OPERATIONS = new TreeMap<>(Map.ofEntries(
            Map.entry("listDays", EVERYBODY),
            Map.entry("openDay", MANAGER_AND_SERVICE),
            Map.entry("showDay", EVERYBODY),
            Map.entry("showSetup", SIGNED_ON),
            Map.entry("sendCommand", SIGNED_ON),
            Map.entry("followDay", EVERYBODY),
            Map.entry("readEvents", LEADERS_AND_SERVICE),
            Map.entry("nextPour", EVERYBODY),
            Map.entry("showGrams", LEADERS),
            Map.entry("showSwatches", PEOPLE),
            Map.entry("showVisits", PEOPLE),
            Map.entry("tryMoves", LEADERS),
            Map.entry("tryMove", LEADERS),
            Map.entry("tryWalkIn", PEOPLE),
            Map.entry("tryExtraAssistant", LEADERS),
            Map.entry("showClock", EVERYBODY),
            Map.entry("setClockRate", MANAGER_AND_SERVICE),
            Map.entry("advanceClock", MANAGER_AND_SERVICE),
            Map.entry("exportClient", MANAGER_ONLY),
            Map.entry("eraseClient", MANAGER_ONLY),
            Map.entry("showSignOn", EVERYBODY),
            Map.entry("signOn", EnumSet.of(TERMINAL)),
            Map.entry("signOff", PEOPLE)));

    private static final Map<String, Set<Role>> COMMANDS = new TreeMap<>(Map.ofEntries(
            Map.entry("OpenDay", MANAGER_AND_SERVICE),
            Map.entry("BookService", SIGNED_ON),
            Map.entry("MoveService", LEADERS_AND_SERVICE),
            Map.entry("CancelService", LEADERS_AND_SERVICE),
            Map.entry("StartService", PEOPLE),
            Map.entry("FinishZone", PEOPLE),
            Map.entry("RinseSection", PEOPLE),
            Map.entry("BeginBowl", PEOPLE),
            Map.entry("WeighBowl", PEOPLE),
            Map.entry("HandOverBowl", PEOPLE),
            Map.entry("FinishBowl", PEOPLE),
            Map.entry("BinBowl", PEOPLE),
            Map.entry("BeginBatch", PEOPLE),
            Map.entry("WeighBatch", PEOPLE),
            Map.entry("DivideBatch", PEOPLE),
            Map.entry("BinBatch", PEOPLE),
            Map.entry("ChangeShift", LEADERS),
            Map.entry("ChangeSetup", MANAGER_ONLY),
            Map.entry("PinAllowance", LEADERS),
            Map.entry("ResetAllowance", LEADERS),
            Map.entry("CountStock", PEOPLE),
            Map.entry("ReceiveGoods", PEOPLE),
            Map.entry("RecordTest", PEOPLE),
            Map.entry("RepeatFormula", LEADERS),
            Map.entry("RecordLevels", PEOPLE),
            Map.entry("RecordSwatch", PEOPLE),
            Map.entry("RecordStrip", PEOPLE),
            Map.entry("SetAllowanceFraction", MANAGER_ONLY),
            Map.entry("TakeBack", PEOPLE),
            Map.entry("AcknowledgeAlarm", PEOPLE),
            Map.entry("CloseDay", LEADERS)));

    private Rights() {}

    /** Whether a role may ask for an operation, by its id in the contract. */
    public static boolean operation(Role role, String operationId) {
        return OPERATIONS.getOrDefault(operationId, Set.of()).contains(role);
    }

    /** Whether a role may send a command, by its type in the contract. */
    public static boolean command(Role role, String type) {
        return COMMANDS.getOrDefault(type, Set.of()).contains(role);
    }

    /** All operations of the table, sorted. */
    public static Set<String> operations() {
        return OPERATIONS.keySet();
    }

    /** All commands of the table, sorted. */
    public static Set<String> commands() {
        return COMMANDS.keySet();
    }
}
