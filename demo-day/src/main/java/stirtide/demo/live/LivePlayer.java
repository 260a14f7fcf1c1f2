package stirtide.demo.live;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import stirtide.bar.client.DayClient;
import stirtide.demo.play.CommandIds;
import stirtide.demo.play.SalonSimulation;
import stirtide.demo.play.StaffAction;
import stirtide.events.view.DayView;

/**
 * Simulates clients and staff beside a terminal, at any rate of the salon's clock. Looks at the day several times a second of
 * real time; while the clock stands, nothing happens.
 */
final class LivePlayer implements AutoCloseable {
    private static final int LOOK_EVERY_MILLIS = 200;
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final DayClient client;
    private final SalonSimulation simulation;
    private final CommandIds ids = new CommandIds("demo-live");
    private final CountDownLatch leave = new CountDownLatch(1);
    private final Thread thread = new Thread(this::play, "demo-simulation");
    /** The current minute, which has not passed at the chairs yet; set with the first look. */
    private Optional<Instant> minute = Optional.empty();

    LivePlayer(DayClient client, SalonSimulation simulation) {
        this.client = client;
        this.simulation = simulation;
        this.thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    private void play() {
        try {
            while (!leave.await(LOOK_EVERY_MILLIS, TimeUnit.MILLISECONDS)) {
                DayView view = client.view();
                if (view.closed()) return;
                passMinutes(view);
                act(view);
            }
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        } catch (IOException closed) {
            // The service is being closed; the terminal says so.
        }
    }

    private void passMinutes(DayView view) {
        Instant now = view.time();
        Instant begins = minute.orElseGet(() -> now.truncatedTo(ChronoUnit.MINUTES));
        while (!now.isBefore(begins.plus(MINUTE))) {
            simulation.pass(view);
            begins = begins.plus(MINUTE);
        }
        minute = Optional.of(begins);
    }

    /** One action a look: the next look sees its effect. */
    private void act(DayView view) throws IOException, InterruptedException {
        Optional<StaffAction> action = simulation.next(view);
        // A rejected action needs no handling: the next look decides again.
        if (action.isPresent()) client.send(action.get().request(ids.next()));
    }

    @Override
    public void close() {
        leave.countDown();
        try {
            thread.join(TimeUnit.SECONDS.toMillis(2));
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        }
    }
}
