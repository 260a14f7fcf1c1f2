package stirtide.planner.day;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.setup.People;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;

/**
 * Taking an action back: one's own, at most {@link #WITHIN} old, and only if the rest of the day could have happened
 * without it. That is proven, not guessed: every later action is decided once more on the day without the mistake.
 */
public final class TakeBackRules {
    /** An action older than this stands. */
    public static final Duration WITHIN = Duration.ofMinutes(10);

    private TakeBackRules() {}

    static Decision takeBack(Day day, DayCommand.TakeBack command, CommandContext facts) {
        var events = day.history().events();
        if (command.revision() < 1 || command.revision() > events.size())
            return Decision.refuse(
                    "ACTION_UNKNOWN",
                    "There is no action " + command.revision() + " on this day. Accepted: 1 to " + events.size() + ".");
        var action = events.get((int) command.revision() - 1);
        var leftOut = Evolver.takenBack(events);
        return objection(day, action, leftOut, facts)
                .or(() -> blocked(before(events, action.revision(), leftOut), events, action, leftOut))
                .<Decision>map(Decision.Refused::new)
                .orElseGet(() -> Decision.accept(new DayEvent.ActionTakenBack(action.revision())));
    }

    /** Newest actions that can be taken back by whoever did them, newest first. */
    public static List<StoredEvent> takeable(Day day, Instant now, int most) {
        var events = day.history().events();
        var leftOut = Evolver.takenBack(events);
        var candidates = new ArrayList<StoredEvent>();
        for (int i = events.size() - 1; i >= 0 && candidates.size() < most; i--) {
            var event = events.get(i);
            if (Duration.between(event.time(), now).compareTo(WITHIN) > 0) break;
            if (objection(day, event, leftOut, new CommandContext(now, event.actor()))
                    .isEmpty()) candidates.add(event);
        }
        if (candidates.isEmpty() || day.closed()) return List.of();
        long oldest = candidates.get(candidates.size() - 1).revision();
        var base = before(events, oldest, leftOut);
        candidates.removeIf(action -> blocked(base, events, action, leftOut).isPresent());
        return List.copyOf(candidates);
    }

    private static Optional<Refusal> objection(Day day, StoredEvent action, Set<Long> leftOut, CommandContext facts) {
        if (action.actor().equals(StoredEvent.SERVICE) || action.event() instanceof DayEvent.ActionTakenBack)
            return refusal("NOT_AN_ACTION", "Only what a person did can be taken back, and only once.");
        var words = ActionText.of(day, action);
        if (partOfOpening(day, action))
            return refusal("PART_OF_OPENING", "That is part of opening the day. Move or cancel the service instead.");
        if (leftOut.contains(action.revision()))
            return refusal("TAKEN_BACK_ALREADY", "\"" + words + "\" was taken back already. Name another action.");
        if (!action.actor().equals(facts.actor()))
            return refusal(
                    "NOT_YOUR_ACTION",
                    "\"" + words + "\": only " + People.name(day, action.actor()) + " can take that back.");
        if (Duration.between(action.time(), facts.now()).compareTo(WITHIN) > 0)
            return refusal(
                    "TOO_LONG_AGO",
                    "\"" + words + "\" is more than " + WITHIN.toMinutes()
                            + " minutes old. Accepted: an action of the last " + WITHIN.toMinutes() + " minutes.");
        return Optional.empty();
    }

    private static boolean partOfOpening(Day day, StoredEvent action) {
        var first = day.history().first();
        return action.event() instanceof DayEvent.DayOpened
                || action.event() instanceof DayEvent.ServiceBooked
                        && first.isPresent()
                        && first.get().commandId().equals(action.commandId());
    }

    private static Day before(List<StoredEvent> events, long revision, Set<Long> leftOut) {
        return Evolver.replayWithout(events.subList(0, (int) revision - 1), leftOut);
    }

    /** Plays everything after {@code base} without the action; the first event that cannot be is the obstacle. */
    private static Optional<Refusal> blocked(
            Day base, List<StoredEvent> events, StoredEvent action, Set<Long> leftOut) {
        var without = new HashSet<>(leftOut);
        without.add(action.revision());
        var day = base;
        for (var event : events.subList((int) base.revision(), events.size())) {
            boolean judged = event.revision() > action.revision() && !without.contains(event.revision());
            if (judged && !holds(day, event)) {
                var words = ActionText.of(day, event);
                return refusal(
                        "BUILT_ON",
                        "\"" + ActionText.of(day, action) + "\" cannot be taken back: \"" + words
                                + "\" builds on it. Only what nothing builds on can be taken back.");
            }
            day = Evolver.step(day, event, without);
        }
        return Optional.empty();
    }

    private static boolean holds(Day day, StoredEvent stored) {
        var event = stored.event();
        if (event instanceof DayEvent.LifeEnding ending)
            return day.bowl(ending.bowl()).isPresent();
        if (event instanceof DayEvent.LifeEnded ended)
            return day.bowl(ended.bowl()).isPresent();
        var command = ActionText.commandOf(event);
        if (command.isEmpty()) return true;
        var decision = Decider.decide(day, command.get(), new CommandContext(stored.time(), stored.actor()));
        if (!(decision instanceof Decision.Accepted accepted)) return false;
        // The life of a bowl was set by a clock finer than the log keeps; all the rest must be the same again.
        return event instanceof DayEvent.BowlBegun
                || event instanceof DayEvent.BatchBegun
                || accepted.events().equals(List.of(event));
    }

    private static Optional<Refusal> refusal(String code, String sentence) {
        return Optional.of(new Refusal(code, sentence));
    }
}
