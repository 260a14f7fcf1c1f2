package stirtide.demo.live;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import stirtide.demo.link.SalonLink;
import stirtide.demo.link.ServiceSilent;
import stirtide.demo.play.CommandIds;
import stirtide.demo.play.SalonSimulation;
import stirtide.demo.play.StaffAction;
import stirtide.events.command.CommandRequest;
import stirtide.events.view.DayView;

/**
 * Plays the people of the day beside a terminal, at whatever rate the salon's clock runs. Looks at the day some times a
 * second of real time; when the clock stands, nobody moves.
 */
final class LivePlayer implements AutoCloseable {
    private static final int LOOK_EVERY_MILLIS = 200;
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final SalonLink link;
    private final SalonSimulation cast;
    private final CommandIds ids = new CommandIds("demo-live");
    private final CountDownLatch leave = new CountDownLatch(1);
    private final Thread thread = new Thread(this::play, "people-of-the-day");
    /** Minute that has not passed at the chairs yet; set with the first look. */
    private Optional<Instant> minute = Optional.empty();

    LivePlayer(SalonLink link, SalonSimulation cast) {
        this.link = link;
        this.cast = cast;
        this.thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    private void play() {
        try {
            while (!leave.await(LOOK_EVERY_MILLIS, TimeUnit.MILLISECONDS)) {
                DayView view = link.view();
                if (view.closed()) return;
                passMinutes(view);
                act(view);
            }
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        } catch (ServiceSilent gone) {
            // The service is being closed, and the terminal says so; the people have nothing to add.
        }
    }

    private void passMinutes(DayView view) {
        Instant now = view.time();
        Instant begins = minute.orElseGet(() -> now.truncatedTo(ChronoUnit.MINUTES));
        while (!now.isBefore(begins.plus(MINUTE))) {
            cast.pass(view);
            begins = begins.plus(MINUTE);
        }
        minute = Optional.of(begins);
    }

    /** One deed a look: the next look sees what it changed. */
    private void act(DayView view) {
        Optional<StaffAction> deed = cast.next(view);
        // A refusal needs no word here: the same look again, a moment later, decides anew.
        deed.ifPresent(now -> link.send(new CommandRequest(ids.next(), now.actor(), now.command())));
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
