package stirtide.planner.service;

import java.time.Instant;
import java.util.Optional;
import stirtide.planner.day.Ticker;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;

/** A day in memory: the actor that changes it, and its planning. */
record LoadedDay(DayActor actor, PlanRunner plans) {
    Day day() {
        return actor.day();
    }

    boolean opened() {
        return day().revision() > 0;
    }

    /** When something falls due next. */
    Optional<Instant> nextAt() {
        return Ticker.nextAt(day());
    }

    /** Whether the day was closed, or has passed and nothing can fall due on it any more. */
    boolean over(Instant now) {
        return day().closed()
                || opened() && !now.isBefore(DayTime.of(day().opened()).dayEnd()) && nextAt().isEmpty();
    }

    /** Whether nothing is being done on the day and it has no followers. */
    boolean idle() {
        return actor.idle() && plans.idle();
    }
}
