package stirtide.bar.client;

/** The service's answer to a command. */
public sealed interface CommandAnswer {
    /**
     * The command is stored.
     *
     * @param lastRevision revision of the last event it caused, 0 when the answer does not tell
     */
    record Accepted(long lastRevision) implements CommandAnswer {}

    /**
     * The command is rejected and will be rejected again.
     *
     * @param sentence the service's reason
     */
    record Rejected(String sentence) implements CommandAnswer {}

    /**
     * Not decided: the service was unreachable, overloaded or did not know the sender. Sending the same command with the
     * same id again is safe.
     *
     * @param reason why, for people
     */
    record Undecided(String reason) implements CommandAnswer {}
}
