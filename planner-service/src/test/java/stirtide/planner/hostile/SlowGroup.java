package stirtide.planner.hostile;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Clients that are slow in one way. One thread drips for all of them. */
final class SlowGroup implements AutoCloseable {
    private static final String DAY = "/days/quay-house/2027-03-09";
    private static final int SMALL_BUFFER = 2 * 1024;

    /** In which way they are slow. */
    enum Way {
        LISTENERS_THAT_READ_NOTHING("GET " + DAY + "/live HTTP/1.1\r\nHost: localhost\r\n\r\n", ""),
        EVENT_LISTENERS_THAT_READ_NOTHING(
                "GET " + DAY + "/events HTTP/1.1\r\nHost: localhost\r\nAccept: text/event-stream\r\n\r\n", ""),
        HEADERS_DROP_BY_DROP("GET " + DAY + " HTTP/1.1\r\nHost: localhost\r\nX-Long: ", "x"),
        BODIES_DROP_BY_DROP(
                "POST /days HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 9999\r\n\r\n{",
                " "),
        QUESTIONS_WITHOUT_READING(
                "GET " + DAY + " HTTP/1.1\r\nHost: localhost\r\n\r\n",
                ("GET " + DAY + " HTTP/1.1\r\nHost: localhost\r\n\r\n").repeat(30));

        private final String first;
        private final String drop;

        Way(String first, String drop) {
            this.first = first;
            this.drop = drop;
        }
    }

    private final Way way;
    private final int number;
    private final long began = System.nanoTime();
    private final List<Socket> open = new ArrayList<>();
    private final ScheduledExecutorService dripping = Executors.newSingleThreadScheduledExecutor();
    private long lastSeconds;

    SlowGroup(Way way, int port, int number) throws IOException {
        this.way = way;
        this.number = number;
        for (int count = 0; count < number; count++) {
            Socket socket = new Socket();
            socket.setReceiveBufferSize(SMALL_BUFFER);
            socket.connect(new InetSocketAddress("127.0.0.1", port));
            socket.getOutputStream().write(way.first.getBytes(StandardCharsets.US_ASCII));
            open.add(socket);
        }
        dripping.scheduleAtFixedRate(this::drip, 1, 1, TimeUnit.SECONDS);
    }

    /** A line break between requests is allowed and shows whether the other side is still there. */
    private synchronized void drip() {
        byte[] drop = (way.drop.isEmpty() ? "\r\n" : way.drop).getBytes(StandardCharsets.US_ASCII);
        open.removeIf(socket -> {
            try {
                socket.getOutputStream().write(drop);
                return false;
            } catch (IOException closed) {
                lastSeconds = (System.nanoTime() - began) / 1_000_000_000L;
                return true;
            }
        });
    }

    synchronized boolean allClosed() {
        return open.isEmpty();
    }

    @Override
    public synchronized String toString() {
        return way.name().toLowerCase(Locale.ROOT).replace('_', ' ') + ": " + (number - open.size()) + " of " + number
                + " closed by the service" + (open.size() < number ? ", the last after " + lastSeconds + " s" : "");
    }

    @Override
    public void close() throws IOException {
        dripping.shutdownNow();
        for (Socket socket : open) socket.close();
    }
}
