package stirtide.demo.live;

import java.io.PrintStream;

/** Tells on one line how far a start is, so that nobody waits before an empty screen. */
public final class StartProgress {
    private final PrintStream out;
    private final int all;
    private int step;

    /** Tells on {@code out}, a terminal, of so many steps. */
    public StartProgress(PrintStream out, int all) {
        this.out = out;
        this.all = all;
    }

    /** The next step begins. */
    public void next(String what) {
        step++;
        out.print("\rstirtide: " + step + " of " + all + ", " + what + " ...\033[K");
        out.flush();
    }

    /** Everything is there: the line goes, the terminal takes over. */
    public void done() {
        out.print("\r\033[K");
        out.flush();
    }
}
