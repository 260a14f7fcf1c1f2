package stirtide.planner.planning.floor.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import stirtide.planner.planning.floor.DutySpan;
import stirtide.planner.planning.floor.FloorAssistant;
import stirtide.planner.planning.floor.FloorBowlSize;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.floor.FloorMix;
import stirtide.planner.planning.floor.FloorService;
import stirtide.planner.planning.floor.FloorZone;

/**
 * A floor day as a JSON file holds it.
 *
 * @param name name of the day
 * @param day the day
 */
public record FloorDayFile(String name, FloorDay day) {
    /** Reads a day. */
    public static FloorDayFile read(Path file) throws IOException {
        JsonNode root = new ObjectMapper().readTree(Files.readString(file));
        List<FloorAssistant> assistants = new ArrayList<>();
        for (JsonNode a : root.get("assistants")) {
            List<DutySpan> spans = new ArrayList<>();
            for (JsonNode s : a.get("onDuty")) spans.add(new DutySpan(s.get(0).asInt(), s.get(1).asInt()));
            assistants.add(new FloorAssistant(spans));
        }
        List<FloorBowlSize> sizes = new ArrayList<>();
        for (JsonNode s : root.get("bowlSizes"))
            sizes.add(new FloorBowlSize(w(s, "usableDecigrams"), w(s, "residueDecigrams"), w(s, "count")));
        List<FloorMix> mixes = new ArrayList<>();
        for (JsonNode s : root.get("mixes")) mixes.add(new FloorMix(w(s, "mixMinutes"), w(s, "lifeMinutes")));
        List<FloorService> services = new ArrayList<>();
        for (JsonNode s : root.get("services")) {
            List<FloorZone> zones = new ArrayList<>();
            for (JsonNode z : s.get("zones"))
                zones.add(new FloorZone(
                        w(z, "gapMinutes"),
                        w(z, "applyMinutes"),
                        w(z, "decigrams"),
                        w(z, "mix"),
                        w(z, "processMinutes"),
                        w(z, "longestMinutes")));
            List<Integer> breaks = new ArrayList<>();
            for (JsonNode b : s.get("breaks")) breaks.add(b.asInt());
            services.add(new FloorService(
                    w(s, "service"), w(s, "stylist"), w(s, "chair"), w(s, "bookedMinute"), zones, breaks));
        }
        return new FloorDayFile(
                root.get("name").asText(),
                new FloorDay(
                        w(root, "handOverMinutes"),
                        w(root, "washMinutes"),
                        w(root, "scales"),
                        w(root, "basins"),
                        w(root, "rinseMinutes"),
                        root.get("rinsedBy").asText().equals("stylist"),
                        w(root, "marginMinutes"),
                        w(root, "leastDecigrams"),
                        assistants,
                        sizes,
                        mixes,
                        services));
    }

    private static int w(JsonNode n, String name) {
        return n.get(name).intValue();
    }
}
