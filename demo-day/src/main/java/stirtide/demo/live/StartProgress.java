package stirtide.demo.live;

import java.io.PrintStream;

/** Shows the progress of a start on one line of a terminal. */
public final class StartProgress {
    private final PrintStream out;
    private final int all;
    private int step;

    /**
     * @param out the terminal
     * @param all number of steps
     */
    public StartProgress(PrintStream out, int all) {
        this.out = out;
        this.all = all;
    }

    /** Shows the next step. */
    public void next(String what) {
        step++;
        out.print("\rstirtide: " + step + " of " + all + ", " + what + " ...\033[K");
        out.flush();
    }

    /** Clears the line. */
    public void done() {
        out.print("\r\033[K");
        out.flush();
    }
}
