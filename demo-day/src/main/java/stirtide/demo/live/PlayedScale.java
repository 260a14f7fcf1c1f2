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
import stirtide.demo.exit.CommandFailure;
import stirtide.demo.link.SalonLink;
import stirtide.demo.link.ServiceSilent;
import stirtide.demo.play.PlayedWeights;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.LiveBowl;

/** A scale beside the demo's bar: a pipe the terminal reads, with the weights of the bowl that waits to be weighed. */
final class PlayedScale implements AutoCloseable {
    private static final int LINE_MILLIS = 100;
    private static final int LINES_A_LOOK = 5;
    private static final long NANOS_PER_MILLI = 1_000_000;

    private final Path pipe;
    private final Path dialect;
    private final SalonLink link;
    private final CountDownLatch leave = new CountDownLatch(1);

    private PlayedScale(Path pipe, Path dialect, SalonLink link) {
        this.pipe = pipe;
        this.dialect = dialect;
        this.link = link;
    }

    /**
     * Makes the pipe and the file of settings in a folder and begins to write as soon as somebody reads.
     *
     * @throws CommandFailure when this machine makes no pipes
     */
    static PlayedScale start(Path folder, SalonLink link) {
        try {
            Files.createDirectories(folder);
            Path pipe = folder.resolve("scale");
            Path dialect = Files.writeString(folder.resolve("scale.settings"), PlayedWeights.DIALECT);
            int made = new ProcessBuilder("mkfifo", "-m", "600", pipe.toString())
                    .start()
                    .waitFor();
            if (made != 0) throw new IOException("mkfifo ended with " + made);
            PlayedScale scale = new PlayedScale(pipe, dialect, link);
            Thread thread = new Thread(scale::write, "scale-of-the-demo");
            thread.setDaemon(true);
            thread.start();
            return scale;
        } catch (IOException noPipes) {
            throw new CommandFailure(
                    CommandFailure.UNAVAILABLE, "a played scale needs mkfifo: " + noPipes.getMessage());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new CommandFailure(CommandFailure.UNAVAILABLE, "stopped before the scale was there");
        }
    }

    /** Options that make a terminal read it. */
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
                    Optional<LiveBowl> waiting = waiting(link.view());
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
        } catch (IOException | ServiceSilent gone) {
            // Terminal or service is being closed; nobody reads the scale any more.
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
