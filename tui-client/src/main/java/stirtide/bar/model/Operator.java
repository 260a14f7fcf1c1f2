package stirtide.bar.model;

/**
 * Who works at this terminal.
 *
 * @param personId person the commands are sent for, empty text when no person is signed on
 * @param mayWrite whether commands may be sent at all
 * @param signOn whether a person signs on here with a code, and whether one has
 * @param role what the service lets that person do, empty text when it did not say
 */
public record Operator(String personId, boolean mayWrite, SignOn signOn, String role) {
    /** Where a terminal stands with a service that may ask who works at it. */
    public enum SignOn {
        /** The service does not ask, or the terminal was started for one person. */
        NOT_ASKED,
        /** Nothing can be changed before a person signs on. */
        NEEDED,
        /** A person has signed on with a code. */
        DONE
    }

    /** A person at a terminal that was started for that person. */
    public Operator(String personId, boolean mayWrite) {
        this(personId, mayWrite, SignOn.NOT_ASKED, "");
    }

    /** No person, at a terminal that waits for a sign-on. */
    public static Operator signOnNeeded() {
        return new Operator("", false, SignOn.NEEDED, "");
    }

    /** A person who signed on with a code. */
    public static Operator signedOn(String personId, String role) {
        return new Operator(personId, true, SignOn.DONE, role);
    }
}
