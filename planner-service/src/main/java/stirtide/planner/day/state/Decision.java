package stirtide.planner.day.state;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import stirtide.events.day.DayEvent;

/** The answer to a command: the events it causes, or the reason why it causes none. */
public sealed interface Decision {
    /** The command holds; these events follow, at least one. */
    record Accepted(List<DayEvent> events) implements Decision {
        public Accepted {
            events = List.copyOf(events);
            if (events.isEmpty()) throw new IllegalArgumentException("an accepted command causes at least one event");
        }
    }

    /** The command does not hold; nothing happened. */
    record Refused(Refusal refusal) implements Decision {}

    /** Accepts with one event. */
    static Decision accept(DayEvent event) {
        return new Accepted(List.of(event));
    }

    /** Refuses when something is wrong, else accepts with one event. */
    static Decision acceptUnless(Optional<Refusal> wrong, Supplier<DayEvent> event) {
        return wrong.<Decision>map(Refused::new).orElseGet(() -> accept(event.get()));
    }

    /** Refuses with a code and a sentence that says what would be accepted. */
    static Decision refuse(String code, String sentence) {
        return new Refused(new Refusal(code, sentence));
    }
}
