package stirtide.planner.salonfiles.json;

import java.util.ArrayList;
import java.util.List;

/**
 * The place of a field in a file of the salon. Rules report through it what they do not accept.
 *
 * @param file file name relative to the folder
 * @param pointer JSON pointer of the field (RFC 6901)
 * @param findings receives what is not accepted
 */
public record FieldPath(String file, String pointer, Findings findings) {
    /** Receives what rules do not accept. */
    @FunctionalInterface
    public interface Findings {
        /**
         * A value is not accepted.
         *
         * @param path where it stands
         * @param value the value as people read it
         * @param accepted what would be accepted instead
         */
        void add(FieldPath path, String value, String accepted);
    }

    /** A value with its place. */
    public record Located<T>(T value, FieldPath path) {}

    /** A field of the object at this place. */
    public FieldPath at(String key) {
        return new FieldPath(file, pointer + step(key), findings);
    }

    /** The values of a list that is a field of the object at this place, in their order. */
    public <T> List<Located<T>> each(String key, List<T> values) {
        List<Located<T>> located = new ArrayList<>();
        for (T value : values) located.add(new Located<>(value, at(key).at(String.valueOf(located.size()))));
        return located;
    }

    /** Refuses the value at this place. */
    public void refuse(String value, String accepted) {
        findings.add(this, value, accepted);
    }

    /** Refuses a field of the object at this place. */
    public void refuse(String key, String value, String accepted) {
        at(key).refuse(value, accepted);
    }

    /** File and pointer, for a problem that names two places. */
    public String where() {
        return file + " " + pointer;
    }

    /** A key as a step of a JSON pointer. */
    static String step(String key) {
        return "/" + key.replace("~", "~0").replace("/", "~1");
    }
}
