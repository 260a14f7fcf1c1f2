package stirtide.bar.link;

import java.util.Optional;

/** Puts lines of a {@code text/event-stream} together to events, as the HTML standard describes it. */
final class EventLines {
    private final StringBuilder data = new StringBuilder();
    private String id = "";
    private boolean hasData;

    /** Takes a line without its end; the answer is the data of an event this line completes. */
    Optional<String> take(String line) {
        if (line.isEmpty()) return complete();
        int colon = line.indexOf(':');
        String name = colon < 0 ? line : line.substring(0, colon);
        String value = colon < 0 ? "" : line.substring(colon + 1);
        if (value.startsWith(" ")) value = value.substring(1);
        if (name.equals("id")) id = value;
        if (name.equals("data")) {
            if (hasData) data.append('\n');
            data.append(value);
            hasData = true;
        }
        return Optional.empty();
    }

    private Optional<String> complete() {
        Optional<String> event = hasData ? Optional.of(data.toString()) : Optional.empty();
        data.setLength(0);
        hasData = false;
        return event;
    }

    /** Id of the last event, empty text before one had an id. */
    String lastId() {
        return id;
    }
}
