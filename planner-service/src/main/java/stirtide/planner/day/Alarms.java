package stirtide.planner.day;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stirtide.events.day.StoredEvent;
import stirtide.events.plan.PlannedService;
import stirtide.events.view.DayView.AlarmCard;
import stirtide.planner.day.bowl.DirectionsCheck;
import stirtide.planner.day.chair.ChairRules;
import stirtide.planner.day.history.DemandedTests;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.ServiceState;

/**
 * What needs attention now, worked out from the state of the day: nothing is stored but who has seen it. Each sentence
 * says what is the matter and what to do.
 */
public final class Alarms {
    private static final List<String> PRIORITIES = List.of("HIGH", "MEDIUM", "LOW");
    private static final Duration ABSENT_AFTER = Duration.ofMinutes(5);

    private Alarms() {}

    /** All alarms of an opened day at an instant: high first, then oldest, then by id. */
    public static List<AlarmCard> of(Day day, Instant now) {
        if (day.setup().isEmpty() || day.closed()) return List.of();
        var time = DayTime.of(day.opened());
        var alarms = new ArrayList<AlarmCard>();
        day.liveBowls().forEach(bowl -> addBowl(alarms, day, time, bowl, now));
        for (var service : day.services()) addService(alarms, day, time, service, now);
        addPlan(alarms, day);
        addChairs(alarms, day, time);
        alarms.sort(Comparator.comparing((AlarmCard alarm) -> PRIORITIES.indexOf(alarm.priority()))
                .thenComparing(AlarmCard::raisedAt)
                .thenComparing(AlarmCard::id));
        return alarms.stream().distinct().toList();
    }

    private static void addBowl(List<AlarmCard> alarms, Day day, DayTime time, BowlState bowl, Instant now) {
        int chair = day.service(bowl.service()).orElseThrow().booking().chair();
        var id = bowl.bowl();
        var ends = bowl.lifeEnds();
        if (!now.isBefore(ends))
            alarms.add(card(
                    day,
                    "PAST_LIFE:" + id,
                    "HIGH",
                    "PAST_LIFE",
                    id,
                    chair,
                    ends,
                    "Bowl " + id + " is past its life since " + time.clock(ends)
                            + ": stop applying it, bin it, begin a fresh one."));
        else if (!now.isBefore(ends.minus(Ticker.ENDING_BEFORE)))
            alarms.add(card(
                    day,
                    "LOW_LIFE:" + id,
                    "MEDIUM",
                    "LOW_LIFE",
                    id,
                    chair,
                    ends.minus(Ticker.ENDING_BEFORE),
                    "The life of bowl " + id + " ends at " + time.clock(ends) + ": use it up or bin it by then."));
        // One mix for two bowls is one mistake, told of the bowl it is mixed in.
        day.mixOf(bowl)
                .weighed()
                .filter(weighed -> !weighed.insideDirections() && bowl.mixedHere())
                .ifPresent(weighed -> alarms.add(card(
                        day,
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
                                + "): correct it and weigh it in anew, or bin it.")));
        if (!day.service(bowl.service()).orElseThrow().standing())
            alarms.add(card(
                    day,
                    "CLIENT_GONE:" + id,
                    "MEDIUM",
                    "CLIENT_GONE",
                    id,
                    chair,
                    day.service(bowl.service()).orElseThrow().cancelledAt().orElseThrow(),
                    "Service " + bowl.service() + " is cancelled and bowl " + id
                            + " is still in use: bin it with the cause CLIENT_GONE."));
    }

