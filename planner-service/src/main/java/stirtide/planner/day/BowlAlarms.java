package stirtide.planner.day;

import java.time.Instant;
import stirtide.planner.day.bowl.DirectionsCheck;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;

/** Alarms of a bowl in use: its life, the directions, a client who is gone. */
final class BowlAlarms {
    private BowlAlarms() {}

    static void add(AlarmCollector alarms, Day day, DayTime time, BowlState bowl, Instant now) {
        var service = day.service(bowl.service()).orElseThrow();
        int chair = service.booking().chair();
        var id = bowl.bowl();
        var ends = bowl.lifeEnds();
        if (!now.isBefore(ends))
            alarms.add(
                    "PAST_LIFE:" + id,
                    "HIGH",
                    "PAST_LIFE",
                    id,
                    chair,
                    ends,
                    "Bowl " + id + " is past its life since " + time.clock(ends)
                            + ": stop applying it, bin it, begin a fresh one.");
        else if (!now.isBefore(ends.minus(Ticker.ENDING_BEFORE)))
            alarms.add(
                    "LOW_LIFE:" + id,
                    "MEDIUM",
                    "LOW_LIFE",
                    id,
                    chair,
                    ends.minus(Ticker.ENDING_BEFORE),
                    "The life of bowl " + id + " ends at " + time.clock(ends) + ": use it up or bin it by then.");
        // One mix for two bowls is one mistake, reported for the bowl it is mixed in.
        day.mixOf(bowl)
                .weighed()
                .filter(weighed -> !weighed.insideDirections() && bowl.mixedHere())
                .ifPresent(weighed -> alarms.add(
                        "OUTSIDE_DIRECTIONS:" + id + ":" + weighed.at(),
                        "HIGH",
                        "OUTSIDE_DIRECTIONS",
                        id,
                        chair,
                        weighed.at(),
                        "Bowl " + id + " is outside the directions ("
                                + DirectionsCheck.complaint(
                                                day,
                                                day.mixOf(bowl),
                                                weighed.lightenerMilligrams(),
                                                weighed.developerParts())
                                        .orElse("not permitted")
                                + "): correct it and weigh it in anew, or bin it."));
        if (!service.standing())
            alarms.add(
                    "CLIENT_GONE:" + id,
                    "MEDIUM",
                    "CLIENT_GONE",
                    id,
                    chair,
                    service.cancelledAt().orElseThrow(),
                    "Service " + bowl.service() + " is cancelled and bowl " + id
                            + " is still in use: bin it with the cause CLIENT_GONE.");
    }
}
