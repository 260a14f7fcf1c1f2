package stirtide.planner.planning.floor.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A place in a JSON file from which values are read, or refused with the place they were found at.
 *
 * @param file the file
 * @param at JSON pointer to the place
 * @param node what is there
 */
record JsonPlace(Path file, String at, JsonNode node) {
    static final int MOST_MINUTES = 3000;
    static final int MOST = 1_000_000;

    JsonPlace field(String name) {
        return new JsonPlace(file, at + "/" + name, node.path(name));
    }

    List<JsonPlace> list(String name) throws FloorDayFile.Refused {
        JsonPlace place = field(name);
        if (!place.node.isArray()) {
            throw place.refused("a list");
        }
        List<JsonPlace> entries = new ArrayList<>();
        for (int i = 0; i < place.node.size(); i++) {
            entries.add(new JsonPlace(file, place.at + "/" + i, place.node.get(i)));
        }
        return entries;
    }

    int minutes(String name) throws FloorDayFile.Refused {
        return field(name).whole(MOST_MINUTES);
    }

    int count(String name) throws FloorDayFile.Refused {
        return field(name).whole(MOST);
    }

    int whole(int most) throws FloorDayFile.Refused {
        if (!node.isInt() || node.intValue() < 0 || node.intValue() > most) {
            throw refused("a whole number from 0 to " + most);
        }
        return node.intValue();
    }

    FloorDayFile.Refused refused(String accepted) {
        String found = node.isMissingNode() ? "nothing" : node.toString();
        return new FloorDayFile.Refused(file + " " + at + ": " + found + " found; " + accepted + " is accepted");
    }
}
