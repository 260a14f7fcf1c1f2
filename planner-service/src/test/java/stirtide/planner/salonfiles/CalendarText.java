package stirtide.planner.salonfiles;

/** Builds calendars for tests. */
final class CalendarText {
    private static final String FIELDS =
            "CATEGORIES:half-foils\nLOCATION:Chair 1\nDESCRIPTION:length: long\\ndensity: thick\n";

    private CalendarText() {}

    /** A calendar of some components. */
    static String calendar(String... components) {
        return "BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//test//EN\n" + String.join("", components) + "END:VCALENDAR\n";
    }

    /** An event with the given lines, first of them its start. */
    static String event(String uid, String... lines) {
        return "BEGIN:VEVENT\nUID:" + uid + "\nDTSTAMP:20270501T080000Z\n" + String.join("\n", lines)
                + "\nEND:VEVENT\n";
    }

    /** A service on chair 1 with the given lines. */
    static String service(String uid, String... lines) {
        return event(uid, String.join("\n", lines) + "\n" + FIELDS.strip());
    }
}
