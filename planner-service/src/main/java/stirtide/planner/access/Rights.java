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
 * The table of rights: roles by operation of the contract and by command. What stands in neither is allowed to no role;
 * docs/access.md shows the same table.
 */
public final class Rights {
    private static final Set<Role> ALL = EnumSet.allOf(Role.class);
    private static final Set<Role> PEOPLE = EnumSet.of(ASSISTANT, COLORIST, MANAGER);
    private static final Set<Role> SIGNED_ON = EnumSet.of(ASSISTANT, COLORIST, MANAGER, SERVICE);
    private static final Set<Role> LEADERS = EnumSet.of(COLORIST, MANAGER);
    private static final Set<Role> LEADERS_AND_SERVICE = EnumSet.of(COLORIST, MANAGER, SERVICE);
    private static final Set<Role> MANAGER_AND_SERVICE = EnumSet.of(MANAGER, SERVICE);
    private static final Set<Role> MANAGER_ONLY = EnumSet.of(MANAGER);

    private static final Map<String, Set<Role>> OPERATIONS = new TreeMap<>();
    private static final Map<String, Set<Role>> COMMANDS = new TreeMap<>();

    static {
        allow(OPERATIONS, ALL, "listDays", "showDay", "followDay", "nextPour", "showClock", "showSignOn");
        allow(OPERATIONS, SIGNED_ON, "showSetup", "sendCommand");
        allow(OPERATIONS, PEOPLE, "showSwatches", "showVisits", "tryWalkIn", "signOff");
        allow(OPERATIONS, LEADERS_AND_SERVICE, "readEvents");
        allow(OPERATIONS, LEADERS, "showGrams", "tryMoves", "tryMove", "tryExtraAssistant");
        allow(OPERATIONS, MANAGER_AND_SERVICE, "openDay", "setClockRate", "advanceClock");
        allow(OPERATIONS, MANAGER_ONLY, "exportClient", "eraseClient");
        allow(OPERATIONS, EnumSet.of(TERMINAL), "signOn");

        allow(COMMANDS, SIGNED_ON, "BookService");
        allow(COMMANDS, PEOPLE, "StartService", "FinishZone", "RinseSection");
        allow(COMMANDS, PEOPLE, "BeginBowl", "WeighBowl", "HandOverBowl", "FinishBowl", "BinBowl");
        allow(COMMANDS, PEOPLE, "BeginBatch", "WeighBatch", "DivideBatch", "BinBatch");
        allow(COMMANDS, PEOPLE, "CountStock", "ReceiveGoods");
        allow(COMMANDS, PEOPLE, "RecordTest", "RecordLevels", "RecordSwatch", "RecordStrip");
        allow(COMMANDS, PEOPLE, "TakeBack", "AcknowledgeAlarm");
        allow(COMMANDS, LEADERS_AND_SERVICE, "MoveService", "CancelService");
        allow(COMMANDS, LEADERS, "ChangeShift", "PinAllowance", "ResetAllowance", "RepeatFormula", "CloseDay");
        allow(COMMANDS, MANAGER_AND_SERVICE, "OpenDay");
        allow(COMMANDS, MANAGER_ONLY, "ChangeSetup", "SetAllowanceFraction");
    }

    private Rights() {}

    private static void allow(Map<String, Set<Role>> table, Set<Role> roles, String... names) {
        for (String name : names) table.put(name, roles);
    }

    /** Whether a role may call an operation, by its id in the contract. */
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
