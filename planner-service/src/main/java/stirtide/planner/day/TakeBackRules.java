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
import stirtide.planner.day.state.CommandRule.Decide;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;

/**
 * Taking an action back: one's own, at most {@link #WITHIN} old, and only if the rest of the day could have happened
 * without it. That is proven, not guessed: every later action is decided once more on the day without the mistake.
 */
public final class TakeBackRules {
    /** An action older than this cannot be taken back. */
    public static final Duration WITHIN = Duration.ofMinutes(10);

    private TakeBackRules() {}

    static Decision takeBack(Day day, DayCommand.TakeBack command, CommandContext context, Decide<DayCommand> decide) {
        var events = day.history().events();
        if (command.revision() < 1 || command.revision() > events.size())
            return Decision.refuse(
                    "ACTION_UNKNOWN",
                    "There is no action " + command.revision() + " on this day. Accepted: 1 to " + events.size() + ".");
        var action = events.get((int) command.revision() - 1);
        var leftOut = Evolver.takenBack(events);
        var wrong = objection(day, action, leftOut, context)
                .or(() -> blocked(before(events, action.revision(), leftOut), events, action, leftOut, decide));
        return Decision.acceptUnless(wrong, () -> new DayEvent.ActionTakenBack(action.revision()));
    }

    /** Newest actions that can be taken back by whoever did them, newest first. */
    public static List<StoredEvent> takeable(Day day, Instant now, int most, Decide<DayCommand> decide) {
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
        candidates.removeIf(
                action -> blocked(base, events, action, leftOut, decide).isPresent());
        return List.copyOf(candidates);
    }

    private static Optional<Refusal> objection(Day day, StoredEvent action, Set<Long> leftOut, CommandContext context) {
        if (action.actor().equals(StoredEvent.SERVICE) || action.event() instanceof DayEvent.ActionTakenBack)
            return Refusal.of("NOT_AN_ACTION", "Only what a person did can be taken back, and only once.");
        var words = text(day, action);
        if (partOfOpening(day, action))
            return Refusal.of(
                    "PART_OF_OPENING", "That is part of opening the day. Move or cancel the service instead.");
        if (leftOut.contains(action.revision()))
            return Refusal.of("TAKEN_BACK_ALREADY", "\"" + words + "\" was taken back already. Name another action.");
        if (!action.actor().equals(context.actor()))
            return Refusal.of(
                    "NOT_YOUR_ACTION",
                    "\"" + words + "\": only " + People.name(day, action.actor()) + " can take that back.");
        if (Duration.between(action.time(), context.now()).compareTo(WITHIN) > 0)
            return Refusal.of(
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

    /** Replays everything after {@code base} without the action; the first event that no longer holds is the obstacle. */
    private static Optional<Refusal> blocked(
            Day base, List<StoredEvent> events, StoredEvent action, Set<Long> leftOut, Decide<DayCommand> decide) {
        var without = new HashSet<>(leftOut);
        without.add(action.revision());
        var day = base;
        for (var event : events.subList((int) base.revision(), events.size())) {
            boolean judged = event.revision() > action.revision() && !without.contains(event.revision());
            if (judged && !Evolver.RULES.of(event.event()).holds(day, event, decide)) {
                var words = text(day, event);
                return Refusal.of(
                        "BUILT_ON",
                        "\"" + text(day, action) + "\" cannot be taken back: \"" + words
                                + "\" builds on it. Only what nothing builds on can be taken back.");
            }
            day = Evolver.step(day, event, without);
        }
        return Optional.empty();
    }

    /** Who did what when: {@code "weighed bowl 7b (Ora, 10:05)"}. */
    private static String text(Day day, StoredEvent stored) {
        return Evolver.text(stored.event()) + " (" + People.name(day, stored.actor()) + ", "
                + DayTime.of(day.opened()).clock(stored.time()) + ")";
    }
}
