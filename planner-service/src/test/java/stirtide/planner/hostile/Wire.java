package stirtide.planner.hostile;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** One connection that sends any bytes at all and reads what comes back. Opens itself anew when it was closed. */
final class Wire implements AutoCloseable {
    private static final int MOST_MILLIS = 30_000;
    private static final int MOMENT_MILLIS = 40;

    private final int port;
    private Socket socket = new Socket();
    private InputStream in = InputStream.nullInputStream();

    Wire(int port) {
        this.port = port;
    }

    /** The service answered something that is no HTTP. */
    static final class NoHttp extends IOException {
        private static final long serialVersionUID = 1L;

        NoHttp(String what) {
            super(what);
        }
    }

    /**
     * Sends a request and gives the answer; empty when the connection ended without one.
     *
     * @throws NoHttp when what came back is no HTTP
     * @throws java.net.SocketTimeoutException when nothing came for long
     */
    Optional<Answer> ask(byte[] request, boolean head) throws IOException {
        boolean used = socket.isConnected() && !socket.isClosed();
        Optional<Answer> answer = askOnce(request, head);
        // A kept connection may have been closed by the answer before; that is no answer to this request.
        return answer.isEmpty() && used ? askOnce(request, head) : answer;
    }

    private Optional<Answer> askOnce(byte[] request, boolean head) throws IOException {
        if (!socket.isConnected() || socket.isClosed()) connect();
        try {
            socket.getOutputStream().write(request);
            socket.getOutputStream().flush();
        } catch (IOException refusedWhileSending) {
            // The answer may have come before the end of the request was sent.
        }
        try {
            return read(head);
        } catch (NoHttp | java.net.SocketTimeoutException wrong) {
            close();
            throw wrong;
        } catch (IOException cut) {
            close();
            return Optional.empty();
        }
    }

    /**
     * Sends bytes and gives all that comes back until the service closes. When nothing comes for a moment it is told that
     * no more bytes follow, for else it would rightly wait for them.
     */
    String exchange(byte[] bytes) throws IOException {
        connect();
        try {
            socket.getOutputStream().write(bytes);
            socket.getOutputStream().flush();
            String first = firstBytes();
            socket.shutdownOutput();
            return first + new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        } catch (java.net.SocketTimeoutException late) {
            throw late;
        } catch (IOException cut) {
            return "";
        } finally {
            close();
        }
    }

    private String firstBytes() throws IOException {
        socket.setSoTimeout(MOMENT_MILLIS);
        ByteArrayOutputStream first = new ByteArrayOutputStream();
        try {
            for (int next = in.read(); next >= 0; next = in.read()) first.write(next);
        } catch (java.net.SocketTimeoutException nothingYet) {
            // Either it waits for more, or the connection stays open after a whole answer.
        }
        socket.setSoTimeout(MOST_MILLIS);
        return first.toString(StandardCharsets.ISO_8859_1);
    }

    private void connect() throws IOException {
        close();
        socket = new Socket(InetAddress.getByName("127.0.0.1"), port);
        socket.setSoTimeout(MOST_MILLIS);
        socket.setTcpNoDelay(true);
        in = new BufferedInputStream(socket.getInputStream());
    }

    private Optional<Answer> read(boolean head) throws IOException {
        String line = line();
        if (line.isEmpty()) {
            close();
            return Optional.empty();
        }
        if (!line.matches("HTTP/1\\.[01] [0-9]{3} .*")) throw new NoHttp(line);
        int status = Integer.parseInt(line.substring(9, 12));
        Map<String, String> headers = new TreeMap<>();
        for (line = line(); !line.isEmpty(); line = line()) {
            int colon = line.indexOf(':');
            if (colon < 1) throw new NoHttp("a header without a colon: " + line);
            headers.put(
                    line.substring(0, colon).toLowerCase(Locale.ROOT),
                    line.substring(colon + 1).trim());
        }
        if (status == 100) return read(head);
        String body = head || status == 204 || status == 304 ? "" : body(headers);
        if (headers.getOrDefault("connection", "").equals("close")) close();
        return Optional.of(new Answer(status, headers, body, head));
    }

    private String body(Map<String, String> headers) throws IOException {
        if (headers.containsKey("content-length"))
            return text(in.readNBytes(Integer.parseInt(headers.get("content-length"))));
        if ("chunked".equals(headers.get("transfer-encoding"))) return chunks();
        String rest = text(in.readAllBytes());
        close();
        return rest;
    }

    /** A stream has no end: what comes first is enough. */
    private String chunks() throws IOException {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        for (int size = chunk(whole); size > 0; size = chunk(whole)) {
            if (!text(whole.toByteArray()).startsWith("retry:")) continue;
            if (text(whole.toByteArray()).contains("\ndata:") || in.available() == 0) {
                close();
                break;
            }
        }
        return text(whole.toByteArray());
    }

    private int chunk(ByteArrayOutputStream whole) throws IOException {
        int size = Integer.parseInt(line(), 16);
        whole.write(in.readNBytes(size));
        line();
        return size;
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private String line() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int next = in.read(); next >= 0 && next != '\n'; next = in.read()) if (next != '\r') line.write(next);
        return line.toString(StandardCharsets.ISO_8859_1);
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
