package stirtide.demo.play;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.bar.client.CommandAnswer;
import stirtide.bar.client.DayClient;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/** Plays a day to its end, minute by minute on the service's driven clock: without waiting, and the same every time. */
public final class SteppedPlayer {
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final int MOST_ACTIONS_A_MINUTE = 200;

    private final DayClient client;
    private final SalonSimulation simulation;
    private final CommandIds ids;
    private final String receptionist;
    private final List<String> refusals = new ArrayList<>();

    /**
     * @param client client of the day, open already
     * @param simulation clients and staff
     * @param ids ids of the commands
     * @param receptionist person who closes the day
     */
    public SteppedPlayer(DayClient client, SalonSimulation simulation, CommandIds ids, String receptionist) {
        this.client = client;
        this.simulation = simulation;
        this.ids = ids;
        this.receptionist = receptionist;
    }

    /**
     * Plays from one instant until every client is served, or until the second instant.
     *
     * @param from first minute
     * @param until where to stop in any case
     * @throws IOException when the service does not answer
     */
    public PlayedDay play(Instant from, Instant until) throws IOException, InterruptedException {
        Instant now = from;
        DayView view = minute(now);
        while (!over(view) && now.isBefore(until)) {
            simulation.pass(view);
            now = now.plus(MINUTE);
            view = minute(now);
        }
        boolean finished = over(view) && send(new StaffAction(receptionist, new DayCommand.CloseDay()));
        client.service().advanceClock(now);
        return new PlayedDay(client.view(), client.events(), simulation.figures(), refusals, finished);
    }

    private DayView minute(Instant now) throws IOException, InterruptedException {
        client.service().advanceClock(now);
        DayView view = client.view();
        for (int actions = 0; actions < MOST_ACTIONS_A_MINUTE; actions++) {
            Optional<StaffAction> action = simulation.next(view);
            if (action.isEmpty()) return view;
            boolean accepted = send(action.get());
            client.service().advanceClock(now);
            view = client.view();
            // A rejected action is decided again a minute later; at once the answer would be the same.
            if (!accepted) return view;
        }
        throw new IllegalStateException("more than " + MOST_ACTIONS_A_MINUTE + " actions in the minute of " + now);
    }

    private boolean send(StaffAction action) throws IOException, InterruptedException {
        CommandAnswer answer = client.send(action.request(ids.next()));
        if (answer instanceof CommandAnswer.Undecided undecided) throw new IOException(undecided.reason());
        if (answer instanceof CommandAnswer.Rejected rejected)
            refusals.add(
                    action.actor() + ", " + action.command().getClass().getSimpleName() + ": " + rejected.sentence());
        return answer instanceof CommandAnswer.Accepted;
    }

    private static boolean over(DayView view) {
        return view.live().isEmpty()
                && view.queue().isEmpty()
                && view.services().stream()
                        .allMatch(service -> service.state().equals("RINSED")
                                || service.state().equals("CANCELLED"));
    }
}
