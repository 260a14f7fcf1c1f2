package stirtide.bar.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.terminal.ansi.UnixTerminal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import stirtide.bar.canvas.Glyphs;

/**
 * The terminal of the bar: no key stops, suspends or freezes it, its size is asked from {@code stty} and never from the
 * screen, and leaving restores everything exactly once, whoever asks.
 */
public final class BarTerminal extends UnixTerminal {
    private static final TerminalSize FALLBACK = new TerminalSize(80, 24);
    private static final byte[] PASTE_MARKS_ON = "\033[?2004h".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] PASTE_MARKS_OFF = "\033[?2004l".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] LEAVE_SYNC = "\033[?2026l".getBytes(StandardCharsets.US_ASCII);

    /** The few characters there are, as they are sent: to encode each anew takes most of the time of a picture. */
    private static final byte[][] CODED = new byte[Glyphs.LAST + 1][];

    private final FrameBuffer frame;
    private final boolean colorless;
    private final AtomicBoolean left = new AtomicBoolean();
    // Without an initial value: the constructor of the superclass sets it before initial values would be.
    private @Nullable String sizeAtStart;

    /**
     * Takes over the terminal of standard input and the frame's output.
     *
     * @param colorless whether not a single color code may be written
     * @throws IOException when there is no terminal
     */
    public BarTerminal(InputStream input, FrameBuffer frame, boolean colorless) throws IOException {
        super(input, frame, StandardCharsets.UTF_8, CtrlCBehaviour.TRAP);
        this.frame = frame;
        this.colorless = colorless;
        getInputDecoder().addProfile(KeyReader.profile());
    }

    // The constructor of the superclass calls this before the fields above are set.
    @Override
    protected void canonicalMode(boolean on) throws IOException {
        if (!on) {
            // The size comes with the same call: to start a program takes as long as to draw a frame.
            sizeAtStart = runSTTYCommand(
                    "-icanon", "-echo", "-isig", "-iexten", "-ixon", "icrnl", "min", "1", "time", "0", "size");
        }
    }

    @Override
    protected void keyEchoEnabled(boolean on) {
        // Part of the one stty call above; on leaving the saved settings bring it back.
    }

    @Override
    protected void keyStrokeSignalsEnabled(boolean on) {
        // As above.
    }

    @Override
    protected TerminalSize findTerminalSize() throws IOException {
        String answer = sizeAtStart == null ? runSTTYCommand("size") : sizeAtStart;
        sizeAtStart = null;
        String[] rowsAndColumns = answer.trim().split(" ");
        try {
            int rows = Integer.parseInt(rowsAndColumns[0]);
            int columns = Integer.parseInt(rowsAndColumns[1]);
            // A serial line answers 0 0.
            return rows < 1 || columns < 1 ? FALLBACK : new TerminalSize(columns, rows);
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException notASize) {
            return FALLBACK;
        }
    }

    @Override
    public void enterPrivateMode() throws IOException {
        writeToTerminal(PASTE_MARKS_ON);
        super.enterPrivateMode();
    }

    @Override
    public void exitPrivateMode() throws IOException {
        if (!left.compareAndSet(false, true)) return;
        // One lock over both steps: no frame can slip in between the restoring codes and the latch.
        synchronized (frame) {
            frame.discard();
            writeToTerminal(LEAVE_SYNC);
            writeToTerminal(PASTE_MARKS_OFF);
            super.exitPrivateMode();
            frame.flush();
            frame.shut();
        }
    }

    @Override
    protected byte[] translateCharacter(char character) {
        if (character > Glyphs.LAST) return super.translateCharacter(character);
        byte[] known = CODED[character];
        if (known == null) {
            known = super.translateCharacter(character);
            CODED[character] = known;
        }
        return known;
    }

    /** Offers text to the clipboard of the machine the terminal runs on; terminals that do not know how ignore it. */
    public void copy(String text) throws IOException {
        String coded = Base64.getEncoder().encodeToString(text.getBytes(StandardCharsets.UTF_8));
        writeToTerminal(("\033]52;c;" + coded + "\007").getBytes(StandardCharsets.US_ASCII));
    }

    @Override
    public void setForegroundColor(TextColor color) throws IOException {
        if (!colorless) super.setForegroundColor(color);
    }

    @Override
    public void setBackgroundColor(TextColor color) throws IOException {
        if (!colorless) super.setBackgroundColor(color);
    }
}
