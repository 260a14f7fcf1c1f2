package stirtide.demo.live;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import stirtide.bar.client.DayClient;
import stirtide.demo.play.PlayedWeights;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.LiveBowl;
import stirtide.planner.cli.CommandException;

/** A simulated scale: a pipe that the terminal reads, with the weights of the bowl that is to be weighed. */
final class PlayedScale implements AutoCloseable {
    private static final int LINE_MILLIS = 100;
    private static final int LINES_A_LOOK = 5;
    private static final long NANOS_PER_MILLI = 1_000_000;

    private final Path pipe;
    private final Path dialect;
    private final DayClient client;
    private final CountDownLatch leave = new CountDownLatch(1);

    private PlayedScale(Path pipe, Path dialect, DayClient client) {
        this.pipe = pipe;
        this.dialect = dialect;
        this.client = client;
    }

    /**
     * Makes the pipe and the file of settings in a folder, and begins to write when the terminal opens the pipe.
     *
     * @throws CommandException when no pipe can be made
     */
    static PlayedScale start(Path folder, DayClient client) {
        try {
            Files.createDirectories(folder);
            Path pipe = folder.resolve("scale");
            Path dialect = Files.writeString(folder.resolve("scale.settings"), PlayedWeights.DIALECT);
            int made = new ProcessBuilder("mkfifo", "-m", "600", pipe.toString())
                    .start()
                    .waitFor();
            if (made != 0) throw new IOException("mkfifo ended with " + made);
            PlayedScale scale = new PlayedScale(pipe, dialect, client);
            Thread thread = new Thread(scale::write, "scale-of-the-demo");
            thread.setDaemon(true);
            thread.start();
            return scale;
        } catch (IOException noPipes) {
            throw new CommandException(
                    CommandException.UNAVAILABLE, "a played scale needs mkfifo: " + noPipes.getMessage());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new CommandException(CommandException.UNAVAILABLE, "stopped before the scale was there");
        }
    }

    /** Options of a terminal that reads it. */
    List<String> options() {
        return List.of("--scale", pipe.toString(), "--dialect", dialect.toString());
    }

    private void write() {
        String bowl = "";
        PlayedWeights weights = new PlayedWeights(List.of());
        long beganNanos = 0;
        // Opening waits until the terminal reads.
        try (OutputStream out = new FileOutputStream(pipe.toFile())) {
            for (int line = 0; !leave.await(LINE_MILLIS, TimeUnit.MILLISECONDS); line++) {
                if (line % LINES_A_LOOK == 0) {
                    Optional<LiveBowl> waiting = waiting(client.view());
                    String now = waiting.map(LiveBowl::bowl).orElse("");
                    if (!now.equals(bowl)) {
                        bowl = now;
                        weights = waiting.map(PlayedScale::weights).orElse(new PlayedWeights(List.of()));
                        beganNanos = System.nanoTime();
                    }
                }
                String shown = weights.at((System.nanoTime() - beganNanos) / NANOS_PER_MILLI);
                out.write((shown + "\n").getBytes(StandardCharsets.US_ASCII));
                out.flush();
            }
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        } catch (IOException closed) {
            // Terminal or service is being closed.
        }
    }

    /** The bowl begun last that is not weighed yet. */
    private static Optional<LiveBowl> waiting(DayView view) {
        return view.live().stream()
                .filter(bowl -> bowl.stage().equals("MIXING"))
                .max(Comparator.comparing(LiveBowl::mixStart).thenComparing(LiveBowl::bowl));
    }

    private static PlayedWeights weights(LiveBowl bowl) {
        List<Integer> parts = new ArrayList<>();
        parts.add(bowl.planned().lightenerMilligrams());
        bowl.planned().parts().forEach(part -> parts.add(part.milligrams()));
        return new PlayedWeights(parts);
    }

    @Override
    public void close() {
        leave.countDown();
    }
}
