package stirtide.demo.play;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.demo.link.Answer;
import stirtide.demo.link.SalonLink;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

/** Plays a day to its end, minute by minute on the service's driven clock: no waiting, the same every time. */
public final class SteppedPlayer {
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final int MOST_DEEDS_A_MINUTE = 200;

    private final SalonLink link;
    private final SalonSimulation cast;
    private final CommandIds ids;
    private final String desk;
    private final List<String> refusals = new ArrayList<>();

    /**
     * @param link the day, open already
     * @param cast who acts
     * @param ids ids of the commands
     * @param desk person who closes the day
     */
    public SteppedPlayer(SalonLink link, SalonSimulation cast, CommandIds ids, String desk) {
        this.link = link;
        this.cast = cast;
        this.ids = ids;
        this.desk = desk;
    }

    /**
     * Plays from one instant until everybody is served, or until the second instant.
     *
     * @param from first minute
     * @param until where to stop in any case
     */
    public PlayedDay play(Instant from, Instant until) {
        Instant now = from;
        DayView view = minute(now);
        while (!over(view) && now.isBefore(until)) {
            cast.pass(view);
            now = now.plus(MINUTE);
            view = minute(now);
        }
        boolean finished = over(view) && send(new StaffAction(desk, new DayCommand.CloseDay()));
        link.advance(now);
        return new PlayedDay(
                link.view(),
                link.events(),
                cast.waitedMinutes(),
                cast.lastUse(),
                cast.appliedMilligrams(),
                refusals,
                finished);
    }

    private DayView minute(Instant now) {
        link.advance(now);
        DayView view = link.view();
        for (int deeds = 0; deeds < MOST_DEEDS_A_MINUTE; deeds++) {
            Optional<StaffAction> deed = cast.next(view);
            if (deed.isEmpty()) return view;
            boolean accepted = send(deed.get());
            link.advance(now);
            view = link.view();
            // Whoever was refused thinks again in a minute; asking once more at once would give the same answer.
            if (!accepted) return view;
        }
        throw new IllegalStateException("more than " + MOST_DEEDS_A_MINUTE + " deeds in the minute of " + now);
    }

    private boolean send(StaffAction deed) {
        Answer answer = link.send(new CommandRequest(ids.next(), deed.actor(), deed.command()));
        if (!answer.accepted())
            refusals.add(deed.actor() + ", " + deed.command().getClass().getSimpleName() + ": " + answer.sentence());
        return answer.accepted();
    }

    private static boolean over(DayView view) {
        return view.live().isEmpty()
                && view.queue().isEmpty()
                && view.services().stream()
                        .allMatch(service -> service.state().equals("RINSED")
                                || service.state().equals("CANCELLED"));
    }
}
