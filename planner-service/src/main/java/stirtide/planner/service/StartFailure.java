package stirtide.planner.service;

/** The service cannot start. The message is for people; the exit code is of the set of sysexits.h. */
public final class StartFailure extends RuntimeException {
    /** Wrong options. */
    public static final int USAGE = 64;

    /** The salon's files are not accepted. */
    public static final int BAD_INPUT = 65;

    /** Something the service needs is taken: the log or a port. */
    public static final int UNAVAILABLE = 69;

    /** The data folder cannot be made or used. */
    public static final int CANNOT_CREATE = 73;

    /** The log cannot be read or is damaged. */
    public static final int LOG_BROKEN = 74;

    private static final long serialVersionUID = 1L;

    private final int exitCode;

    /** A failure with the code the process ends with. */
    public StartFailure(int exitCode, String sentence) {
        super(sentence);
        this.exitCode = exitCode;
    }

    /** Code the process ends with. */
    public int exitCode() {
        return exitCode;
    }
}