    private static void addService(List<AlarmCard> alarms, Day day, DayTime time, ServiceState service, Instant now) {
        if (!service.standing()) return;
        int chair = service.booking().chair();
        var late = service.dueMark(service.nextBowl()).lateAt();
        boolean planned = day.plan().stream()
                .flatMap(plan -> plan.bowls().stream())
                .anyMatch(bowl -> bowl.bowl().equals(service.nextBowl()));
        if (late.isPresent() && planned)
            alarms.add(card(
                    day,
                    "LATE:" + service.nextBowl() + ":" + late.get(),
                    "MEDIUM",
                    "LATE",
                    service.nextBowl(),
                    chair,
                    late.get().plus(Ticker.LATE_AFTER),
                    "Bowl " + service.nextBowl() + " was to be begun at " + time.clock(late.get())
                            + ": begin it now, or move or cancel service " + service.service() + "."));
        addTests(alarms, day, service, chair);
        var absent = service.booking().start().plus(ABSENT_AFTER);
        if (service.startedAt().isEmpty() && !now.isBefore(absent))
            alarms.add(card(
                    day,
                    "NOT_STARTED:" + service.service() + ":" + absent,
                    "LOW",
                    "NOT_STARTED",
                    "",
                    chair,
                    absent,
                    "Service " + service.service() + " was to start at "
                            + time.clock(service.booking().start())
                            + ": start it when the client is in chair " + chair + ", or move or cancel it."));
    }

    /** A demanded test nobody has recorded stays an alarm until it is; a client in the chair makes it more urgent. */
    private static void addTests(List<AlarmCard> alarms, Day day, ServiceState service, int chair) {
        if (ChairRules.applied(day, service)) return;
        boolean started = service.startedAt().isPresent();
        var opened = day.history().first().map(StoredEvent::time).orElse(day.time());
        for (var test : DemandedTests.of(day, service))
            if (DemandedTests.open(test))
                alarms.add(card(
                        day,
                        // who has seen it before the client came has to see it again
                        "TEST:" + service.service() + ":" + test.kind() + ":" + test.lightenerName()
                                + (started ? ":started" : ""),
                        started ? "MEDIUM" : "LOW",
                        "TEST_" + test.state(),
                        "",
                        chair,
                        service.startedAt().orElse(opened),
                        "Service " + service.service() + ": " + test.sentence()));
    }

    private static void addPlan(List<AlarmCard> alarms, Day day) {
        if (day.plan().isEmpty()) return;
        var plan = day.plan().get();
        for (var wait : plan.waits()) {
            var services = wait.services().stream().map(String::valueOf).collect(Collectors.joining(","));
            int chair = wait.services().stream()
                    .flatMap(number -> day.service(number).stream())
                    .map(service -> service.booking().chair())
                    .findFirst()
                    .orElse(0);
            alarms.add(card(day, "WAIT:" + services, "LOW", "WAIT", "", chair, plan.asOf(), wait.sentence()));
        }
        for (var note : plan.notes()) {
            int chair = day.service(note.service())
                    .map(one -> one.booking().chair())
                    .orElse(0);
            var id = "NOTE:" + note.kind() + ":" + note.service();
            alarms.add(card(day, id, "LOW", "NOTE", "", chair, plan.asOf(), note.sentence()));
        }
    }

    /** Two services of the plan on one chair at one time; a salon may want that, so it is only said. */
    private static void addChairs(List<AlarmCard> alarms, Day day, DayTime time) {
        if (day.plan().isEmpty()) return;
        var services = day.plan().get().services();
        for (int i = 0; i < services.size(); i++)
            for (int j = i + 1; j < services.size(); j++) {
                var one = services.get(i);
                var other = services.get(j);
                var from = clash(one, other);
                if (from.isEmpty()) continue;
                alarms.add(card(
                        day,
                        "CHAIR:" + one.service() + "," + other.service(),
                        "LOW",
                        "CHAIR_TWICE",
                        "",
                        one.chair(),
                        day.plan().get().asOf(),
                        "Services " + one.service() + " and " + other.service() + " both need chair " + one.chair()
                                + " at " + time.clock(from.get()) + ": move one of them."));
            }
    }

    private static Optional<Instant> clash(PlannedService one, PlannedService other) {
        var from = one.start().isAfter(other.start()) ? one.start() : other.start();
        var to = one.end().isBefore(other.end()) ? one.end() : other.end();
        return one.chair() == other.chair() && from.isBefore(to) ? Optional.of(from) : Optional.empty();
    }

    private static AlarmCard card(
            Day day,
            String id,
            String priority,
            String kind,
            String bowl,
            int chair,
            Instant raisedAt,
            String sentence) {
        return new AlarmCard(
                id,
                priority,
                kind,
                bowl,
                chair,
                sentence,
                raisedAt,
                Optional.ofNullable(day.acknowledged().get(id)));
    }
}
