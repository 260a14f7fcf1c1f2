package stirtide.planner.cli;

import stirtide.planner.eventlog.LogFailure;

/** A program cannot do what it was started for. The message is one sentence for the user. */
public final class CommandException extends RuntimeException {
    /** Options or arguments are not accepted (EX_USAGE of sysexits.h). */
    public static final int USAGE = 64;

    /** Input files, or what they name, are not accepted (EX_DATAERR). */
    public static final int BAD_INPUT = 65;

    /** The log or a port is in use (EX_UNAVAILABLE). */
    public static final int UNAVAILABLE = 69;

    /** The program itself is defective (EX_SOFTWARE). */
    public static final int SOFTWARE = 70;

    /** A file or folder is missing, not empty, or cannot be created, read or written (EX_CANTCREAT). */
    public static final int CANNOT_CREATE = 73;

    /** The log or a backup is damaged or cannot be read (EX_IOERR). */
    public static final int LOG_BROKEN = 74;

    private static final long serialVersionUID = 1L;

    private final int exitCode;

    /** A failure with the exit code of the process. */
    public CommandException(int exitCode, String sentence) {
        super(sentence);
        this.exitCode = exitCode;
    }

    /** The failure of a log, with the exit code of its kind. */
    public static CommandException of(LogFailure failure) {
        int code = switch (failure.kind()) {
            case IN_USE -> UNAVAILABLE;
            case NO_PLACE -> CANNOT_CREATE;
            case FULL, UNAVAILABLE, READ_ONLY, DAMAGED -> LOG_BROKEN;
        };
        return new CommandException(code, String.valueOf(failure.getMessage()));
    }

    /** Exit code of the process, one of the constants of this class. */
    public int exitCode() {
        return exitCode;
    }
}
