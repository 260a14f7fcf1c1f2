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

        public final String jsonKey;
        public final String property;

        Part(String jsonKey, String property) {
            this.jsonKey = jsonKey;
            this.property = property;
        }
    }

    /** Refuses a part of the booking. */
    public void refuse(Part part, String value, String accepted);

    /** File and line or pointer, for a problem that names two places. */
    String where();
}
