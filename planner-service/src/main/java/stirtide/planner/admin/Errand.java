package stirtide.planner.admin;

/**
 * Something the care command asks of a running service.
 *
 * @param task {@code backup}, {@code client-export} or {@code client-erase}
 * @param argument a new file for a backup, a client's reference otherwise
 */
public record Errand(String task, String argument) {
    /** Copies the whole log into a new file. */
    public static final String BACKUP = "backup";

    /** Tells what is kept of a client. */
    public static final String CLIENT_EXPORT = "client-export";

    /** Destroys what says who a client is. */
    public static final String CLIENT_ERASE = "client-erase";
}
