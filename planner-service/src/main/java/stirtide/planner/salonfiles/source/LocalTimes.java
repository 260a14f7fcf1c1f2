package stirtide.planner.salonfiles.source;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.List;

/** Turns local times into instants. Nothing is guessed where a clock change skips or repeats a time. */
public final class LocalTimes {
    private static final DateTimeFormatter BASIC_UTC = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'");

    /** What a local time means. */
    public sealed interface Meaning {
        /** Exactly one instant. */
        record One(Instant instant) implements Meaning {}

        /** No instant, or two. */
        record Unclear(LocalDateTime local, ZoneOffsetTransition change) implements Meaning {
            private boolean skipped() {
                return change.isGap();
            }

            /** What would be accepted in a JSON file. */
            public String accepted() {
                if (skipped()) return because() + "the next time is " + change.getDateTimeAfter();
                return because() + "one of " + local.atOffset(change.getOffsetBefore()) + " or "
                        + local.atOffset(change.getOffsetAfter());
            }

            /** What would be accepted where no offset can be written. */
            public String acceptedLocally() {
                return because() + "the next such time is "
                        + (skipped() ? change.getDateTimeAfter() : change.getDateTimeBefore());
            }

            /** What would be accepted in a calendar. */
            public String acceptedInCalendar() {
                if (skipped()) return because() + "the next time is " + change.getDateTimeAfter();
                return because() + "one of " + utc(change.getOffsetBefore()) + " or " + utc(change.getOffsetAfter());
            }

            private String utc(ZoneOffset offset) {
                return BASIC_UTC.format(local.minusSeconds(offset.getTotalSeconds()));
            }

            private String because() {
                return "a time that occurs once; clocks go from " + change.getDateTimeBefore() + " to "
                        + change.getDateTimeAfter() + ", so this one "
                        + (skipped() ? "never comes; " : "comes twice; ");
            }
        }
    }

    private LocalTimes() {}

    /** What a local time means by the rules of a zone. */
    public static Meaning meaning(LocalDateTime local, ZoneRules rules) {
        List<ZoneOffset> offsets = rules.getValidOffsets(local);
        if (offsets.size() == 1) return new Meaning.One(local.toInstant(offsets.get(0)));
        return new Meaning.Unclear(local, rules.getTransition(local));
    }

    /** The instant meant most likely, only to find out on which date an unclear time lies. */
    public static Instant near(LocalDateTime local, ZoneRules rules) {
        return local.toInstant(rules.getOffset(local));
    }
}
