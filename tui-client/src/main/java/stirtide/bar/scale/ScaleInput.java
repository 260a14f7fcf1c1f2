package stirtide.bar.scale;

import java.io.BufferedReader;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Reads a scale on a thread of its own for as long as the program runs. A device is an ordinary file here, so no native
 * code is needed, and a pipe with a program behind it does for a simulated scale.
 */
public final class ScaleInput implements Runnable {
    private static final long AGAIN_MILLIS = 2000;
    private static final int MOST_BYTES = 64;

    private final Wanted wanted;
    private final Consumer<ScaleReading> news;

    /** Which scale: a path or the first found for a USB scale, and a dialect for a serial one. */
    public record Wanted(Optional<Path> path, Optional<SerialDialect> dialect) {}

    /** Reads a scale; news are called from this thread. */
    public ScaleInput(Wanted wanted, Consumer<ScaleReading> news) {
        this.wanted = wanted;
        this.news = news;
    }

    @Override
    public void run() {
        try {
            // Ends: when the thread is interrupted on leaving.
            while (true) {
                news.accept(new ScaleReading.Unusable(readUntilLost()));
                Thread.sleep(AGAIN_MILLIS);
            }
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        }
    }

    private String readUntilLost() throws InterruptedException {
        try {
            Optional<Path> path = wanted.path().isPresent()
                    ? wanted.path()
                    : HidFinder.first(Path.of("/sys/class/hidraw"), Path.of("/dev"));
            if (path.isEmpty()) return "no scale found: plug it in and switch it on";
            if (wanted.dialect().isPresent())
                prepare(path.get(), wanted.dialect().get());
            try (InputStream device = new FileInputStream(path.get().toFile())) {
                if (wanted.dialect().isPresent()) lines(device, wanted.dialect().get(), news);
                else reports(device, news);
            }
            return "the scale is gone: plug it in and switch it on";
        } catch (IOException lost) {
            return "the scale cannot be read: " + lost.getMessage();
        }
    }

    private static void prepare(Path path, SerialDialect dialect) throws IOException, InterruptedException {
        if (!path.toString().startsWith("/dev/")) return;
        String speed = String.valueOf(dialect.speed());
        var stty =
                new ProcessBuilder("stty", "-F", path.toString(), speed, "cs8", "-parenb", "-cstopb", "raw", "-echo");
        int result = stty.redirectErrorStream(true).start().waitFor();
        if (result != 0) throw new IOException("stty does not take " + path + " at " + speed);
    }

    /** Reads reports of a USB scale until the end; each read gives one report. */
    static void reports(InputStream device, Consumer<ScaleReading> news) throws IOException {
        var bytes = new byte[MOST_BYTES];
        for (int length = device.read(bytes); length >= 0; length = device.read(bytes))
            HidReport.of(bytes, length).map(HidReport::reading).ifPresent(news);
    }

    /** Reads lines of a serial scale until the end. */
    static void lines(InputStream device, SerialDialect dialect, Consumer<ScaleReading> news) throws IOException {
        var lines = new BufferedReader(new InputStreamReader(device, StandardCharsets.US_ASCII));
        for (String line = lines.readLine(); line != null; line = lines.readLine())
            dialect.reading(line).ifPresent(news);
    }
}
