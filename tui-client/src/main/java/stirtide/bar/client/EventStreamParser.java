package stirtide.bar.client;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Puts the bytes of a {@code text/event-stream} together to events, as the HTML standard describes it (9.2.6, parsing an
 * event stream). A view of a day is one long line: its bytes are neither made text nor split before they are parsed.
 */
public final class EventStreamParser {
    private static final int FIRST_ROOM = 1 << 16;
    private static final byte[] DATA = "data".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] ID = "id".getBytes(StandardCharsets.US_ASCII);

    private final Listener listener;
    // To ask a buffer for byte after byte takes longer than to copy it whole.
    private byte[] piece = new byte[FIRST_ROOM];
    private byte[] line = new byte[FIRST_ROOM];
    private int lineLength;
    private byte[] data = new byte[FIRST_ROOM];
    private int dataLength;
    private boolean hasData;
    private boolean afterReturn;
    private String id = "";

    EventStreamParser(Listener listener) {
        this.listener = listener;
    }

    /** Called with what is read from a stream. */
    public interface Listener {
        /** An event: the first {@code length} bytes are its data; they are valid until this returns. */
        void event(byte[] bytes, int length);

        /** A comment, which servers send to show that they are still there. */
        void comment();
    }

    /** Id of the last event, empty text before one had an id. */
    String lastId() {
        return id;
    }

    /** Takes the next bytes of the stream. */
    void take(ByteBuffer bytes) {
        int count = bytes.remaining();
        if (count > piece.length) piece = new byte[count];
        bytes.get(piece, 0, count);
        int from = 0;
        while (from < count) {
            int end = from;
            while (end < count && piece[end] != '\n' && piece[end] != '\r') end++;
            keep(from, end);
            if (end < count) lineEnd(piece[end++]);
            from = end;
        }
    }

    private void keep(int from, int end) {
        if (from == end) return;
        afterReturn = false;
        int length = lineLength + end - from;
        if (length > line.length) line = Arrays.copyOf(line, Math.max(2 * line.length, length));
        System.arraycopy(piece, from, line, lineLength, end - from);
        lineLength = length;
    }

    // A line ends with a line feed, a carriage return, or both.
    private void lineEnd(byte end) {
        boolean secondHalf = end == '\n' && afterReturn;
        afterReturn = end == '\r';
        if (secondHalf) return;
        line();
        lineLength = 0;
    }

    private void line() {
        if (lineLength == 0) {
            if (hasData) listener.event(data, dataLength);
            hasData = false;
            dataLength = 0;
        } else if (line[0] == ':') {
            listener.comment();
        } else {
            field();
        }
    }

    private void field() {
        int colon = 0;
        while (colon < lineLength && line[colon] != ':') colon++;
        int from = Math.min(lineLength, colon + 1);
        if (from < lineLength && line[from] == ' ') from++;
        if (Arrays.equals(line, 0, colon, DATA, 0, DATA.length)) addData(from);
        else if (Arrays.equals(line, 0, colon, ID, 0, ID.length))
            id = new String(line, from, lineLength - from, StandardCharsets.UTF_8);
    }

    private void addData(int from) {
        int length = lineLength - from;
        int room = dataLength + length + 1;
        if (room > data.length) data = Arrays.copyOf(data, Math.max(2 * data.length, room));
        if (hasData) data[dataLength++] = '\n';
        System.arraycopy(line, from, data, dataLength, length);
        dataLength += length;
        hasData = true;
    }
}
