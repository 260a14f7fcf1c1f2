package stirtide.planner.planning.stagger.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import stirtide.planner.planning.stagger.Assistant;
import stirtide.planner.planning.stagger.DutyWindow;
import stirtide.planner.planning.stagger.PlainBowls;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/**
 * A day of the plain model as a JSON file holds it.
 *
 * @param name name of the day
 * @param problem the day; at most one mix at a time for each assistant, scales enough
 */
public record DayFile(String name, StaggerProblem problem) {

    /** Says which file, where in it, what was found and what would be accepted. */
    public static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;

        Refused(String message) {
            super(message);
        }
    }

    /** Reads a day, or refuses it whole. */
    public static DayFile read(Path file) throws Refused {
        JsonNode day;
        try {
            day = new ObjectMapper().readTree(Files.readString(file));
        } catch (JsonProcessingException e) {
            throw new Refused(file + ": not JSON (" + e.getOriginalMessage() + "); a JSON object is accepted");
        } catch (IOException e) {
            throw new Refused(file + ": cannot be read; an existing UTF-8 file is accepted");
        }
        Reader reader = new Reader(file);
        try {
            return reader.day(day);
        } catch (IllegalArgumentException e) {
            throw new Refused(file + ": " + e.getMessage());
        }
    }

    private record Reader(Path file) {
        DayFile day(JsonNode day) throws Refused {
            String name = day.path("name").isTextual()
                    ? day.path("name").textValue()
                    : file.getFileName().toString().replace(".json", "");
            List<Assistant> assistants = new ArrayList<>();
            JsonNode people = list(day, "", "assistants");
            for (int i = 0; i < people.size(); i++) {
                assistants.add(assistant(people.get(i), "/assistants/" + i));
            }
            List<StaggerRun> runs = new ArrayList<>();
            JsonNode rows = list(day, "", "runs");
            for (int i = 0; i < rows.size(); i++) {
                runs.add(run(rows.get(i), "/runs/" + i));
            }
            int handOver = whole(day.path("handoverMinutes"), "/handoverMinutes");
            int enough = Math.max(1, assistants.size());
            return new DayFile(
                    name,
                    new StaggerProblem(handOver, StaggerProblem.PLAIN_MAX_WAIT_MINUTES, runs, assistants, enough));
        }

        private Assistant assistant(JsonNode row, String at) throws Refused {
            List<DutyWindow> windows = new ArrayList<>();
            JsonNode pairs = list(row, at, "onDuty");
            for (int i = 0; i < pairs.size(); i++) {
                String place = at + "/onDuty/" + i;
                windows.add(new DutyWindow(
                        whole(pairs.get(i).path(0), place + "/0"),
                        whole(pairs.get(i).path(1), place + "/1")));
            }
            return new Assistant(windows);
        }

        private StaggerRun run(JsonNode row, String at) throws Refused {
            List<Integer> used = new ArrayList<>();
            JsonNode table = list(row, at, "usedDecigramsByMinute");
            for (int i = 0; i < table.size(); i++) {
                used.add(whole(table.get(i), at + "/usedDecigramsByMinute/" + i));
            }
            int start = field(row, at, "startMinute");
            int end = field(row, at, "endMinute");
            if (used.size() != end - start + 1) {
                throw new Refused(file + " " + at + "/usedDecigramsByMinute: " + used.size() + " entries; "
                        + (end - start + 1) + " are accepted, one for each minute from start to end");
            }
            return new StaggerRun(
                    field(row, at, "run"),
                    start,
                    end,
                    field(row, at, "mixMinutes"),
                    field(row, at, "workingLifeMinutes"),
                    new PlainBowls(field(row, at, "usableFillDecigrams"), field(row, at, "residueDecigrams"), used));
        }

        private int field(JsonNode row, String at, String name) throws Refused {
            return whole(row.path(name), at + "/" + name);
        }

        private int whole(JsonNode value, String at) throws Refused {
            if (!value.isInt() || value.intValue() < 0 || value.intValue() > 1_000_000) {
                throw new Refused(file + " " + at + ": " + (value.isMissingNode() ? "nothing" : value)
                        + " found; a whole number from 0 to 1000000 is accepted");
            }
            return value.intValue();
        }

        private JsonNode list(JsonNode row, String at, String name) throws Refused {
            JsonNode value = row.path(name);
            if (!value.isArray()) {
                throw new Refused(file + " " + at + "/" + name + ": " + (value.isMissingNode() ? "nothing" : value)
                        + " found; a list is accepted");
            }
            return value;
        }
    }
}
