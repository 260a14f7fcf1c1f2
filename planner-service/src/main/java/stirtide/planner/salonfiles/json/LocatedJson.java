package stirtide.planner.salonfiles.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import stirtide.planner.salonfiles.source.SourceFile;
import stirtide.planner.salonfiles.source.TextFileReader;

/**
 * A JSON document that remembers where each of its values stands.
 *
 * @param source file it came from
 * @param root the document
 * @param places line and column by JSON pointer
 */
record LocatedJson(SourceFile source, JsonNode root, Map<String, Place> places) {
    /** Line and column, both from 1. */
    record Place(int line, int column) {}

    /** The place of the whole document; what is refused inside it is reported with line and column. */
    FieldPath top() {
        return new FieldPath(source.name(), "", (path, value, accepted) -> refuse(path.pointer(), value, accepted));
    }

    /** Refuses the value at a pointer, or where it should stand. */
    void refuse(String pointer, String value, String accepted) {
        Place place = nearest(pointer);
        String where = (pointer.isEmpty() ? "/" : pointer) + " " + TextFileReader.at(place.line(), place.column());
        source.refuse(place.line(), place.column(), where, value, accepted);
    }

    private Place nearest(String pointer) {
        String at = pointer;
        while (!places.containsKey(at) && !at.isEmpty()) at = at.substring(0, at.lastIndexOf('/'));
        return places.getOrDefault(at, new Place(1, 1));
    }
}
