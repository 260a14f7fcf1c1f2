package stirtide.bar;

/** How the program ends, as sysexits.h numbers it. */
final class BarExitCode {
    static final int OK = 0;
    static final int USAGE = 64;
    static final int NO_SERVICE = 69;
    static final int INTERNAL = 70;
    static final int TERMINAL_GONE = 74;

    private BarExitCode() {}
}
