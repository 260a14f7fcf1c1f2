package stirtide.planner.day;

import java.time.Duration;
import java.time.Instant;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.history.DemandedTests;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.ServiceState;

/** Alarms of a service: a late bowl, a missing test, a client who is not there. */
final class ServiceAlarms {
    private static final Duration ABSENT_AFTER = Duration.ofMinutes(5);

    private ServiceAlarms() {}

    static void add(AlarmCollector alarms, Day day, DayTime time, ServiceState service, Instant now) {
        if (!service.standing()) return;
        int chair = service.booking().chair();
        var late = service.dueMark(service.nextBowl()).lateAt();
        boolean planned = day.plannedBowls().anyMatch(bowl -> bowl.bowl().equals(service.nextBowl()));
        if (late.isPresent() && planned)
            alarms.add(
                    "LATE:" + service.nextBowl() + ":" + late.get(),
                    "MEDIUM",
                    "LATE",
                    service.nextBowl(),
                    chair,
                    late.get().plus(Ticker.LATE_AFTER),
                    "Bowl " + service.nextBowl() + " was to be begun at " + time.clock(late.get())
                            + ": begin it now, or move or cancel service " + service.service() + ".");
        addTests(alarms, day, service, chair);
        var absent = service.booking().start().plus(ABSENT_AFTER);
        if (service.startedAt().isEmpty() && !now.isBefore(absent))
            alarms.add(
                    "NOT_STARTED:" + service.service() + ":" + absent,
                    "LOW",
                    "NOT_STARTED",
                    "",
                    chair,
                    absent,
                    "Service " + service.service() + " was to start at "
                            + time.clock(service.booking().start())
                            + ": start it when the client is in chair " + chair + ", or move or cancel it.");
    }

    /** A demanded test stays an alarm until it is recorded; a client in the chair makes it more urgent. */
    private static void addTests(AlarmCollector alarms, Day day, ServiceState service, int chair) {
        if (day.applied(service)) return;
        boolean started = service.startedAt().isPresent();
        var opened = day.history().first().map(StoredEvent::time).orElse(day.time());
        for (var test : DemandedTests.of(day, service))
            if (DemandedTests.open(test))
                // the id changes at the start: who has seen the alarm before has to see it again
                alarms.add(
                        "TEST:" + service.service() + ":" + test.kind() + ":" + test.lightenerName()
                                + (started ? ":started" : ""),
                        started ? "MEDIUM" : "LOW",
                        "TEST_" + test.state(),
                        "",
                        chair,
                        service.startedAt().orElse(opened),
                        "Service " + service.service() + ": " + test.sentence());
    }
}
