package stirtide.planner.salonfiles.calendar;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stirtide.planner.salonfiles.source.SourceFile;

/**
 * The lines of a calendar: which event begins where, and which property stands on which line. The library that reads the
 * calendar keeps no line numbers and mends broken structure; here a broken structure is refused.
 */
final class ContentLines {
    private static final Pattern NAME = Pattern.compile("([A-Za-z0-9-]+)([;:].*)?", Pattern.DOTALL);
    private static final Pattern ZONE = Pattern.compile(";TZID=(?:\"([^\"]*)\"|([^\";:]*))", Pattern.CASE_INSENSITIVE);

    /**
     * A property of an event.
     *
     * @param line its line
     * @param name its name in capitals
     * @param zone its TZID, empty when it has none
     */
    record Property(int line, String name, Optional<String> zone) {}

    /**
     * One event.
     *
     * @param line its first line
     * @param properties its own properties, in their order, and its END
     */
    record Event(int line, List<Property> properties) {
        /** Properties of a name, in their order. */
        List<Property> named(String name) {
            return properties.stream().filter(each -> each.name().equals(name)).toList();
        }

        /** Whether a line of the file lies inside. */
        boolean holds(int fileLine) {
            return line <= fileLine && fileLine <= lineOf("END");
        }

        /** Line of a property, or of the event when it has no such property. */
        int lineOf(String name) {
            return named(name).stream().map(Property::line).findFirst().orElse(line);
        }
    }

    private final SourceFile source;
    private final Deque<String> open = new ArrayDeque<>();
    private final List<Event> events = new ArrayList<>();
    private int line;

    private ContentLines(SourceFile source) {
        this.source = source;
    }

    /** The events in the order written, or empty after the broken structure was reported. */
    static Optional<List<Event>> read(String text, SourceFile source) {
        return new ContentLines(source).read(text);
    }

    private Optional<List<Event>> read(String text) {
        StringBuilder unfolded = new StringBuilder();
        int at = 1;
        String[] lines = text.split("\r\n|\r|\n", -1);
        for (int i = 0; i < lines.length; i++) {
            if (lines[i].startsWith(" ") || lines[i].startsWith("\t")) {
                unfolded.append(lines[i], 1, lines[i].length());
                continue;
            }
            if (!take(unfolded.toString(), at)) return Optional.empty();
            unfolded = new StringBuilder(lines[i]);
            at = i + 1;
        }
        if (!take(unfolded.toString(), at)) return Optional.empty();
        line = lines.length;
        if (!open.isEmpty()) return broken("(the file ends here)", "END:" + open.peek() + " first");
        return Optional.of(List.copyOf(events));
    }

    private boolean take(String text, int at) {
        line = at;
        if (text.isBlank()) return true;
        Matcher matcher = NAME.matcher(text);
        if (!matcher.matches() || matcher.group(2) == null) {
            broken(text, "a property such as SUMMARY:text (RFC 5545)");
            return false;
        }
        String name = matcher.group(1).toUpperCase(Locale.ROOT);
        String rest = matcher.group(2);
        if (name.equals("BEGIN")) return begin(rest.substring(1).strip().toUpperCase(Locale.ROOT));
        if (name.equals("END")) return end(rest.substring(1).strip().toUpperCase(Locale.ROOT));
        if (open.isEmpty()) {
            broken(text, "BEGIN:VCALENDAR first");
            return false;
        }
        if (open.peek().equals("VEVENT")) {
            events.get(events.size() - 1).properties().add(new Property(line, name, zone(rest)));
        }
        return true;
    }

    private boolean begin(String component) {
        boolean calendar = component.equals("VCALENDAR");
        if (calendar != open.isEmpty() || component.equals("VEVENT") && open.size() != 1) {
            broken("BEGIN:" + component, open.isEmpty() ? "BEGIN:VCALENDAR first" : "END:" + open.peek() + " first");
            return false;
        }
        open.push(component);
        if (component.equals("VEVENT")) events.add(new Event(line, new ArrayList<>()));
        return true;
    }

    private boolean end(String component) {
        if (component.equals(open.peek())) {
            open.pop();
            if (component.equals("VEVENT")) {
                events.get(events.size() - 1).properties().add(new Property(line, "END", Optional.empty()));
            }
            return true;
        }
        broken("END:" + component, open.isEmpty() ? "BEGIN:VCALENDAR first" : "END:" + open.peek() + " first");
        return false;
    }

    private Optional<List<Event>> broken(String value, String accepted) {
        source.refuse(line, 0, "line " + line, value, accepted);
        return Optional.empty();
    }

    /** TZID among the parameters; the value after the first unquoted colon is none of them. */
    private static Optional<String> zone(String rest) {
        Matcher matcher = ZONE.matcher(parameters(rest));
        if (!matcher.find()) return Optional.empty();
        return Optional.of(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }

    private static String parameters(String rest) {
        boolean quoted = false;
        for (int i = 0; i < rest.length(); i++) {
            if (rest.charAt(i) == '"') quoted = !quoted;
            else if (rest.charAt(i) == ':' && !quoted) return rest.substring(0, i);
        }
        return rest;
    }
}
