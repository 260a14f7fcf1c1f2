package stirtide.planner.planning.floor.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import stirtide.planner.planning.floor.FloorDay;

/**
 * A floor day as a JSON file holds it.
 *
 * @param name name of the day
 * @param day the day
 */
public record FloorDayFile(String name, FloorDay day) {

    /** Says which file, where in it, what was found and what would be accepted. */
    public static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;

        Refused(String message) {
            super(message);
        }
    }

    /**
     * Reads a floor day.
     *
     * @param file a file
     * @return the day; empty if the file cannot be read, is not JSON or has no services
     * @throws Refused if the file is a floor day with something wrong in it
     */
    public static Optional<FloorDayFile> read(Path file) throws Refused {
        JsonNode day;
        try {
            day = new ObjectMapper().readTree(Files.readString(file));
        } catch (JsonProcessingException e) {
            return Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
        if (!day.has("services")) {
            return Optional.empty();
        }
        String name = day.path("name").isTextual()
                ? day.path("name").textValue()
                : String.valueOf(file.getFileName()).replace(".json", "");
        try {
            return Optional.of(new FloorDayFile(name, new FloorDayReader(new JsonPlace(file, "", day)).day()));
        } catch (IllegalArgumentException e) {
            throw new Refused(file + ": " + e.getMessage());
        }
    }
}
