package stirtide.events.plan;

import java.time.Instant;
import java.util.Optional;

/**
 * When a client without a booking could start so that no client waits longer. Nothing is booked by asking.
 *
 * @param basedOnRevision newest event the answer knows
 * @param start earliest such start in steps of five minutes, empty when there is none today
 * @param present the plan without the client
 * @param then the plan with the client at that start
 * @param sentence the answer in words
 */
public record WalkInAdvice(
        long basedOnRevision,
        Optional<Instant> start,
        PlanFigures present,
        Optional<PlanFigures> then,
        String sentence) {}
