package stirtide.planner.admin;

/** Care of a log that could not be given; the message is one sentence for people. */
final class CareFailure extends RuntimeException {
    static final int USAGE = 64;
    static final int BAD_FILE = 65;
    static final int IN_USE = 69;
    static final int SOFTWARE = 70;
    static final int NO_PLACE = 73;
    static final int DAMAGED = 74;

    private static final long serialVersionUID = 1L;

    private final int exitCode;

    CareFailure(int exitCode, String sentence) {
        super(sentence);
        this.exitCode = exitCode;
    }

    int exitCode() {
        return exitCode;
    }
}
