package stirtide.planner.hostile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stirtide.planner.service.ServiceMain;

/** The service as a process, whose output goes to a file and is searched at the end. */
final class HostileService implements AutoCloseable {
    private static final Pattern READY =
            Pattern.compile("ready on http://127\\.0\\.0\\.1:(\\d+) \\(health and metrics on port (\\d+)\\)");
    private static final int MOST_MILLIS = 60_000;

    private final Process process;
    private final Path output;
    private final int port;
    private final int managementPort;

    private HostileService(Process process, Path output, int port, int managementPort) {
        this.process = process;
        this.output = output;
        this.port = port;
        this.managementPort = managementPort;
    }

    static HostileService start(Path data, Path output) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "--enable-native-access=ALL-UNNAMED",
                        "-Xmx512m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        ServiceMain.class.getName(),
                        "--data",
                        data.toString(),
                        "--port",
                        "0",
                        "--management-port",
                        "0",
                        "--clock",
                        "driven",
                        "--clock-start",
                        "2027-03-09T07:00:00Z",
                        "--plan-rounds",
                        "1")
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        long until = System.nanoTime() + MOST_MILLIS * 1_000_000L;
        while (System.nanoTime() < until && process.isAlive()) {
            Matcher ready = READY.matcher(Files.readString(output, StandardCharsets.UTF_8));
            if (ready.find())
                return new HostileService(
                        process, output, Integer.parseInt(ready.group(1)), Integer.parseInt(ready.group(2)));
            Thread.onSpinWait();
        }
        process.destroyForcibly();
        throw new IOException("the service did not start: " + Files.readString(output));
    }

    int port() {
        return port;
    }

    int managementPort() {
        return managementPort;
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** Lines of its own output that should not be there: personal data, failures it did not expect. */
    List<String> wrongLines() throws IOException {
        Pattern wrong = Pattern.compile("-canary|stir_|stis_|Exception|\\tat |ERROR|micrometer");
        return Files.readString(output, StandardCharsets.UTF_8)
                .lines()
                .filter(line -> wrong.matcher(line).find())
                .toList();
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        process.waitFor();
    }
}
