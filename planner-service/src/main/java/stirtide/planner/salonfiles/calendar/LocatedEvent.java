package stirtide.planner.salonfiles.calendar;

import biweekly.component.VEvent;
import stirtide.planner.salonfiles.source.BookingLocation;
import stirtide.planner.salonfiles.source.SourceFile;

/**
 * An event of a calendar with its lines.
 *
 * @param source file
 * @param event what the library read
 * @param lines where it stands
 */
record LocatedEvent(SourceFile source, VEvent event, ContentLines.Event lines) implements BookingLocation {
    @Override
    public void refuse(Part part, String value, String accepted) {
        refuse(part.property(), value, accepted);
    }

    /** Refuses a property of the event. */
    void refuse(String property, String value, String accepted) {
        refuse(lines.lineOf(property), property, value, accepted);
    }

    /** Refuses a property on a line of the event. */
    void refuse(int line, String property, String value, String accepted) {
        source.refuse(line, 0, "line " + line + " " + property, value, accepted);
    }

    @Override
    public String where() {
        return source.name() + " line " + lines.line();
    }

    /** UID of the event, empty text when it has none. */
    String uid() {
        return event.getUid() == null || event.getUid().getValue() == null
                ? ""
                : event.getUid().getValue();
    }

    /** The same event, its problems reported to another file. */
    LocatedEvent reportedTo(SourceFile other) {
        return new LocatedEvent(other, event, lines);
    }

    /** Whether it takes place more than once. */
    boolean repeats() {
        return !lines.named("RRULE").isEmpty() || !lines.named("RDATE").isEmpty();
    }

    boolean cancelled() {
        return event.getStatus() != null && event.getStatus().isCancelled();
    }
}
