package stirtide.planner.hostile;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/** Twenty commands a second and a listener that reads all of them: what a salon does, only faster. */
final class SteadyWork implements AutoCloseable {
    private static final String DAY = "/days/quay-house/2027-03-09";
    private static final long PAUSE_NANOS = 50_000_000L;
    private static final int MOST_SECONDS = 30;

    private final Wire wire;
    private final Socket line;
    private final LinkedBlockingQueue<Long> seen = new LinkedBlockingQueue<>();
    private int number;

    SteadyWork(int port) throws IOException {
        wire = new Wire(port);
        line = new Socket("127.0.0.1", port);
        line.getOutputStream().write(RequestText.of("GET", DAY + "/live", "", new byte[0]));
        Thread reader = new Thread(this::read, "steady listener");
        reader.setDaemon(true);
        reader.start();
    }

    private void read() {
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(line.getInputStream(), StandardCharsets.UTF_8))) {
            for (String text = lines.readLine(); text != null; text = lines.readLine())
                if (text.startsWith("id: ")) seen.add(Long.valueOf(text.substring(4)));
        } catch (IOException closed) {
            seen.add(Long.MAX_VALUE);
        }
    }

    /** Works for so long; milliseconds until each command was answered, and until the listener had seen it. */
    Map<String, List<Long>> run(int seconds) throws IOException, InterruptedException {
        List<Long> answered = Collections.synchronizedList(new ArrayList<>());
        List<Long> heard = new ArrayList<>();
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        while (System.nanoTime() < until) {
            long began = System.nanoTime();
            Answer answer = wire.ask(command(), false).orElseThrow();
            answered.add((System.nanoTime() - began) / 1_000_000);
            if (answer.status() != 200) throw new IOException("a command was not taken: " + answer.body());
            long revision = Long.parseLong(answer.body().replaceFirst(".*\"lastRevision\":([0-9]+).*", "$1"));
            Long newest = 0L;
            while (newest != null && newest < revision) newest = seen.poll(MOST_SECONDS, TimeUnit.SECONDS);
            if (newest == null || newest == Long.MAX_VALUE) throw new IOException("the steady listener was cut off");
            heard.add((System.nanoTime() - began) / 1_000_000);
            LockSupport.parkNanos(PAUSE_NANOS);
        }
        return Map.of("command to answer", answered, "command to listener", heard);
    }

    private byte[] command() {
        number++;
        String body =
                "{\"commandId\":\"swatch-" + number + "\",\"actor\":\"mika\",\"command\":{\"type\":\"RecordSwatch\","
                        + "\"swatch\":{\"on\":\"2027-03-01\",\"lightenerId\":\"powder\",\"ratioThousandths\":"
                        + (1500 + number % 500)
                        + ",\"strengthHundredths\":600,\"minutes\":30,\"levelBeforeTenths\":50,\"levelAfterTenths\":80}}}";
        return RequestText.of("POST", DAY + "/commands", "", body.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public void close() throws IOException {
        line.close();
        wire.close();
    }
}
