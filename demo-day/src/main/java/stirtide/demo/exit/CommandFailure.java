package stirtide.demo.exit;

/**
 * The end of a command that did not do what was asked, as the shell sees it.
 *
 * <p>Codes: 64 wrong usage, 65 bad input, 69 the service or the terminal cannot be had, 70 a fault of ours.
 */
public final class CommandFailure extends RuntimeException {
    /** Wrong usage. */
    public static final int USAGE = 64;
    /** Bad input. */
    public static final int BAD_INPUT = 65;
    /** Something needed cannot be had. */
    public static final int UNAVAILABLE = 69;
    /** A fault of ours. */
    public static final int FAULT = 70;

    private static final long serialVersionUID = 1;

    private final int code;

    /**
     * @param code exit code
     * @param message lines for standard error
     */
    public CommandFailure(int code, String message) {
        super(message);
        this.code = code;
    }

    /** Exit code. */
    public int code() {
        return code;
    }
}
