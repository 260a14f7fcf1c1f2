package stirtide.planner.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import stirtide.planner.access.Role;

/** The table of rights as docs/access.md shows it to people. */
final class AccessTable {
    private static final Map<String, Role> COLUMNS = Map.of(
            "T", Role.TERMINAL,
            "A", Role.ASSISTANT,
            "C", Role.COLORIST,
            "M", Role.MANAGER,
            "S", Role.SERVICE);

    /** Operations of the contract by the words of their row. */
    private static final Map<String, List<String>> ROWS = Map.ofEntries(
            Map.entry(
                    "list and show days, live views, next pour, clock, own sign-on",
                    List.of("listDays", "showDay", "followDay", "nextPour", "showClock", "showSignOn")),
            Map.entry("show the setup", List.of("showSetup")),
            Map.entry("send commands (see below)", List.of("sendCommand")),
            Map.entry("open a day", List.of("openDay")),
            Map.entry("read events (client references stay sealed)", List.of("readEvents")),
            Map.entry("swatches, visits, try a walk-in", List.of("showSwatches", "showVisits", "tryWalkIn")),
            Map.entry(
                    "grams and costs, try moves, try an extra assistant",
                    List.of("showGrams", "tryMoves", "tryMove", "tryExtraAssistant")),
            Map.entry("drive the clock, where it can be driven", List.of("setClockRate", "advanceClock")),
            Map.entry("export and erase a client", List.of("exportClient", "eraseClient")),
            Map.entry("sign on", List.of("signOn")),
            Map.entry("sign off", List.of("signOff")));

    /** Who may ask for an operation, by its id. */
    final Map<String, Set<Role>> operations = new TreeMap<>();

    /** Who may send a command, by its type. */
    final Map<String, Set<Role>> commands = new TreeMap<>();

    AccessTable(Path document) throws IOException {
        List<String> lines = Files.readAllLines(document);
        for (List<String> row : rows(lines, "operation")) {
            List<String> meant = ROWS.get(row.get(0));
            if (meant == null) throw new IOException("a row this test does not know: " + row);
            for (String operation : meant) operations.put(operation, roles(header(lines, "operation"), row));
        }
        for (List<String> row : rows(lines, "command"))
            Pattern.compile("`([A-Za-z]+)`")
                    .matcher(row.get(0))
                    .results()
                    .forEach(found -> commands.put(found.group(1), roles(header(lines, "command"), row)));
    }

    private static List<String> header(List<String> lines, String first) {
        return cells(lines.stream()
                .filter(line -> line.startsWith("| " + first + " | ") && line.endsWith("| S |"))
                .findFirst()
                .orElseThrow());
    }

    private static List<List<String>> rows(List<String> lines, String first) {
        List<List<String>> rows = new ArrayList<>();
        int at = lines.indexOf("| " + String.join(" | ", header(lines, first)) + " |") + 2;
        for (; lines.get(at).startsWith("|"); at++) rows.add(cells(lines.get(at)));
        return rows;
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.substring(1, line.length() - 1).split("\\|", -1))
                .map(String::trim)
                .toList();
    }

    private static Set<Role> roles(List<String> header, List<String> row) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        for (int at = 1; at < row.size(); at++) if (row.get(at).equals("x")) roles.add(COLUMNS.get(header.get(at)));
        return roles;
    }
}
