package stirtide.planner.salonfiles.source;

/** Where a booking stands in its file, so that its problems can name the place. */
public interface BookingLocation {
    /** The parts of a booking, with their names in JSON and in a calendar. */
    enum Part {
        UID("bookingUid", "UID"),
        MENU("menuId", "CATEGORIES"),
        CHAIR("chair", "LOCATION"),
        START("start", "DTSTART"),
        CLIENT("clientRef", "DESCRIPTION"),
        LENGTH("length", "DESCRIPTION"),
        DENSITY("density", "DESCRIPTION"),
        STYLIST("stylistId", "DESCRIPTION"),
        EARLIER("earlierMinutes", "DESCRIPTION"),
        LATER("laterMinutes", "DESCRIPTION"),
        STRAND_TEST("strandTest", "DESCRIPTION"),
        PATCH_TEST("patchTest", "DESCRIPTION"),
        FORMULA("asLastTime", "DESCRIPTION");

        private final String jsonKey;
        private final String property;

        Part(String jsonKey, String property) {
            this.jsonKey = jsonKey;
            this.property = property;
        }

        /** Key of the part in {@code bookings.json}. */
        public String jsonKey() {
            return jsonKey;
        }

        /** Property of a calendar event that holds the part. */
        public String property() {
            return property;
        }
    }

    /** Refuses a part of the booking. */
    void refuse(Part part, String value, String accepted);

    /** File and line or pointer, for a problem that names two places. */
    String where();
}
