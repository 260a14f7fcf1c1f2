package stirtide.bar.terminal;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Collects a frame and gives it to the terminal in one write. After {@link #shut()} nothing gets through any more, so
 * that a thread still drawing cannot write over the shell.
 */
public final class FrameBuffer extends OutputStream {
    // Synchronized output (DEC private mode 2026): the terminal shows what is between as a whole.
    private static final byte[] OPEN = "\033[?2026h".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] CLOSE = "\033[?2026l".getBytes(StandardCharsets.US_ASCII);
    private static final int FIRST_SIZE = 1 << 16;

    private final OutputStream raw;
    private final boolean synchronizedOutput;
    private byte[] bytes = new byte[FIRST_SIZE];
    private int length;
    private boolean closed;

    /** Frames go to {@code raw}, between the marks of synchronized output if wanted. */
    public FrameBuffer(OutputStream raw, boolean synchronizedOutput) {
        this.raw = raw;
        this.synchronizedOutput = synchronizedOutput;
    }

    @Override
    public synchronized void write(int value) {
        // Lanterna pads two-byte characters with a NUL.
        if (closed || value == 0) return;
        if (length == bytes.length) bytes = Arrays.copyOf(bytes, 2 * length);
        bytes[length++] = (byte) value;
    }

    @Override
    public synchronized void write(byte[] values, int offset, int count) {
        if (closed) return;
        if (length + count > bytes.length) bytes = Arrays.copyOf(bytes, 2 * (length + count));
        for (int i = offset; i < offset + count; i++) {
            if (values[i] != 0) bytes[length++] = values[i];
        }
    }

    @Override
    public synchronized void flush() throws IOException {
        if (closed || length == 0) return;
        byte[] frame = synchronizedOutput ? bracketed() : Arrays.copyOf(bytes, length);
        length = 0;
        raw.write(frame);
    }

    private byte[] bracketed() {
        byte[] frame = new byte[OPEN.length + length + CLOSE.length];
        System.arraycopy(OPEN, 0, frame, 0, OPEN.length);
        System.arraycopy(bytes, 0, frame, OPEN.length, length);
        System.arraycopy(CLOSE, 0, frame, OPEN.length + length, CLOSE.length);
        return frame;
    }

    /** Forgets what was collected since the last flush. */
    synchronized void discard() {
        length = 0;
    }

    /** Lets nothing through any more. */
    synchronized void shut() {
        closed = true;
        length = 0;
    }
}
