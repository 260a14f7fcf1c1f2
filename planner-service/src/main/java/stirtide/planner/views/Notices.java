package stirtide.planner.views;

import java.util.ArrayList;
import java.util.List;
import stirtide.events.plan.Plan;
import stirtide.events.plan.Plan.PlanNote;
import stirtide.planner.day.history.DemandedTests;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/** Notes of the plan, then what should be known of a service before it starts: missing tests, last formulas that changed. */
final class Notices {
    private Notices() {}

    static List<PlanNote> of(Day day) {
        List<PlanNote> notes = new ArrayList<>(day.plan().map(Plan::notes).orElse(List.of()));
        for (ServiceState service : day.services())
            if (service.standing() && service.startedAt().isEmpty()) {
                addTests(notes, day, service);
                addLastTime(notes, day, service);
            }
        return notes;
    }

    private static void addTests(List<PlanNote> notes, Day day, ServiceState service) {
        DemandedTests.of(day, service).stream()
                .filter(DemandedTests::open)
                .forEach(test -> notes.add(note("TEST_" + test.state(), service, test.sentence())));
    }

    private static void addLastTime(List<PlanNote> notes, Day day, ServiceState service) {
        if (!service.booking().asLastTime().orElse(false)) return;
        day.ledger()
                .repeat(service.service())
                .ifPresentOrElse(
                        repeat -> repeat.departures()
                                .forEach(why ->
                                        notes.add(note("LAST_TIME_CHANGED", service, "As last time, " + why + "."))),
                        () -> notes.add(note(
                                "LAST_TIME_UNKNOWN",
                                service,
                                "As last time: nothing is remembered of an earlier visit of this client with the same menu"
                                        + " entry, so it is planned by the menu. Check the client reference.")));
    }

    private static PlanNote note(String kind, ServiceState service, String sentence) {
        return new PlanNote(kind, service.service(), sentence);
    }
}
