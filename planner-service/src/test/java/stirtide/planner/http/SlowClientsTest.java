package stirtide.planner.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Vertx;
import io.vertx.core.VertxOptions;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clients that read nothing, or send drop by drop, are let go; those beside them notice nothing. */
class SlowClientsTest {
    private static final String DAY = "/days/" + IdleDayOperations.DAY;
    private static final int SMALL_BUFFER = 2 * 1024;

    /** More than the buffers of both ends of a line hold. */
    private static final int CHANGES = 300;

    private static final int SLOW = 12;

    @TempDir
    Path folder;

    private final Vertx vertx = Vertx.vertx(new VertxOptions().setEventLoopPoolSize(1));
    private final PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final List<Socket> sockets = new ArrayList<>();
    private final BusyDesk desk = new BusyDesk();
    private int port;

    @BeforeEach
    void start() throws Exception {
        HttpLimits limits = new HttpLimits(200, 200, 50, 50, 600, 1, 300, 25_000, 40);
        port = TestServers.start(vertx, TestSecurity.with(folder, limits), desk, registry)
                .port();
    }

    @AfterEach
    void stop() throws Exception {
        for (Socket socket : sockets) socket.close();
        vertx.close().await(20, TimeUnit.SECONDS);
    }

    /** A day of 40,000 letters that changes when it is told to. */
    private static final class BusyDesk extends IdleDayOperations {
        private final List<Runnable> listeners = new ArrayList<>();
        private final String letters = "x".repeat(40_000);
        private long revision = 3;

        @Override
        public Optional<ShownDay> show(String day, View view) {
            return Optional.of(new ShownDay(revision, "{\"revision\":" + revision + ",\"x\":\"" + letters + "\"}"));
        }

        @Override
        public Runnable listen(String day, Runnable listener) {
            listeners.add(listener);
            return () -> listeners.remove(listener);
        }

        void change() {
            revision++;
            List.copyOf(listeners).forEach(Runnable::run);
        }
    }

    private Socket send(String request) throws IOException {
        Socket socket = new Socket();
        socket.setReceiveBufferSize(SMALL_BUFFER);
        socket.connect(new InetSocketAddress("127.0.0.1", port));
        socket.setSoTimeout(20_000);
        sockets.add(socket);
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    /** Sends it and reads the first word of the answer, so that it is certain to have begun. */
    private Socket begin(String request) throws IOException {
        Socket socket = send(request);
        assertThat(new String(socket.getInputStream().readNBytes(12), StandardCharsets.US_ASCII))
                .isEqualTo("HTTP/1.1 200");
        return socket;
    }

    private static byte[] rest(Socket socket) {
        try {
            return socket.getInputStream().readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String get(String path) {
        return "GET " + path + " HTTP/1.1\r\nHost: localhost\r\n\r\n";
    }

    private BufferedReader lines(Socket socket) throws IOException {
        return new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
    }

    private static void readUntil(BufferedReader lines, String wanted) throws IOException {
        for (String line = lines.readLine(); !line.equals(wanted); line = lines.readLine())
            assertThat(line).as("the line ended before " + wanted).isNotNull();
    }

    private double listeners() {
        return registry.get("stirtide.listeners").gauge().value();
    }

    @Test
    void listeners_that_read_nothing_hold_nobody_back_and_are_let_go() throws Exception {
        for (int count = 0; count < SLOW; count++) begin(get(DAY + "/live"));
        BufferedReader good = lines(begin(get(DAY + "/live")));
        for (int change = 1; change <= CHANGES; change++) {
            vertx.runOnContext(now -> desk.change());
            readUntil(good, "id: " + (3 + change));
        }
        while (listeners() > 1) assertThat(good.readLine()).isNotNull();
        vertx.runOnContext(now -> desk.change());
        readUntil(good, "id: " + (4 + CHANGES));
    }

    @Test
    void listeners_that_read_nothing_are_let_go_even_when_nothing_happens() throws Exception {
        for (int count = 0; count < SLOW; count++) {
            begin(get(DAY + "/live"));
            begin("GET " + DAY + "/events HTTP/1.1\r\nHost: localhost\r\nAccept: text/event-stream\r\n\r\n");
        }
        // Last, for it too reads nothing while the others are begun.
        BufferedReader good = lines(begin(get(DAY + "/live")));
        while (listeners() > 1) assertThat(good.readLine()).isNotNull();
        vertx.runOnContext(now -> desk.change());
        readUntil(good, "id: 4");
    }

    @Test
    void a_connection_on_which_nothing_more_is_asked_is_closed_but_not_one_that_waits_for_its_answer()
            throws Exception {
        BufferedReader waiting = lines(begin(get(DAY + "/live")));
        Socket asking = begin(get("/days"));
        CompletableFuture<byte[]> closed = CompletableFuture.supplyAsync(() -> rest(asking));
        while (!closed.isDone()) assertThat(waiting.readLine()).isNotNull();
        assertThat(closed.join()).isNotEmpty();
        vertx.runOnContext(now -> desk.change());
        readUntil(waiting, "id: 4");
    }

    @Test
    void a_client_that_asks_again_and_again_and_reads_nothing_is_cut_off() throws Exception {
        Socket greedy = send(get(DAY));
        byte[] many = get(DAY).repeat(50).getBytes(StandardCharsets.US_ASCII);
        boolean cut = false;
        for (int times = 0; times < 2_000 && !cut; times++) {
            try {
                greedy.getOutputStream().write(many);
            } catch (IOException closed) {
                cut = true;
            }
        }
        assertThat(cut).isTrue();
        readUntil(lines(send(get("/days"))), "HTTP/1.1 200 OK");
    }

    @Test
    void headers_bodies_and_readers_that_are_slow_by_the_dozen_are_closed_and_the_others_answered() throws Exception {
        List<Socket> slow = new ArrayList<>();
        for (int count = 0; count < SLOW; count++) {
            slow.add(send("GET /days HTTP/1.1\r\nHost: loc"));
            slow.add(send("POST /days HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                    + "Content-Length: 100\r\n\r\n{\"comm"));
            slow.add(send(get(DAY)));
            readUntil(lines(send(get("/days"))), "HTTP/1.1 200 OK");
        }
        // Each ends: with an answer or without one, the other side closes.
        for (Socket socket : slow)
            assertThat(socket.getInputStream().readAllBytes()).isNotNull();
    }
}
