package stirtide.planner.service;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The service in a Java process of its own. */
final class ServiceProcess implements AutoCloseable {
    private static final Pattern READY = Pattern.compile("ready on http://127\\.0\\.0\\.1:(\\d+) .*");

    private final Process process;
    private final String firstLine;

    private ServiceProcess(Process process, String firstLine) {
        this.process = process;
        this.firstLine = firstLine;
    }

    /** Starts it and reads its first own line, which is there when it is ready or has given up. */
    static ServiceProcess start(Path data, String... more) throws IOException {
        return start(data, Path.of(System.getProperty("java.io.tmpdir")), more);
    }

    /** The same with a folder for what it leaves lying about. */
    static ServiceProcess start(Path data, Path temporary, String... more) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "--enable-native-access=ALL-UNNAMED",
                "-XX:TieredStopAtLevel=1",
                "-Xmx256m",
                "-Djava.io.tmpdir=" + temporary,
                "-cp",
                System.getProperty("java.class.path"),
                ServiceMain.class.getName(),
                "--data",
                data.toString(),
                "--port",
                "0",
                "--management-port",
                "0"));
        command.addAll(List.of(more));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        BufferedReader lines = process.inputReader(StandardCharsets.UTF_8);
        String line = lines.readLine();
        // Warnings of a busy machine may come first; its own lines begin with its name.
        while (line != null && !line.startsWith("stirtide: ")) line = lines.readLine();
        return new ServiceProcess(process, line == null ? "" : line);
    }

    String firstLine() {
        return firstLine;
    }

    int port() {
        Matcher ready = READY.matcher(firstLine.replaceFirst("^stirtide: ", ""));
        if (!ready.matches()) throw new IllegalStateException("not ready: " + firstLine);
        return Integer.parseInt(ready.group(1));
    }

    /** Ends the process as a power cut of the process would: without any warning to it. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    long id() {
        return process.pid();
    }

    int exitCode() throws InterruptedException {
        return process.waitFor();
    }

    /** Tells the process to end and gives its exit code. */
    int terminate() throws InterruptedException {
        process.destroy();
        return process.waitFor();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
